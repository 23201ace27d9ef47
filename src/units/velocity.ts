import { feet, MM_PER_M } from './length'

const M_PER_FOOT = feet(1) / MM_PER_M

/** Feet a second to metres a second. */
export const feetPerSecond = (value: number): number => value * M_PER_FOOT

/** Metres a second to feet a second. */
export const toFeetPerSecond = (velocityMS: number): number => velocityMS / M_PER_FOOT
