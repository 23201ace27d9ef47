import type { ConduitsUsed } from './conduitUsed'
import { spotAt, type Frame, type FrameStick } from './frame'

/** A stick of a rail line, a sleeve or a dowel among them. */
export interface ChainStick {
  readonly mark: string
  readonly stock: string
  readonly fromU: number
  readonly toU: number
  readonly v: number
  readonly z: number
  readonly odMm: number
}

/** What of a stick bears the line: from where the one before it hands over to where it hands over itself. */
export interface BearingPiece {
  readonly stick: ChainStick
  readonly fromU: number
  readonly toU: number
}

/** A rail line of a row from one end to the other: left of the centreline or right of it. */
export interface RailChain {
  readonly v: number
  readonly z: number
  /** Along u. */
  readonly sticks: readonly ChainStick[]
  /** Along u. Where one starts at the end of the one before it there is a hinge; where it starts later the line is broken. */
  readonly pieces: readonly BearingPiece[]
  /** What the line rests on. */
  readonly supportsU: readonly number[]
}

const chainStick = ({ from, to, stick }: FrameStick): ChainStick => ({
  mark: stick.mark,
  stock: stick.stock,
  fromU: Math.min(from.u, to.u),
  toU: Math.max(from.u, to.u),
  v: (from.v + to.v) / 2,
  z: (from.z + to.z) / 2,
  odMm: stick.heightMm,
})

const runsAlong = ({ from, to }: FrameStick): boolean => Math.abs(to.u - from.u) > Math.abs(to.v - from.v)

/** Conduit along the row; hanger bars lie across it. */
const railSticks = ({ sticks }: Frame, conduits: ConduitsUsed): ChainStick[] =>
  [...sticks.values()]
    .flat()
    .filter((laid) => conduits.has(laid.stick.stock) && runsAlong(laid))
    .map(chainStick)
    .toSorted((a, b) => a.fromU - b.fromU || a.toU - b.toU)

/** Sticks that lie side by side are further apart than one that lies in another can be. */
const isBeside = (a: ChainStick, b: ChainStick): boolean => Math.abs(a.v - b.v) > Math.min(a.odMm, b.odMm) / 2

/** Where two sticks that lap give way: side by side in the middle of the lap, one in the other at the mouth of the bigger. */
const givesAt = (left: ChainStick, right: ChainStick): number => {
  if (isBeside(left, right) || left.odMm === right.odMm) return (right.fromU + left.toU) / 2
  return left.odMm > right.odMm ? left.toU : right.fromU
}

const longOf = ({ fromU, toU }: ChainStick): number => toU - fromU

/** A sleeve or a dowel: far shorter than what it holds together, which nearly meets within it. A short rail with long laps is none. */
const isConnector = (before: ChainStick, stick: ChainStick, after: ChainStick): boolean =>
  longOf(stick) < Math.min(longOf(before), longOf(after)) / 2 && after.fromU - before.toU < longOf(stick) / 2

const hasSupport = ({ fromU, toU }: ChainStick, supportsU: readonly number[]): boolean =>
  supportsU.some((u) => u >= fromU && u <= toU)

/** Where a connector that lies over a riser, or whose two mouths nearly meet, gives way but once; undefined where each mouth does. */
const atConnector = (
  before: ChainStick,
  stick: ChainStick,
  after: ChainStick,
  supportsU: readonly number[],
): number | undefined => {
  const apartMm = givesAt(stick, after) - givesAt(before, stick)
  const isOne = hasSupport(stick, supportsU) || apartMm < stick.odMm
  return isOne ? (stick.fromU + stick.toU) / 2 : undefined
}

/** Stick by stick from the start: each begins in the one before it, or the line is broken there. */
const piecesOf = (sticks: readonly ChainStick[], supportsU: readonly number[]): BearingPiece[] => {
  const pieces: BearingPiece[] = []
  let [left, fromU] = [sticks[0], sticks[0]?.fromU ?? 0]
  for (let index = 1; left; index += 1) {
    const [right, after]: (ChainStick | undefined)[] = [sticks[index], sticks[index + 1]]
    if (!right || right.fromU > left.toU) {
      pieces.push({ stick: left, fromU, toU: left.toU })
      fromU = right?.fromU ?? 0
      left = right
      continue
    }
    const once =
      after && isConnector(left, right, after) ? atConnector(left, right, after, supportsU) : undefined
    const toU = once ?? givesAt(left, right)
    pieces.push({ stick: left, fromU, toU })
    fromU = toU
    // The connector bears nothing by itself where it gives way but once.
    if (once !== undefined) index += 1
    left = once === undefined ? right : after
  }
  return pieces
}

const meanOf = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length

/** The line's own place is that of its rails; a sleeve that takes one lies a little off it. */
const chainOf = (sticks: readonly ChainStick[], supportsU: readonly number[]): RailChain => {
  const longestMm = Math.max(...sticks.map(longOf))
  const rails = sticks.filter((stick) => longOf(stick) > longestMm / 2)
  return {
    v: meanOf(rails.map(({ v }) => v)),
    z: meanOf(rails.map(({ z }) => z)),
    sticks,
    pieces: piecesOf(sticks, supportsU),
    supportsU,
  }
}

/** Places closer than this along a rail are one, mm: drilled, sawn and set up by tape. */
export const SAME_PLACE_MM = 1

const apart = (places: readonly number[]): number[] =>
  places
    .toSorted((a, b) => a - b)
    .filter((u, index, all) => index === 0 || u - (all[index - 1] ?? 0) > SAME_PLACE_MM)

/** Risers that stand under a side's rail, or straps that it hangs from where it has none. */
const supportsOn = ({ sticks, built, axes }: Frame, side: -1 | 1): number[] => {
  const isHere = (v: number): boolean => Math.sign(v) === side
  const risers = [...sticks].flatMap(([mark, laid]) => (mark.startsWith('RS') ? laid : []))
  const risersU = risers.filter(({ from }) => isHere(from.v)).map(({ from }) => from.u)
  if (risersU.length > 0) return apart(risersU)
  const straps = built.fittings.filter(({ item }) => item === 'house-strap')
  return apart(straps.flatMap(({ at }) => (isHere(spotAt(axes, at).v) ? [spotAt(axes, at).u] : [])))
}

/**
 * The rail lines of a row, left then right, with where they give way found from how the sticks lap: which kind of joint was asked
 * for does not matter. Slip joints carry no dependable moment until they have kinked: common practice, no source.
 */
export const railChains = (frame: Frame, conduits: ConduitsUsed): readonly RailChain[] => {
  const sticks = railSticks(frame, conduits)
  return ([-1, 1] as const).flatMap((side) => {
    const line = sticks.filter(({ v }) => Math.sign(v) === side)
    return line.length > 0 ? [chainOf(line, supportsOn(frame, side))] : []
  })
}

/** Where a line gives way: its slip joints. */
export const hingesOf = ({ pieces }: Pick<RailChain, 'pieces'>): number[] =>
  pieces.slice(1).flatMap(({ fromU }, index) => (fromU > (pieces[index]?.toU ?? 0) ? [] : [fromU]))
