import type { Tube } from '../../model/built'
import type { LineLoad, PointLoad } from '../../solvers/beam/beam'
import type { ConduitsUsed } from './conduitUsed'
import { spotAt, type Frame, type FrameStick, type HungAt } from './frame'
import { borneTubes, fullPipeNPerMm } from './rowLoads'
import type { RowSpot } from '../../model/strength'

/** A hanger bar with all that lies on it or hangs off it. Along it, v; mm and N. */
export interface HungBar {
  readonly u: number
  readonly z: number
  readonly fromV: number
  readonly toV: number
  readonly stock: string
  /** Its own weight, N/mm. */
  readonly ownNPerMm: number
  /** Pipes full of water that are tied to it. */
  readonly pipes: readonly PointLoad[]
  readonly towers: readonly PointLoad[]
}

/** Pipes that hang on the rails between bars: what a straight piece of one weighs, and where it lies. */
export interface HungPipe {
  readonly from: RowSpot
  readonly to: RowSpot
  readonly nPerMm: number
}

export interface Hung {
  /** Along u. */
  readonly bars: readonly HungBar[]
  readonly railPipes: readonly HungPipe[]
}

/** A hook hangs from the bar over it: nearer along the row than this, mm. */
const SAME_BAR_MM = 2

const indexNear = (bars: readonly { readonly u: number }[], u: number): number => {
  let [low, high] = [0, bars.length - 1]
  while (low < high) {
    const middle = (low + high) >> 1
    const between = ((bars[middle]?.u ?? 0) + (bars[middle + 1]?.u ?? 0)) / 2
    if (u <= between) high = middle
    else low = middle + 1
  }
  return low
}

interface Filling {
  readonly laid: FrameStick
  readonly u: number
  readonly fromV: number
  readonly toV: number
  readonly z: number
  readonly pipes: PointLoad[]
  readonly towers: PointLoad[]
}

const emptyBar = (laid: FrameStick): Filling => ({
  laid,
  u: (laid.from.u + laid.to.u) / 2,
  fromV: Math.min(laid.from.v, laid.to.v),
  toV: Math.max(laid.from.v, laid.to.v),
  z: laid.from.z,
  pipes: [],
  towers: [],
})

const hangTowers = (bars: readonly Filling[], towers: readonly HungAt[], towerN: number): void => {
  for (const { u, v } of towers) {
    const bar = bars[indexNear(bars, u)]
    if (bar && Math.abs(bar.u - u) < SAME_BAR_MM) bar.towers.push({ atMm: v, downN: towerN })
  }
}

const piecesOf = (frame: Frame, { path, stock }: Tube): HungPipe[] =>
  path.slice(1).map((to, index) => ({
    from: spotAt(frame.axes, path[index] ?? to),
    to: spotAt(frame.axes, to),
    nPerMm: fullPipeNPerMm(stock),
  }))

const clamp = (value: number, [least, most]: readonly [number, number]): number =>
  Math.min(Math.max(value, least), most)

const onBar = (bar: Filling, v: number, downN: number): void => {
  if (downN > 0) bar.pipes.push({ atMm: clamp(v, [bar.fromV, bar.toV]), downN })
}

/**
 * Each bar bears a pipe along the row for half the way to its neighbours, the first and the last what sticks out; what lies across
 * it, the nearest bar bears in its middle.
 */
const layPipe = (bars: readonly Filling[], { from, to, nPerMm }: HungPipe): void => {
  const [fromU, toU] = from.u < to.u ? [from.u, to.u] : [to.u, from.u]
  const lengthMm = Math.hypot(to.u - from.u, to.v - from.v, to.z - from.z)
  const first = indexNear(bars, fromU)
  const last = indexNear(bars, toU)
  for (let index = first; index <= last; index += 1) {
    const bar = bars[index]
    if (!bar) continue
    const [before, after] = [bars[index - 1], bars[index + 1]]
    const start = index === first || !before ? fromU : (before.u + bar.u) / 2
    const end = index === last || !after ? toU : (after.u + bar.u) / 2
    const share = toU > fromU ? (end - start) / (toU - fromU) : 1
    onBar(bar, (from.v + to.v) / 2, nPerMm * lengthMm * share)
  }
}

/** What hangs where on a row: towers and pipes on the bars; pipes that lie lower than the bars on the rails themselves. */
export const hungOn = (frame: Frame, towerN: number, conduits: ConduitsUsed): Hung => {
  const bars = (frame.sticks.get('HB') ?? []).map(emptyBar)
  hangTowers(bars, frame.towers, towerN)
  const pipes = borneTubes(frame.built).flatMap((tube) => piecesOf(frame, tube))
  const barZ = bars[0]?.z ?? -Infinity
  const isOnBars = ({ from, to }: HungPipe): boolean => bars.length > 0 && (from.z + to.z) / 2 > barZ
  for (const pipe of pipes) if (isOnBars(pipe)) layPipe(bars, pipe)
  return {
    bars: bars.map(({ laid, u, z, fromV, toV, pipes: onIt, towers }) => ({
      u,
      z,
      fromV,
      toV,
      stock: laid.stick.stock,
      ownNPerMm: conduits.get(laid.stick.stock)?.weightNPerMm ?? 0,
      pipes: onIt,
      towers,
    })),
    railPipes: pipes.filter((pipe) => !isOnBars(pipe)),
  }
}

/** Of a load at `v` over two rails, what the one at `railV` takes, by statics: W (1 - e / g); under 0 beyond the other. */
export const shareOn = (railV: number, otherV: number, v: number): number => (otherV - v) / (otherV - railV)

/** What a pipe that hangs on the rails puts on one of them. */
export const pipeOnRail = (
  { from, to, nPerMm }: HungPipe,
  railV: number,
  otherV: number,
): { readonly points: readonly PointLoad[]; readonly lines: readonly LineLoad[] } => {
  const share = shareOn(railV, otherV, (from.v + to.v) / 2)
  const lengthMm = Math.hypot(to.u - from.u, to.v - from.v, to.z - from.z)
  const [fromMm, toMm] = from.u < to.u ? [from.u, to.u] : [to.u, from.u]
  if (toMm - fromMm < lengthMm / 2)
    return { points: [{ atMm: (fromMm + toMm) / 2, downN: nPerMm * lengthMm * share }], lines: [] }
  return { points: [], lines: [{ fromMm, toMm, downNPerMm: (nPerMm * lengthMm * share) / (toMm - fromMm) }] }
}
