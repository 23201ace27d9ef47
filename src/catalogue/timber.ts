import { psi } from '../units/force'
import { poundsPerCubicFoot } from '../units/mass'
import { finder } from './lookup'

export type TimberSpecies = 'spf' | 'hem-fir' | 'southern-pine' | 'douglas-fir'

/** What No. 2 framing lumber of a group of species is reckoned to bear and to weigh. */
export interface Timber {
  readonly species: TimberSpecies
  readonly title: string
  readonly kgPerM3: number
  /** Specific gravity, oven-dry. */
  readonly gravity: number
  /** Reference design values before any factor, MPa: bending, tension, shear, across the grain, along it, modulus. */
  readonly bendingMpa: number
  readonly tensionMpa: number
  readonly shearMpa: number
  readonly acrossMpa: number
  readonly alongMpa: number
  readonly eMpa: number
  /** Modulus for buckling. */
  readonly eMinMpa: number
  /** Whether the values are for one width and take no size factor. */
  readonly isSizedInTable: boolean
  readonly source: string
}

const WEIGHT = 'unit weight: AWC Wood Structural Design Data, 1992 revisions'

/** Fb, Ft, Fv, Fc-perp, Fc in psi, E and Emin in psi, as the tables print them. */
type Printed = readonly [
  fb: number,
  ft: number,
  fv: number,
  fcPerp: number,
  fc: number,
  e: number,
  eMin: number,
]

const row = (
  species: TimberSpecies,
  title: string,
  [fb, ft, fv, fcPerp, fc, e, eMin]: Printed,
  gravity: number,
  poundsACubicFoot: number,
  source: string,
): Timber => ({
  species,
  title,
  kgPerM3: poundsPerCubicFoot(poundsACubicFoot),
  gravity,
  bendingMpa: psi(fb),
  tensionMpa: psi(ft),
  shearMpa: psi(fv),
  acrossMpa: psi(fcPerp),
  alongMpa: psi(fc),
  eMpa: psi(e),
  eMinMpa: psi(eMin),
  isSizedInTable: false,
  source: `${source}; ${WEIGHT}`,
})

const TABLE_4A = 'NDS Supplement, Table 4A, No. 2'

export const timbers: readonly Timber[] = [
  row(
    'spf',
    'Spruce-pine-fir No. 2',
    [875, 450, 135, 425, 1150, 1.4e6, 510e3],
    0.42,
    28.5,
    `${TABLE_4A} (No. 1/No. 2)`,
  ),
  row('hem-fir', 'Hem-fir No. 2', [850, 525, 150, 405, 1300, 1.3e6, 470e3], 0.43, 29.2, TABLE_4A),
  {
    ...row(
      'southern-pine',
      'Southern pine No. 2',
      [1100, 675, 175, 565, 1450, 1.4e6, 510e3],
      0.55,
      36.7,
      'SPIB values since 1 June 2013, NDS Supplement Table 4B, No. 2, 2 to 4 in wide, from memory; in MPa: Southern Pine Use Guide',
    ),
    isSizedInTable: true,
  },
  row(
    'douglas-fir',
    'Douglas fir-larch No. 2',
    [900, 575, 180, 625, 1350, 1.6e6, 580e3],
    0.5,
    33.6,
    TABLE_4A,
  ),
]

/** The timber of a species, such as `spf`. */
export const timberOf: (species: string) => Timber = finder('timber', timbers, ({ species }) => species)
