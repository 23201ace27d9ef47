/**
 * Lengths inside the program are millimetres. On write they are rounded to the tick, 1/320 mm, the largest
 * step in which 1/64 in (127 ticks) and 0.1 mm (32 ticks) are both whole numbers.
 */
export const MM_PER_INCH = 25.4
export const INCHES_PER_FOOT = 12
export const MM_PER_M = 1000
export const MM_PER_CM = 10
export const TICKS_PER_MM = 320

/** What a reader measures in; lengths inside are millimetres whichever it is. */
export type Units = 'feet-inches' | 'metric'

/** No length on a farm is longer, mm; sums of such lengths stay exact in ticks. */
export const LONGEST_MM = 2_000_000

/** Inches to millimetres. */
export const inches = (value: number): number => value * MM_PER_INCH

/** Feet to millimetres. */
export const feet = (value: number): number => value * INCHES_PER_FOOT * MM_PER_INCH

/** Millimetres to inches. */
export const toInches = (lengthMm: number): number => lengthMm / MM_PER_INCH

/** Millimetres to the nearest whole tick. */
export const toTicks = (lengthMm: number): number => Math.round(lengthMm * TICKS_PER_MM)

/** Whole ticks to millimetres. */
export const fromTicks = (ticks: number): number => ticks / TICKS_PER_MM

/** The nearest length that the tick can hold, in millimetres. */
export const onTick = (lengthMm: number): number => fromTicks(toTicks(lengthMm))
