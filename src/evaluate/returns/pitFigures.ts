import type { Bay } from '../../checks/context'
import { pumpedLph } from '../../checks/pitAsks'
import type { Built } from '../../model/built'
import type { PartId } from '../../model/ids'
import { litresAt, type PitFacts } from '../../model/pitFacts'
import { volumeL } from '../../solvers/gravity/basin'
import { waterAt } from '../../solvers/water/properties'
import { inches } from '../../units/length'
import { HOURS_PER_DAY, MINUTES_PER_HOUR, toSeconds } from '../../units/time'
import { toCubicMetres } from '../../units/volume'
import { tubesL } from './pipes'

/**
 * Of what a small pump takes from the wall, so much lifts water; the rest warms it, and so in the end does what lifts it.
 * Common practice, no source: 20 to 45 % for pumps of this size.
 */
export const WIRE_TO_WATER = 0.25

/** Specific heat of water, J/(kg K), at 20 degrees C. CRC Handbook of Chemistry and Physics, from memory. */
const SPECIFIC_HEAT = 4182
const HEATED_AT_C = 20

/** A code's least sump is so wide and so deep; a check value for plausibility, not a rule. International Plumbing Code 712.3, from memory. */
const CODE_ACROSS_MM = inches(18)
const CODE_DEEP_MM = inches(30)

/** What stands on the paper of whoever lines a pit. */
export const HOLD_DOWN =
  'An empty lined pit floats where ground water stands high. Hold it down, or keep it at least a third full.'

/** All the water of a bay while it runs. Volumes L. */
export interface SystemWater {
  /** Pits at their running levels. */
  readonly pitsL: number
  /** Mains, risers, laterals and tubes, full. */
  readonly pipesL: number
  /** In towers, troughs and drains. */
  readonly onItsWayL: number
  /** Fish tanks and whatever else the settings tell of. */
  readonly otherL: number
  readonly totalL: number
  /** What leaves the pits, L/h; how often an hour that is all the water; what plants and air take a day, L. */
  readonly pumpedLph: number
  readonly turnoverPerHour: number
  readonly usePerDayL: number
  /** Electric, W, at `WIRE_TO_WATER`; and the warming of all the water in a day that loses no heat, kelvin. */
  readonly pumpW: number
  readonly warmingC: number
}

const sum = <T>(all: Iterable<T>, of: (one: T) => number): number =>
  [...all].reduce((so, one) => so + of(one), 0)

/** Warming, K, of so much water, L, in a day by so many W, nothing lost: 150 W into 1893 L, 1.6 K. */
export const warmingInADay = (watts: number, litres: number): number => {
  const joules = watts * toSeconds(HOURS_PER_DAY * MINUTES_PER_HOUR)
  const kg = toCubicMetres(litres) * waterAt(HEATED_AT_C).densityKgM3
  return kg > 0 ? joules / (kg * SPECIFIC_HEAT) : 0
}

const supplyTubes = ({ tubes }: Built) => tubes.filter(({ role }) => role !== 'drain' && role !== 'drop')

const towersL = ({ water, settings }: Bay): number =>
  sum(water.rows.values(), ({ tubeLph }) => tubeLph.filter((lph) => lph > 0).length) * settings.towerHoldUpL

/** All the water of a bay as it runs, how often it goes round, what is used of it and what warms it. */
export const systemWater = (bay: Bay): SystemWater => {
  const { returns, settings, water } = bay
  const pitsL = sum(bay.built, ({ pit }) => (pit ? litresAt(pit, pit.runningMm) : 0))
  const pipesL = sum([...bay.built, ...bay.joinedPipes], (built) => tubesL(supplyTubes(built)))
  const onItsWayL =
    towersL(bay) +
    sum(returns.troughs.values(), ({ standingL }) => standingL) +
    sum(returns.drains.values(), ({ standingL }) => standingL)
  const totalL = pitsL + pipesL + onItsWayL + settings.otherWaterL
  const outLph = sum(water.pumps.keys(), (pit) => pumpedLph(bay, pit))
  const pumpW = sum(water.pumps.values(), ({ watts }) => watts) / WIRE_TO_WATER
  return {
    pitsL,
    pipesL,
    onItsWayL,
    otherL: settings.otherWaterL,
    totalL,
    pumpedLph: outLph,
    turnoverPerHour: totalL > 0 ? outLph / totalL : 0,
    usePerDayL: totalL * settings.dailyUse,
    pumpW,
    warmingC: warmingInADay(pumpW, totalL),
  }
}

/** One pit in its bay. Volumes L, times min. */
export interface PitFigures {
  readonly part: PartId
  readonly runningL: number
  /** From running down to pump off. */
  readonly swingL: number
  readonly pumpedLph: number
  /** From running to pump off with nothing coming home; undefined while no pump runs. */
  readonly dryMin: number | undefined
  /** This pit's part of what is used a day, as its water is a part of all pits'; and how long the swing lasts on it. */
  readonly usePerDayL: number
  readonly swingLastsMin: number | undefined
  /** What is dug for its inside alone, without lining or bed; 0 for what stands on the floor. */
  readonly digL: number
  readonly holdDown: string | undefined
  /** Smaller than a code's least sump: to be known, not a fault. */
  readonly isUnderCodeSize: boolean
}

const acrossMm = ({ basin }: PitFacts): number => {
  if (basin.shape === 'round') return basin.diameterMm
  return basin.shape === 'box'
    ? Math.min(basin.lengthMm, basin.widthMm)
    : Math.min(basin.topLengthMm, basin.topWidthMm)
}

const lasting = (litres: number, lph: number): number | undefined =>
  lph > 0 ? (Math.max(0, litres) / lph) * MINUTES_PER_HOUR : undefined

/** What a pit holds and how long it lasts, in its bay's own water; undefined for what is no pit. */
export const pitFigures = (bay: Bay, part: PartId, system = systemWater(bay)): PitFigures | undefined => {
  const built = bay.builtOf.get(part)
  const pit = built?.pit
  if (!built || !pit) return undefined
  const runningL = litresAt(pit, pit.runningMm)
  const swingL = runningL - litresAt(pit, pit.pumpOffMm)
  const usePerDayL = system.pitsL > 0 ? (system.usePerDayL * runningL) / system.pitsL : 0
  const outLph = pumpedLph(bay, part)
  const deepMm = -Math.min(
    0,
    ...built.bodies.filter(({ role }) => role === 'pit').map(({ fromMm }) => fromMm),
  )
  const digL = volumeL(pit.basin, deepMm)
  return {
    part,
    runningL,
    swingL,
    pumpedLph: outLph,
    dryMin: lasting(swingL, outLph),
    usePerDayL,
    swingLastsMin: lasting(swingL, usePerDayL / HOURS_PER_DAY),
    digL,
    holdDown: digL > 0 ? HOLD_DOWN : undefined,
    isUnderCodeSize: acrossMm(pit) < CODE_ACROSS_MM || pit.rimMm - pit.bottomMm < CODE_DEEP_MM,
  }
}
