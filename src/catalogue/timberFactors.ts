import { psi } from '../units/force'
import { inches } from '../units/length'
import type { Timber } from './timber'

/**
 * Design values of a timber as it stands, MPa, at a load duration factor of 1: bending on edge, tension, shear, across
 * the grain, along the grain short of buckling, moduli.
 */
export interface TimberValues {
  readonly bendingMpa: number
  readonly tensionMpa: number
  readonly shearMpa: number
  readonly acrossMpa: number
  readonly alongMpa: number
  readonly eMpa: number
  readonly eMinMpa: number
}

/**
 * Load duration factors C_D; never on a modulus nor across the grain. Towers hang for a season and the next: permanent. A
 * push lasts as long as wind does. Source: NDS Table 2.3.2, from memory.
 */
export const DURATION = { permanent: 0.9, push: 1.6 } as const

/** C_fu of a 2x4 that bends on the flat. Source: NDS Supplement, adjustment factors of Table 4A. */
export const FLAT_USE = 1.1

/**
 * Wet service factors C_M: over 19 % moisture in service for long. Source: NDS Supplement, adjustment factors of Table
 * 4A, as in Merritt, Building Design and Construction Handbook, Table 10.6.
 */
const WET = { bending: 0.85, tension: 1, shear: 0.97, across: 0.67, along: 0.8, modulus: 0.9 } as const

/** Weak grades lose nothing by water: the same table's footnotes, which compare the value with its size factor on it. */
const NO_LOSS_MPA = { bending: psi(1150), along: psi(750) } as const

/**
 * Size factors C_F of No. 2: 4 in wide and less, and 6 in. Between, the lesser is taken. Source: NELMA grading rules, section
 * 8, Table A.
 */
const SIZES = {
  upTo4: { bending: 1.5, tension: 1.5, along: 1.15 },
  upTo6: { bending: 1.3, tension: 1.3, along: 1.1 },
} as const
const NO_SIZE = { bending: 1, tension: 1, along: 1 } as const

const sizeFactors = ({ isSizedInTable }: Timber, wideMm: number) => {
  if (isSizedInTable) return NO_SIZE
  return wideMm <= inches(4) ? SIZES.upTo4 : SIZES.upTo6
}

const whenWet = (valueMpa: number, factor: number, noLossMpa: number): number =>
  valueMpa <= noLossMpa ? valueMpa : valueMpa * factor

/** Values of a board by its actual width, dry or wet, without a repetitive-member factor: a rack has no floor over it that shares loads. */
export const valuesOf = (timber: Timber, wideMm: number, isWet: boolean): TimberValues => {
  const size = sizeFactors(timber, wideMm)
  const dry: TimberValues = {
    bendingMpa: timber.bendingMpa * size.bending,
    tensionMpa: timber.tensionMpa * size.tension,
    shearMpa: timber.shearMpa,
    acrossMpa: timber.acrossMpa,
    alongMpa: timber.alongMpa * size.along,
    eMpa: timber.eMpa,
    eMinMpa: timber.eMinMpa,
  }
  if (!isWet) return dry
  return {
    bendingMpa: whenWet(dry.bendingMpa, WET.bending, NO_LOSS_MPA.bending),
    tensionMpa: dry.tensionMpa * WET.tension,
    shearMpa: dry.shearMpa * WET.shear,
    acrossMpa: dry.acrossMpa * WET.across,
    alongMpa: whenWet(dry.alongMpa, WET.along, NO_LOSS_MPA.along),
    eMpa: dry.eMpa * WET.modulus,
    eMinMpa: dry.eMinMpa * WET.modulus,
  }
}
