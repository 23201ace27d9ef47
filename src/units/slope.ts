import { INCHES_PER_FOOT } from './length'

const MM_PER_M = 1000

/** Fall in inches per foot to millimetres per metre. */
export const inchesPerFoot = (fall: number): number => (fall / INCHES_PER_FOOT) * MM_PER_M

/** Millimetres per metre to inches per foot. */
export const toInchesPerFoot = (slopeMmPerM: number): number => (slopeMmPerM / MM_PER_M) * INCHES_PER_FOOT

/** Drop in mm over a run in mm at a slope in mm per metre. */
export const dropOver = (runMm: number, slopeMmPerM: number): number => (runMm * slopeMmPerM) / MM_PER_M
