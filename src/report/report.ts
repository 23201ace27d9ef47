import type { Judged } from '../evaluate/evaluation'
import type { Table } from '../model/table'
import type { Units } from '../units/length'
import type { Section } from './fields'
import { baySection } from './tables/bay'
import { boardPiecesSection, boardsSection, cutListsSection, piecesSection } from './tables/cutting'
import { findingsSection } from './tables/findings'
import { drainsSection, feetSection, levelsSection, pegsSection } from './tables/levels'
import { labourSection, moneySection, shopSection } from './tables/money'
import { railSpansSection, reactionsSection, stanceSection, strengthSection } from './tables/strength'
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

/** Every table of the report by its name, in its order; the bay itself comes first and has one row. */
const sections: Readonly<Record<string, (told: Told) => Section>> = {
  bay: baySection,
  findings: findingsSection,
  takeOff: takeOffSection,
  cutLists: cutListsSection,
  pieces: piecesSection,
  boards: boardsSection,
  boardPieces: boardPiecesSection,
  levels: levelsSection,
  feet: feetSection,
  drains: drainsSection,
  pegs: pegsSection,
  rowFlows: rowFlowsSection,
  zones: zonesSection,
  pumps: pumpsSection,
  headBoxes: headBoxesSection,
  mains: mainsSection,
  troughs: troughsSection,
  pits: pitsSection,
  strength: strengthSection,
  stance: stanceSection,
  railSpans: railSpansSection,
  reactions: reactionsSection,
  shop: shopSection,
  money: moneySection,
  labour: labourSection,
  towers: towersSection,
}

/** Names of the tables, as files and scripts call them. */
export const tableNames: readonly string[] = Object.keys(sections)

/** All that there is to say of a plan in tables, its words in the reader's units. `plan` has the cut lists that are to be told. */
export const reportOf = (plan: Judged, units: Units): readonly Section[] => {
  const told = toldOf(plan, units)
  return Object.values(sections).map((section) => section(told))
}

export const tablesOf = (report: readonly Section[]): readonly Table[] => report.map(({ table }) => table)
