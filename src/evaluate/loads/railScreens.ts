import { forceOf, lengthOf, momentOf, ratioOf, stressOf, term } from '../../checks/found'
import type { Term } from '../../model/finding'
import type { Screen } from '../../model/strength'
import { inches } from '../../units/length'
import {
  allowedMpa,
  allowedSag,
  judgeSag,
  judgeStress,
  worstOfAll,
  type ConduitSettings,
  type Judged,
} from './allowed'
import type { StretchWorst, SupportWorst } from './carrying'
import { hingesOf, type RailChain } from './railChain'
import { fullOf } from './railParts'
import type { CarriedRail } from './rails'

/** A stretch of a rail line. */
interface RailStretch {
  readonly rail: CarriedRail
  readonly stretch: StretchWorst
  readonly mark: string
}

const markAt = ({ pieces }: RailChain, u: number): string =>
  (pieces.find(({ toU }) => toU >= u) ?? pieces.at(-1))?.stick.mark ?? 'RL'

const stretchesOf = (rails: readonly CarriedRail[]): RailStretch[] =>
  rails.flatMap((rail) =>
    rail.stretches.map((stretch) => ({ rail, stretch, mark: markAt(rail.chain, stretch.moment.atMm) })),
  )

const spot = ({ chain }: CarriedRail, u: number): Screen['at'] => ({ u, v: chain.v, z: chain.z })

/** What lies on a stretch of rail, as it is summed by hand. */
const loadTerms = ({ rail, stretch }: RailStretch): Term[] => {
  const { fromMm, toMm, isOverhang, conduit } = stretch
  const here = rail.hangers.filter(({ atMm }) => atMm >= fromMm && atMm <= toMm)
  return [
    term(isOverhang ? 'Rail past its last riser' : 'Span, riser to riser', lengthOf(toMm - fromMm)),
    term('Bars on it', { value: here.length, unit: 'count' }),
    term('They put on it', forceOf(here.reduce((sum, hanger) => sum + fullOf(hanger), 0))),
    term('It weighs itself', forceOf(conduit.weightNPerMm * (toMm - fromMm))),
  ]
}

/** The worst stretch of each kind of rail stick, by one of the two screens. */
const worstByMark = (
  rails: readonly CarriedRail[],
  judge: (stretch: StretchWorst) => Judged,
): (RailStretch & Judged)[] => {
  const stretches = stretchesOf(rails).map((each) => ({ ...each, ...judge(each.stretch) }))
  const marks = [...new Set(stretches.map(({ mark }) => mark))]
  return marks.flatMap((mark) => worstOfAll(stretches.filter((each) => each.mark === mark)) ?? [])
}

/** Terms of a stress in conduit from its moment: rails and bars alike. */
export const stressTerms = (
  { moment, conduit, stressMpa, proofStressMpa }: StretchWorst,
  { conduitYieldMpa, proofTimes }: ConduitSettings,
): Term[] => [
  term('Bending moment', momentOf(Math.abs(moment.value))),
  term('Conduit, outside', lengthOf(conduit.odMm)),
  term('Its wall', lengthOf(conduit.wallMm)),
  term('Stress', stressOf(stressMpa)),
  term('Yield, assumed', stressOf(conduitYieldMpa)),
  term('Proof load, times the towers', ratioOf(proofTimes)),
  term('Stress at the proof load', stressOf(proofStressMpa)),
]

const stressScreens = (rails: readonly CarriedRail[], settings: ConduitSettings): Screen[] =>
  worstByMark(rails, (stretch) => judgeStress(stretch, settings)).map((worst) => ({
    id: 'rail-stress',
    mark: worst.mark,
    state: worst.state,
    used: worst.used,
    measured: stressOf(worst.stretch.stressMpa),
    limit: stressOf(allowedMpa(settings)),
    under: worst.stretch.moment.under,
    at: spot(worst.rail, worst.stretch.moment.atMm),
    terms: [...loadTerms(worst), ...stressTerms(worst.stretch, settings)],
  }))

const sagScreens = (rails: readonly CarriedRail[], settings: ConduitSettings): Screen[] =>
  worstByMark(rails, (stretch) => judgeSag(stretch, settings)).map((worst) => {
    const { stretch } = worst
    const sagMm = stretch.sag.value
    return {
      id: 'rail-sag',
      mark: worst.mark,
      state: worst.state,
      used: worst.used,
      measured: lengthOf(sagMm),
      limit: lengthOf(allowedSag(stretch, settings)),
      under: stretch.sag.under,
      at: spot(worst.rail, stretch.sag.atMm),
      terms: [
        ...loadTerms(worst),
        term('Sag', lengthOf(sagMm)),
        ...(sagMm > 0 ? [term('Length over its sag', ratioOf((stretch.toMm - stretch.fromMm) / sagMm))] : []),
        term('Allowed: length over', ratioOf(settings.sagOver)),
      ],
    }
  })

/** A slip joint lies over a riser or no further off than this, mm: within a few inches. Common practice, no source. */
const JOINT_TO_RISER_MM = inches(4)

const nearest = (u: number, { supportsU }: RailChain): number =>
  supportsU.reduce((least, support) => Math.min(least, Math.abs(support - u)), Infinity)

