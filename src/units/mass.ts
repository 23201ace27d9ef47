import { INCHES_PER_FOOT, MM_PER_INCH, MM_PER_M } from './length'

/** International avoirdupois pound, exact since 1959. */
const KG_PER_POUND = 0.45359237

const M_PER_FOOT = (INCHES_PER_FOOT * MM_PER_INCH) / MM_PER_M

/** Pounds to kilograms. */
export const pounds = (value: number): number => value * KG_PER_POUND

/** Kilograms to pounds. */
export const toPounds = (massKg: number): number => massKg / KG_PER_POUND

/** Mass a length: pounds a foot to kilograms a metre. */
export const poundsPerFoot = (value: number): number => pounds(value) / M_PER_FOOT

/** Mass a length: kilograms a metre to pounds a foot. */
export const toPoundsPerFoot = (kgPerM: number): number => toPounds(kgPerM * M_PER_FOOT)

/** Mass a volume: pounds a cubic foot to kilograms a cubic metre. */
export const poundsPerCubicFoot = (value: number): number => pounds(value) / M_PER_FOOT ** 3
