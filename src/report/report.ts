import type { Judged } from '../evaluate/evaluation'
import type { Table } from '../model/table'
import type { Units } from '../units/length'
import type { Section } from './fields'
import { baySection } from './tables/bay'
import { boardPiecesSection, boardsSection, cutListsSection, piecesSection } from './tables/cutting'
import { findingsSection } from './tables/findings'
import { drainsSection, feetSection, levelsSection, pegsSection } from './tables/levels'
import { labourSection, moneySection, shopSection } from './tables/money'
import { takeOffSection } from './tables/takeOff'
import {
  headBoxesSection,
  mainsSection,
  pitsSection,
  pumpsSection,
  rowFlowsSection,
  towersSection,
  troughsSection,
  zonesSection,
} from './tables/water'
import { type Told, toldOf } from './told'

/** Every table of the report, in its order; the bay itself comes first and has one row. */
const sections: readonly ((told: Told) => Section)[] = [
  baySection,
  findingsSection,
  takeOffSection,
  cutListsSection,
  piecesSection,
  boardsSection,
  boardPiecesSection,
  levelsSection,
  feetSection,
  drainsSection,
  pegsSection,
  rowFlowsSection,
  zonesSection,
  pumpsSection,
  headBoxesSection,
  mainsSection,
  troughsSection,
  pitsSection,
  shopSection,
  moneySection,
  labourSection,
  towersSection,
]

/** All that there is to say of a plan in tables, its words in the reader's units. `plan` has the cut lists that are to be told. */
export const reportOf = (plan: Judged, units: Units): readonly Section[] => {
  const told = toldOf(plan, units)
  return sections.map((section) => section(told))
}

export const tablesOf = (report: readonly Section[]): readonly Table[] => report.map(({ table }) => table)
