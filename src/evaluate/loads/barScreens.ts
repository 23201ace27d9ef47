import { forceOf, lengthOf, ratioOf, stressOf, term } from '../../checks/found'
import type { Term } from '../../model/finding'
import type { Screen } from '../../model/strength'
import { allowedMpa, allowedSag, judgeSag, judgeStress, worstOfAll, type ConduitSettings } from './allowed'
import { worstBarBy, type BarStretch, type CarriedBar } from './bars'
import { stressTerms } from './railScreens'

const spot = ({ bar }: CarriedBar, v: number): Screen['at'] => ({ u: bar.u, v, z: bar.z })

/** Below this, N, a bar lies on its rail all the same. */
const NO_LIFT_N = 1

/** The least that a rail has of a bar is what it has while none are left but those outside the other. */
const lastTowerTerms = ({ carried }: CarriedBar): Term[] => {
  const liftN = Math.max(0, ...carried.supports.map(({ leastN }) => -leastN))
  return liftN < NO_LIFT_N
    ? []
    : [term('Left alone, towers outside a rail lift the other end with', forceOf(liftN))]
}

const loadTerms = ({ of, stretch }: BarStretch): Term[] => {
  const { bar } = of
  const here = bar.towers.filter(({ atMm }) => atMm > stretch.fromMm && atMm < stretch.toMm)
  return [
    term(
      stretch.isOverhang ? 'Bar past its rail' : 'Bar, rail to rail',
      lengthOf(stretch.toMm - stretch.fromMm),
    ),
    term('Towers on it', { value: here.length, unit: 'count' }),
    term('They weigh', forceOf(here.reduce((sum, { downN }) => sum + downN, 0))),
    term('The whole bar weighs', forceOf(bar.ownNPerMm * (bar.toV - bar.fromV))),
    ...(bar.pipes.length > 0
      ? [term('Pipes full of water on it', forceOf(bar.pipes.reduce((sum, { downN }) => sum + downN, 0)))]
      : []),
    ...lastTowerTerms(of),
  ]
}

const stressScreen = (bars: readonly CarriedBar[], settings: ConduitSettings): Screen[] => {
  const worst = worstBarBy(bars, (stretch) => judgeStress(stretch, settings))
  if (!worst) return []
  const { of, stretch, state, used } = worst
  return [
    {
      id: 'bar-stress',
      mark: 'HB',
      state,
      used,
      measured: stressOf(stretch.stressMpa),
      limit: stressOf(allowedMpa(settings)),
      under: stretch.moment.under,
      at: spot(of, stretch.moment.atMm),
      terms: [...loadTerms(worst), ...stressTerms(stretch, settings)],
    },
  ]
}

const sagScreen = (bars: readonly CarriedBar[], settings: ConduitSettings): Screen[] => {
  const worst = worstBarBy(bars, (stretch) => judgeSag(stretch, settings))
  if (!worst) return []
  const { of, stretch, state, used } = worst
  return [
    {
      id: 'bar-sag',
      mark: 'HB',
      state,
      used,
      measured: lengthOf(stretch.sag.value),
      limit: lengthOf(allowedSag(stretch, settings)),
      under: stretch.sag.under,
      at: spot(of, stretch.sag.atMm),
      terms: [
        ...loadTerms(worst),
        term('Sag', lengthOf(stretch.sag.value)),
        term('Allowed: length over', ratioOf(settings.sagOver)),
      ],
    },
  ]
}

/** How far a bar is from lying still: what lifts one end of it, against what it carries in all. */
const liftsOf = (of: CarriedBar) => {
  const carriedN = of.carried.supports.reduce((sum, { fullN }) => sum + fullN, 0)
  return of.carried.supports.map((support) => {
    const liftN = -support.leastHungN
    return { of, support, liftN, state: 'Too long' as const, used: 1 + liftN / Math.max(NO_LIFT_N, carriedN) }
  })
}

/** A bar only lies on its rails: one whose towers all hang past a rail, or on one side, may tip over it. */
const liftScreen = (bars: readonly CarriedBar[]): Screen[] => {
  const worst = worstOfAll(bars.flatMap(liftsOf).filter(({ liftN }) => liftN >= NO_LIFT_N))
  if (!worst) return []
  const { of, support, liftN, state, used } = worst
  return [
    {
      id: 'rail-uplift',
      mark: 'HB',
      state,
      used,
      measured: forceOf(liftN),
      limit: forceOf(0),
      under: support.leastHungN < support.fullN ? 'one-side' : 'full',
      at: spot(of, support.atMm),
      terms: [
        term('With everything hung the rail carries', forceOf(support.fullN)),
        term('At least', forceOf(support.leastHungN)),
      ],
    },
  ]
}

/** What is screened of a row's hanger bars, each at its worst place. */
export const barScreens = (bars: readonly CarriedBar[], settings: ConduitSettings): readonly Screen[] => [
  ...stressScreen(bars, settings),
  ...sagScreen(bars, settings),
  ...liftScreen(bars),
]
