import { inches, MM_PER_CM } from '../units/length'
import { pounds } from '../units/mass'

/**
 * The revised lifting equation for work with two hands: Waters, Putz-Anderson and Garg, Applications Manual for the Revised NIOSH
 * Lifting Equation, NIOSH Publication 94-110, 1994. It screens a task that is done for an hour or less at a time, standing on a
 * firm dry floor; wet floors, one hand, and carrying are outside it.
 */

type Grip = 'good' | 'fair' | 'poor'

/** A lift as it is at the end of it that is judged. */
export interface Lift {
  /** From the middle between the ankles to the middle between the hands, mm. */
  readonly reachMm: number
  /** Hands over the floor, mm. */
  readonly handsMm: number
  /** How far up or down the hands go, mm. */
  readonly travelMm: number
  /** How far the body is turned out of the plane of its feet, degrees. */
  readonly twistDeg: number
  readonly grip: Grip
  readonly liftsAMin: number
}

/** Each is 1 where nothing is taken off, and 0 where the lift is outside of what the equation allows. */
interface Multipliers {
  readonly reach: number
  readonly height: number
  readonly travel: number
  readonly twist: number
  readonly pace: number
  readonly grip: number
}

export interface RecommendedWeight {
  readonly multipliers: Multipliers
  /** The recommended weight limit, kg; 0 where a multiplier is. */
  readonly limitKg: number
}

/** The numbers of one of the two forms in which the manual prints the equation; each is rounded in its own units. */
interface LiftingForm {
  readonly loadKg: number
  readonly nearMm: number
  readonly farMm: number
  readonly knuckleMm: number
  readonly perMm: number
  readonly topMm: number
  readonly travelMm: number
  readonly leastTravelMm: number
  readonly mostTravelMm: number
}

/** In pounds and inches: 51; 10 / H; 1 - 0.0075 |V - 30|; 0.82 + 1.8 / D. */
export const inPounds: LiftingForm = {
  loadKg: pounds(51),
  nearMm: inches(10),
  farMm: inches(25),
  knuckleMm: inches(30),
  perMm: 0.0075 / inches(1),
  topMm: inches(70),
  travelMm: inches(1.8),
  leastTravelMm: inches(10),
  mostTravelMm: inches(70),
}

/** In kilograms and centimetres: 23; 25 / H; 1 - 0.003 |V - 75|; 0.82 + 4.5 / D. */
export const inKilograms: LiftingForm = {
  loadKg: 23,
  nearMm: 25 * MM_PER_CM,
  farMm: 63 * MM_PER_CM,
  knuckleMm: 75 * MM_PER_CM,
  perMm: 0.003 / MM_PER_CM,
  topMm: 175 * MM_PER_CM,
  travelMm: 4.5 * MM_PER_CM,
  leastTravelMm: 25 * MM_PER_CM,
  mostTravelMm: 175 * MM_PER_CM,
}

/** More of a turn than this is outside of the equation, degrees. */
const MOST_TWIST_DEG = 135
const PER_DEGREE = 0.0032

const reachOf = (reachMm: number, { nearMm, farMm }: LiftingForm): number =>
  reachMm > farMm ? 0 : nearMm / Math.max(reachMm, nearMm)

const heightOf = (handsMm: number, { knuckleMm, perMm, topMm }: LiftingForm): number =>
  handsMm < 0 || handsMm > topMm ? 0 : 1 - perMm * Math.abs(handsMm - knuckleMm)

const travelOf = (mm: number, { travelMm, leastTravelMm, mostTravelMm }: LiftingForm): number =>
  mm > mostTravelMm ? 0 : Math.min(1, 0.82 + travelMm / Math.max(mm, leastTravelMm))

const twistOf = (deg: number): number => (Math.abs(deg) > MOST_TWIST_DEG ? 0 : 1 - PER_DEGREE * Math.abs(deg))

/** Lifts a minute and their multiplier for an hour or less: Table 5 of the manual, from memory but for 3 a minute. */
const PACES: readonly (readonly [liftsAMin: number, multiplier: number])[] = [
  [0.2, 1],
  [0.5, 0.97],
  [1, 0.94],
  [2, 0.91],
  [3, 0.88],
  [4, 0.84],
  [5, 0.8],
  [6, 0.75],
  [7, 0.7],
  [8, 0.6],
  [9, 0.52],
  [10, 0.45],
  [11, 0.41],
  [12, 0.37],
  [13, 0.34],
  [14, 0.31],
  [15, 0.28],
]

/** Whoever lifts from under knuckle height has no more than so many lifts a minute. */
const MOST_LOW_PACE = 12

/** Between two rows of the table the multiplier lies on the straight line between theirs. */
const paceOf = (liftsAMin: number, isLow: boolean): number => {
  if (isLow && liftsAMin > MOST_LOW_PACE) return 0
  let before = PACES[0]
  for (const row of PACES) {
    if (before && liftsAMin <= row[0]) {
      const wide = row[0] - before[0]
      const share = wide > 0 ? Math.max(0, liftsAMin - before[0]) / wide : 0
      return before[1] + share * (row[1] - before[1])
    }
    before = row
  }
  return 0
}

/** Table 7 of the manual: a fair grip costs nothing where the hands stay over knuckle height. */
const gripOf = (grip: Grip, isLow: boolean): number => {
  if (grip === 'poor') return 0.9
  return grip === 'fair' && isLow ? 0.95 : 1
}

/** The recommended weight limit of a lift. Of the two printed forms that in pounds and inches, unless said otherwise. */
export const recommendedWeight = (lift: Lift, form: LiftingForm = inPounds): RecommendedWeight => {
  const isLow = lift.handsMm < form.knuckleMm
  const multipliers = {
    reach: reachOf(lift.reachMm, form),
    height: heightOf(lift.handsMm, form),
    travel: travelOf(lift.travelMm, form),
    twist: twistOf(lift.twistDeg),
    pace: paceOf(lift.liftsAMin, isLow),
    grip: gripOf(lift.grip, isLow),
  }
  return {
    multipliers,
    limitKg: Object.values(multipliers).reduce((product, each) => product * each, form.loadKg),
  }
}

/** How often the recommended weight a load is: the lifting index; Infinity where no weight is recommended. */
export const liftingIndex = (loadKg: number, { limitKg }: RecommendedWeight): number =>
  limitKg > 0 ? loadKg / limitKg : Infinity
