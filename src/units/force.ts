import { INCHES_PER_FOOT, MM_PER_INCH, MM_PER_M } from './length'
import { pounds, toPounds } from './mass'

/** Standard gravity, m/s², exact. Source: ISO 80000-3:2019. */
const GRAVITY = 9.80665

const M_PER_INCH = MM_PER_INCH / MM_PER_M

/** Newtons that a mass in kilograms weighs. */
export const weightOf = (massKg: number): number => massKg * GRAVITY

/** The mass in kilograms that weighs so many newtons: what a crew hangs to make a force. */
export const massOfWeight = (forceN: number): number => forceN / GRAVITY

/** Pounds of force to newtons. */
export const poundsForce = (value: number): number => weightOf(pounds(value))

/** Newtons to pounds of force. */
export const toPoundsForce = (forceN: number): number => toPounds(massOfWeight(forceN))

/** Pounds of force an inch to newtons a millimetre. */
export const poundsPerInch = (value: number): number => poundsForce(value) / MM_PER_INCH

/** Newtons a millimetre to pounds of force an inch. */
export const toPoundsPerInch = (nPerMm: number): number => toPoundsForce(nPerMm * MM_PER_INCH)

/** Pounds a square inch to megapascals, which are newtons a square millimetre. */
export const psi = (value: number): number => poundsForce(value) / (MM_PER_INCH * MM_PER_INCH)

/** Megapascals to pounds a square inch. */
export const toPsi = (mpa: number): number => toPoundsForce(mpa * MM_PER_INCH * MM_PER_INCH)

/** Thousands of pounds a square inch to megapascals. */
export const ksi = (value: number): number => psi(value * 1000)

/** Megapascals to thousands of pounds a square inch. */
export const toKsi = (mpa: number): number => toPsi(mpa) / 1000

/** Megapascals, which are newtons a square millimetre, to kilopascals. */
export const kilopascals = (mpa: number): number => mpa * 1000

const SQUARE_M_PER_SQUARE_FOOT = (INCHES_PER_FOOT * M_PER_INCH) ** 2

/** Pounds a square foot to kilopascals. */
export const psf = (value: number): number => poundsForce(value) / SQUARE_M_PER_SQUARE_FOOT / 1000

/** Kilopascals to pounds a square foot. */
export const toPsf = (kpa: number): number => toPoundsForce(kpa * 1000 * SQUARE_M_PER_SQUARE_FOOT)

/** Inch-pounds of moment to newton-millimetres. */
export const inchPounds = (value: number): number => poundsForce(value) * MM_PER_INCH

/** Newton-millimetres of moment to inch-pounds. */
export const toInchPounds = (momentNmm: number): number => toPoundsForce(momentNmm / MM_PER_INCH)

/** Newton-millimetres of moment to newton-metres. */
export const toNewtonMetres = (momentNmm: number): number => momentNmm / MM_PER_M
