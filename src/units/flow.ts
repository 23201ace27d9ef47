import { MINUTES_PER_HOUR } from './time'
import { cubicMetres, gallons, toCubicMetres, toGallons } from './volume'

/** Flows inside the program are litres an hour; solvers alone take cubic metres a second. */
const SECONDS_PER_HOUR = 3600

/** US gallons an hour to litres an hour: what one tower takes. */
export const gph = (value: number): number => gallons(value)

/** Litres an hour to US gallons an hour. */
export const toGph = (flowLph: number): number => toGallons(flowLph)

/** US gallons a minute to litres an hour: what a main or a pump carries. */
export const gpm = (value: number): number => gallons(value) * MINUTES_PER_HOUR

/** Litres an hour to US gallons a minute. */
export const toGpm = (flowLph: number): number => toGallons(flowLph) / MINUTES_PER_HOUR

/** Litres a minute to litres an hour. */
export const litresPerMinute = (value: number): number => value * MINUTES_PER_HOUR

/** Litres an hour to litres a minute. */
export const toLitresPerMinute = (flowLph: number): number => flowLph / MINUTES_PER_HOUR

/** Cubic metres a second to litres an hour. */
export const fromM3PerS = (flowM3PerS: number): number => cubicMetres(flowM3PerS) * SECONDS_PER_HOUR

/** Litres an hour to cubic metres a second. */
export const toM3PerS = (flowLph: number): number => toCubicMetres(flowLph) / SECONDS_PER_HOUR

const MILLILITRES_PER_LITRE = 1000

/** What a cup catches of a flow in L/h over some seconds, mL. */
export const caughtMl = (flowLph: number, seconds: number): number =>
  (flowLph * MILLILITRES_PER_LITRE * seconds) / SECONDS_PER_HOUR
