import { conduitAsMeasured } from '../../catalogue/asMeasured'
import { conduits, type Conduit } from '../../catalogue/conduit'
import { STEEL_E_MPA, tubeSection } from '../../catalogue/section'
import type { StockMeasures } from '../../model/measuredStock'
import { weightOf } from '../../units/force'
import { MM_PER_M } from '../../units/length'

/** A conduit as a beam, as a caliper finds it. */
export interface ConduitUsed {
  readonly stock: string
  readonly odMm: number
  readonly wallMm: number
  readonly areaMm2: number
  readonly inertiaMm4: number
  readonly sectionMm3: number
  /** Young's modulus times second moment of area, N·mm². */
  readonly eiNmm2: number
  /** What it weighs, N/mm. */
  readonly weightNPerMm: number
}

const usedOf = (listed: Conduit, measured: readonly StockMeasures[]): ConduitUsed => {
  const conduit = conduitAsMeasured(listed, measured)
  const section = tubeSection(conduit)
  // The table's weight holds for the table's wall.
  const share = section.areaMm2 / tubeSection(listed).areaMm2
  return {
    stock: conduit.key,
    odMm: conduit.odMm,
    wallMm: conduit.wallMm,
    areaMm2: section.areaMm2,
    inertiaMm4: section.inertiaMm4,
    sectionMm3: section.sectionMm3,
    eiNmm2: STEEL_E_MPA * section.inertiaMm4,
    weightNPerMm: weightOf((conduit.kgPerM * share) / MM_PER_M),
  }
}

export type ConduitsUsed = ReadonlyMap<string, ConduitUsed>

const known = new WeakMap<readonly StockMeasures[], ConduitsUsed>()

/** Every conduit of the catalogue by its key, as measured; remembered by the list of measures. */
export const conduitsUsed = (measured: readonly StockMeasures[]): ConduitsUsed => {
  const held = known.get(measured)
  if (held) return held
  const made = new Map(conduits.map((conduit) => [conduit.key, usedOf(conduit, measured)]))
  known.set(measured, made)
  return made
}
