import { ksi } from '../units/force'
import type { Conduit } from './conduit'

/** Young's modulus of steel, MPa: 29,000 ksi, AISC Specification, from memory. */
export const STEEL_E_MPA = ksi(29_000)

/** A round tube as a beam; mm and powers of mm. */
export interface TubeSection {
  readonly areaMm2: number
  /** Second moment of area about a diameter. */
  readonly inertiaMm4: number
  /** Elastic section modulus: moment over it is the stress at the outermost steel. */
  readonly sectionMm3: number
  /** Plastic section modulus. */
  readonly plasticMm3: number
  /** Radius of gyration. */
  readonly gyrationMm: number
  /** Outside diameter over wall. */
  readonly odOverWall: number
}

type Round = Pick<Conduit, 'odMm' | 'wallMm'>

/** Section of a round tube from its outside diameter and wall: Roark's Formulas for Stress and Strain, Table A.1, from memory. */
export const tubeSection = ({ odMm, wallMm }: Round): TubeSection => {
  const idMm = odMm - 2 * wallMm
  const areaMm2 = (Math.PI / 4) * (odMm ** 2 - idMm ** 2)
  const inertiaMm4 = (Math.PI / 64) * (odMm ** 4 - idMm ** 4)
  return {
    areaMm2,
    inertiaMm4,
    sectionMm3: (2 * inertiaMm4) / odMm,
    plasticMm3: (odMm ** 3 - idMm ** 3) / 6,
    gyrationMm: Math.sqrt(inertiaMm4 / areaMm2),
    odOverWall: odMm / wallMm,
  }
}
