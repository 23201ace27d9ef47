import { EVEN_SPREAD } from '../../evaluate/water/figures'
import { feetPerSecond, toFeetPerSecond } from '../../units/velocity'
import { gph, toGph } from '../../units/flow'
import type { Units } from '../../units/length'
import { shadeOf } from '../../drawing/cividis'

/** What a painted scale runs over, in the program's own unit: litres an hour, metres a second. */
export interface Scale {
  readonly low: number
  readonly high: number
}

/** From the program's unit to the number that a reader has, and back. */
interface Reading {
  readonly toNumber: (value: number) => number
  readonly fromNumber: (number: number) => number
}

const asIs: Reading = { toNumber: (value) => value, fromNumber: (number) => number }

const flowReading = (units: Units): Reading =>
  units === 'metric' ? asIs : { toNumber: toGph, fromNumber: gph }

const velocityReading = (units: Units): Reading =>
  units === 'metric' ? asIs : { toNumber: toFeetPerSecond, fromNumber: feetPerSecond }

/** The ends of a scale lie on whole steps, about so many from end to end. */
const STEPS = 5

/** Sums of tenths are a hair off; an end that is a hair beyond a step is on it. */
const HAIR = 1e-6

/** The next of 1, 2, 5, 10, 20 ... that is no smaller, tenths and hundredths too. */
const roundStep = (least: number): number => {
  const power = 10 ** Math.floor(Math.log10(least))
  const step = [1, 2, 5].find((one) => one * power >= least * (1 - HAIR)) ?? 10
  return step * power
}

const roundEnds = (least: number, most: number, { toNumber, fromNumber }: Reading): Scale => {
  const [from, to] = [toNumber(least), toNumber(most)]
  const step = roundStep((to - from) / STEPS)
  return {
    low: fromNumber(Math.max(0, Math.floor(from / step + HAIR) * step)),
    high: fromNumber(Math.ceil(to / step - HAIR) * step),
  }
}

/**
 * The scale of a bay whose towers take from `leastLph` to `mostLph`. It is never narrower than the spread that still counts
 * as Even: so an even bay looks even, and a hundredth of a gallon is not stretched over all colours.
 */
export const flowScale = (leastLph: number, mostLph: number, units: Units): Scale => {
  const short = Math.max(0, mostLph * EVEN_SPREAD - (mostLph - leastLph))
  const reading = flowReading(units)
  const floor = reading.fromNumber(0.1)
  return roundEnds(Math.max(0, leastLph - short / 2), Math.max(floor, mostLph + short / 2), reading)
}

/** From standing water to the fastest, and never short of what a pipe may carry. */
export const velocityScale = (fastestMS: number, units: Units): Scale =>
  roundEnds(0, Math.max(fastestMS, FASTEST_MS), velocityReading(units))

/** Water in a main or a lateral that runs faster wears at its fittings and hammers. Common practice, no source. */
export const FASTEST_MS = feetPerSecond(5)

/** Where a value lies on the scale: 0 at its low end, 1 at its high end. */
export const shareOn = ({ low, high }: Scale, value: number): number => (value - low) / (high - low)

/** What a tower without water has in place of a shade. */
export const DRY = 255

/** The shade of each value; `DRY` where nothing flows. */
export const shadesOf = (values: Float64Array, scale: Scale): Uint8Array => {
  const shades = new Uint8Array(values.length)
  for (let i = 0; i < values.length; i += 1) {
    const value = values[i] ?? 0
    shades[i] = value > 0 ? shadeOf(shareOn(scale, value)) : DRY
  }
  return shades
}

export const isSameScale = (a: Scale, b: Scale): boolean => a.low === b.low && a.high === b.high
