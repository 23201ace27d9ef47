import { gph, gpm, toM3PerS } from '../../src/units/flow'
import { feet, inches } from '../../src/units/length'
import { toHeadM } from '../../src/units/head'

/** Trade units to those of the solvers: m and m3/s. */
export const inchesM = (value: number): number => toHeadM(inches(value))
export const feetM = (value: number): number => toHeadM(feet(value))
export const gphM3S = (value: number): number => toM3PerS(gph(value))
export const gpmM3S = (value: number): number => toM3PerS(gpm(value))

/** Colebrook, J. Instn Civ. Engrs 11 (1939) 133, solved for Darcy's factor by going round until nothing changes. */
export const colebrook = (reynolds: number, relativeRoughness: number): number => {
  let inverseRoot = 7
  for (let round = 0; round < 60; round += 1)
    inverseRoot = -2 * Math.log10(relativeRoughness / 3.7 + (2.51 * inverseRoot) / reynolds)
  return 1 / inverseRoot ** 2
}

/** Churchill, Chem. Eng. 84 (1977) no. 24, 91: one equation from smooth to churned flow. From memory. */
export const churchill = (reynolds: number, relativeRoughness: number): number => {
  const a = (2.457 * Math.log(1 / ((7 / reynolds) ** 0.9 + 0.27 * relativeRoughness))) ** 16
  const b = (37530 / reynolds) ** 16
  return 8 * ((8 / reynolds) ** 12 + (a + b) ** -1.5) ** (1 / 12)
}
