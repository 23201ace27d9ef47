import type { BarScreen } from '../../model/strength'
import type { PointLoad } from '../../solvers/beam/beam'
import { isWorse, judgeSag, judgeStress, worstOfAll, type ConduitSettings, type Judged } from './allowed'
import { carryAlike } from './carryAlike'
import type { Carried, HungPoint, StretchWorst } from './carrying'
import type { ConduitsUsed, ConduitUsed } from './conduitUsed'
import type { HungBar } from './hung'
import { SAME_PLACE_MM } from './railChain'

/** A hanger bar on its two rails in every state of load. */
export interface CarriedBar {
  readonly bar: HungBar
  readonly conduit: ConduitUsed
  readonly railV: readonly number[]
  readonly carried: Carried
}

const sided = ({ atMm, downN }: PointLoad): HungPoint => ({
  atMm,
  leftN: atMm < -SAME_PLACE_MM ? downN : 0,
  rightN: atMm > SAME_PLACE_MM ? downN : 0,
  middleN: Math.abs(atMm) <= SAME_PLACE_MM ? downN : 0,
})

/** Any tower of a bar may be harvested before any other. */
const carriedBar = (
  bar: HungBar,
  railV: readonly number[],
  conduits: ConduitsUsed,
  { proofTimes }: ConduitSettings,
): CarriedBar | undefined => {
  const conduit = conduits.get(bar.stock)
  if (!conduit) return undefined
  const carried = carryAlike({
    fromMm: bar.fromV,
    toMm: bar.toV,
    sticks: [{ toMm: bar.toV, conduit }],
    supportsMm: railV,
    hingesMm: [],
    dead: {
      points: bar.pipes,
      lines: [{ fromMm: bar.fromV, toMm: bar.toV, downNPerMm: bar.ownNPerMm }],
    },
    groups: bar.towers.map((tower) => [sided(tower)]),
    proofTimes,
  })
  return carried && { bar, conduit, railV, carried }
}

/** The bars of a row, each a beam over two rails; none where there are not two. */
export const carriedBars = (
  bars: readonly HungBar[],
  railV: readonly number[],
  conduits: ConduitsUsed,
  settings: ConduitSettings,
): readonly CarriedBar[] =>
  railV.length < 2 ? [] : bars.flatMap((bar) => carriedBar(bar, railV, conduits, settings) ?? [])

/** A stretch of one bar. */
export interface BarStretch {
  readonly of: CarriedBar
  readonly stretch: StretchWorst
}

interface Judging extends BarStretch, Judged {}

/** The worst stretch of all bars by one of the two screens. */
export const worstBarBy = (
  bars: readonly CarriedBar[],
  judge: (stretch: StretchWorst) => Judged,
): Judging | undefined => {
  const worst = bars.flatMap((of) => {
    const most = worstOfAll(of.carried.stretches.map((stretch) => ({ of, stretch, ...judge(stretch) })))
    return most ? [most] : []
  })
  return worstOfAll(worst)
}

/** Moment over a rail at `railV` on one side: the towers outside it, whichever of the others hang. */
const overRail = (towers: readonly PointLoad[], side: -1 | 1, halfMm: number): number =>
  towers.reduce((sum, { atMm, downN }) => sum + downN * Math.max(0, side * atMm - halfMm), 0)

/** Most moment between the rails: the towers there alone, the outer ones harvested. */
const betweenRails = (towers: readonly PointLoad[], halfMm: number): number => {
  const inner = towers.filter(({ atMm }) => Math.abs(atMm) < halfMm)
  const at = (v: number): number =>
    inner.reduce((sum, { atMm, downN }) => {
      const [low, high] = [Math.min(v, atMm), Math.max(v, atMm)]
      return sum + (downN * (halfMm + low) * (halfMm - high)) / (2 * halfMm)
    }, 0)
  return Math.max(0, ...inner.map(({ atMm }) => at(atMm)))
}

/** Halvings of a bar's length: a hundredth of a millimetre. */
const HALVINGS = 18

/**
 * Rail spacing at which the moment over the rails and that between them are alike, each with the towers hung that make it worst, mm;
 * undefined where none does so, as where all towers hang in the middle.
 */
export const bestSpacing = ({ towers, fromV, toV }: HungBar): number | undefined => {
  const over = (halfMm: number): number => Math.max(overRail(towers, -1, halfMm), overRail(towers, 1, halfMm))
  let [low, high] = [0, Math.min(-fromV, toV)]
  if (!(over(low) > 0)) return undefined
  for (let halving = 0; halving < HALVINGS; halving += 1) {
    const halfMm = (low + high) / 2
    if (over(halfMm) > betweenRails(towers, halfMm)) low = halfMm
    else high = halfMm
  }
  return low + high
}

/** The worst bar of a row; undefined where there is none. */
export const barScreen = (bars: readonly CarriedBar[], settings: ConduitSettings): BarScreen | undefined => {
  const byStress = worstBarBy(bars, (stretch) => judgeStress(stretch, settings))
  const bySag = worstBarBy(bars, (stretch) => judgeSag(stretch, settings))
  if (!byStress || !bySag) return undefined
  const isBySag = isWorse(bySag, byStress)
  const { of, stretch } = isBySag ? bySag : byStress
  const { bar, railV, conduit } = of
  return {
    u: bar.u,
    stock: conduit.stock,
    railV,
    loads: bar.towers.map(({ atMm, downN }) => ({ v: atMm, downN })),
    fromV: bar.fromV,
    toV: bar.toV,
    momentNmm: stretch.moment.value,
    stressMpa: stretch.stressMpa,
    sagMm: stretch.sag.value,
    under: (isBySag ? stretch.sag : stretch.moment).under,
    bestSpacingMm: bestSpacing(bar),
  }
}
