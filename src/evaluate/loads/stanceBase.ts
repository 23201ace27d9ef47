import type { RowSpot } from '../../model/strength'
import { type Frame, type FrameStick, spotAt, sticksOf } from './frame'
import { RISERS } from './risersBuilt'

/** Something along the row, mm from its start. */
export interface Reach {
  readonly from: number
  readonly to: number
}

/** What holds a row together along it: rails, base and risers. Sleeves slide off, troughs and pipes give. */
const HOLDING = ['RL', 'RL-b', 'BR', 'SP', ...RISERS] as const

const halfWidth = ({ from, to, stick }: FrameStick, way: 'u' | 'v'): number =>
  Math.abs(to[way] - from[way]) > 1 ? 0 : stick.widthMm / 2

const reachOf = (laid: FrameStick, way: 'u' | 'v'): Reach => {
  const half = halfWidth(laid, way)
  return {
    from: Math.min(laid.from[way], laid.to[way]) - half,
    to: Math.max(laid.from[way], laid.to[way]) + half,
  }
}

/** Boards that only butt are not held together: what holds two pieces laps both by more than this, mm. */
const LAPS_MM = 1

const joined = (pieces: Reach[], next: Reach): Reach[] => {
  const last = pieces.at(-1)
  if (!last || next.from > last.to - LAPS_MM) return [...pieces, next]
  return [...pieces.slice(0, -1), { from: last.from, to: Math.max(last.to, next.to) }]
}

/** The pieces of a row that tip by themselves: the whole row where its racks share risers or spliced runners, else rack by rack. */
export const standingPieces = (frame: Frame): readonly Reach[] =>
  sticksOf(frame, ...HOLDING)
    .map((laid) => reachOf(laid, 'u'))
    .toSorted((a, b) => a.from - b.from)
    .reduce(joined, [])

/** What stands on the ground in one direction: its edges, in mm of that axis. */
export interface Edges {
  readonly low: number
  readonly high: number
}

const isWithin = ({ from, to }: Reach, u: number): boolean => u >= from && u <= to

const edgesOf = (reaches: readonly Reach[]): Edges | undefined =>
  reaches.length > 0
    ? { low: Math.min(...reaches.map(({ from }) => from)), high: Math.max(...reaches.map(({ to }) => to)) }
    : undefined

/** Base boards, and risers where there are none; those of a piece of the row. Splices stand out here and there only. */
const timberOn = (frame: Frame, piece: Reach, way: 'u' | 'v'): Edges | undefined => {
  const base = sticksOf(frame, 'BR')
  const boards = base.length > 0 ? base : sticksOf(frame, ...RISERS)
  return edgesOf(
    boards.filter((laid) => isWithin(piece, (laid.from.u + laid.to.u) / 2)).map((laid) => reachOf(laid, way)),
  )
}

interface Foot {
  readonly at: RowSpot
  readonly halfU: number
  readonly halfV: number
}

const feetOf = ({ built, axes }: Frame): readonly Foot[] =>
  built.supports
    .filter(({ rests }) => rests === 'floor')
    .map(({ at, halfXMm, halfYMm }) => {
      const runsAlongX = Math.abs(axes.along.x) > Math.abs(axes.along.y)
      return {
        at: spotAt(axes, at),
        halfU: runsAlongX ? halfXMm : halfYMm,
        halfV: runsAlongX ? halfYMm : halfXMm,
      }
    })

const platesUnder = (frame: Frame, piece: Reach, way: 'u' | 'v'): Edges | undefined =>
  edgesOf(
    feetOf(frame)
      .filter(({ at }) => isWithin(piece, at.u))
      .map(({ at, halfU, halfV }) => {
        const half = way === 'u' ? halfU : halfV
        return { from: at[way] - half, to: at[way] + half }
      }),
  )

/** Boards lie on the ground by themselves where they are no higher over it than this, mm. */
const ON_GROUND_MM = 1

const liesOnGround = (frame: Frame): boolean =>
  sticksOf(frame, 'BR').some(({ from, stick }) => from.z - stick.heightMm / 2 <= ON_GROUND_MM)

/**
 * The edges that a piece of a row tips over, across it (v) or along it (u): those of its base boards, but no further out than the
 * plates that bear them. Undefined where nothing stands on the ground.
 */
export const edgesUnder = (frame: Frame, piece: Reach, way: 'u' | 'v'): Edges | undefined => {
  const timber = timberOn(frame, piece, way)
  const plates = liesOnGround(frame) ? undefined : platesUnder(frame, piece, way)
  if (!timber || !plates) return timber
  return { low: Math.max(timber.low, plates.low), high: Math.min(timber.high, plates.high) }
}
