import { feet, MM_PER_M } from './length'

/** A head is the height of a column of the water itself, so that it needs no density: mm inside, m in solvers. */

/** Millimetres of head to metres. */
export const toHeadM = (headMm: number): number => headMm / MM_PER_M

/** Metres of head to millimetres. */
export const headM = (value: number): number => value * MM_PER_M

/** Millimetres of head to feet, as pump curves are printed. */
export const toHeadFeet = (headMm: number): number => headMm / feet(1)
