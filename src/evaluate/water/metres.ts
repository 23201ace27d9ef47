import { headM, toHeadM } from '../../units/head'
import { fromM3PerS } from '../../units/flow'

/** The solver takes metres and cubic metres a second; all else here has millimetres and litres an hour. */
export const toM: (lengthMm: number) => number = toHeadM

export const toMm: (lengthM: number) => number = headM

/** Litres an hour in one cubic metre a second, for loops over many flows. */
export const LPH_PER_M3S = fromM3PerS(1)
