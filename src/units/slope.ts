import { INCHES_PER_FOOT, MM_PER_M } from './length'

/** Fall in inches per foot to millimetres per metre. */
export const inchesPerFoot = (fall: number): number => (fall / INCHES_PER_FOOT) * MM_PER_M

/** Millimetres per metre to inches per foot. */
export const toInchesPerFoot = (slopeMmPerM: number): number => (slopeMmPerM / MM_PER_M) * INCHES_PER_FOOT

/** Drop in mm over a run in mm at a slope in mm per metre. */
export const dropOver = (runMm: number, slopeMmPerM: number): number => (runMm * slopeMmPerM) / MM_PER_M

/** A fall of so many in the hundred, in mm per metre. */
export const perCent = (fall: number): number => (fall / 100) * MM_PER_M

/** A fall of one in so many, in mm per metre. */
export const oneIn = (run: number): number => MM_PER_M / run