/**
 * The joint that is furthest from its riser. What the rail bears with a hinge there is screened by stress and sag; a joint that kinks
 * off a riser drops besides, so one too far away is loaded for proof before it is lived with.
 */
const jointScreens = (rails: readonly CarriedRail[]): Screen[] => {
  const joints = rails.flatMap((rail) =>
    hingesOf(rail.chain).map((u) => ({ rail, u, apartMm: nearest(u, rail.chain) })),
  )
  const [first, ...others] = joints
  if (!first) return []
  const { rail, u, apartMm } = others.reduce((a, b) => (b.apartMm > a.apartMm ? b : a), first)
  const used = apartMm / JOINT_TO_RISER_MM
  return [
    {
      id: 'rail-joint',
      mark: markAt(rail.chain, u),
      state: used <= 1 ? 'Within' : 'Proof-load',
      used,
      measured: lengthOf(apartMm),
      limit: lengthOf(JOINT_TO_RISER_MM),
      under: 'full',
      at: spot(rail, u),
      terms: [term('Joint from the nearest riser', lengthOf(apartMm))],
    },
  ]
}

/** Lift is held against the frame's weight with the safety that overturning is: IBC 1807.2.3, for retaining walls, borrowed. */
const LIFT_SAFETY = 1.5

/** A lift below this is none, N: less than a foot of the lightest rail weighs. */
const NO_LIFT_N = 1

/** What holds a rail down: the frame's own weight at one riser, 0 where there is none, and whether runners tie it to its neighbours. */
export interface HeldDown {
  readonly frameN: number
  readonly isTiedAlong: boolean
}

interface Lift extends Judged {
  readonly rail: CarriedRail
  readonly support: SupportWorst
  readonly liftN: number
  readonly holdsN: number
}

/**
 * A rail is captured in its holes, so what lifts it lifts its riser: it holds while that is less than what stands on the riser's foot
 * without towers, and on its neighbours' where a runner ties them. More, and the foot leaves its plate. Straps from a house
 * hold nothing down: a rail that lifts there swings.
 */
const judgeLift = (liftN: number, holdsN: number): Judged => {
  if (liftN < NO_LIFT_N) return { state: 'Within', used: 0 }
  if (!(holdsN > 0)) return { state: 'Proof-load', used: 1 }
  const used = (liftN * LIFT_SAFETY) / holdsN
  if (used <= 1) return { state: 'Within', used }
  return { state: liftN <= holdsN ? 'Proof-load' : 'Too long', used }
}

/** Frame that stands still with a riser, N. */
const heldAt = (index: number, risers: number, { frameN, isTiedAlong }: HeldDown): number => {
  const neighbours = Number(index > 0) + Number(index < risers - 1)
  return frameN * (isTiedAlong ? 1 + neighbours : 1)
}

const liftsOf = (rail: CarriedRail, held: HeldDown): Lift[] =>
  rail.supports.map((support, index) => {
    const liftN = Math.max(0, -support.leastN)
    const holdsN = heldAt(index, rail.supports.length, held)
    return { rail, support, liftN, holdsN, ...judgeLift(liftN, holdsN) }
  })

const upliftScreens = (rails: readonly CarriedRail[], held: HeldDown): Screen[] => {
  const worst = worstOfAll(rails.flatMap((rail) => liftsOf(rail, held)))
  if (!worst) return []
  const { rail, support, liftN, holdsN, state, used } = worst
  return [
    {
      id: 'rail-uplift',
      mark: markAt(rail.chain, support.atMm),
      state,
      used,
      measured: forceOf(liftN),
      limit: forceOf(holdsN / LIFT_SAFETY),
      under: liftN > 0 ? support.leastUnder : 'full',
      at: spot(rail, support.atMm),
      terms: [
        term('With everything hung the riser carries', forceOf(support.fullN)),
        term('At least', forceOf(support.leastN)),
        term('Frame that stands there weighs', forceOf(holdsN)),
        term('Safety', ratioOf(LIFT_SAFETY)),
      ],
    },
  ]
}

/** A line that rests on too little is refused: no number says how it would bend. */
const looseScreens = (rails: readonly CarriedRail[], settings: ConduitSettings): Screen[] => {
  const rail = rails.find(({ loose }) => loose.length > 0)
  const part = rail?.loose[0]
  if (!rail || !part) return []
  return [
    {
      id: 'rail-stress',
      mark: markAt(rail.chain, part.fromU),
      state: 'Too long',
      used: Infinity,
      measured: stressOf(Infinity),
      limit: stressOf(allowedMpa(settings)),
      under: 'empty',
      at: spot(rail, part.fromU),
      terms: [term('Rail that rests on too few risers', lengthOf(part.toU - part.fromU))],
    },
  ]
}

/** What is screened of a row's rails, each at its worst place. */
export const railScreens = (
  rails: readonly CarriedRail[],
  settings: ConduitSettings,
  held: HeldDown,
): readonly Screen[] => [
  ...looseScreens(rails, settings),
  ...stressScreens(rails, settings),
  ...sagScreens(rails, settings),
  ...jointScreens(rails),
  ...upliftScreens(rails, held),
]
