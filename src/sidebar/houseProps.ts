import type { House } from '../layout/house'
import type { Units } from '../units/length'

/** What every part of the house's editor is handed. */
export interface HouseProps {
  readonly house: House
  readonly units: Units
  /** Commits the house as changed; a refusal comes back as its sentence. */
  readonly onHouse: (label: string, house: House) => string | undefined
}
