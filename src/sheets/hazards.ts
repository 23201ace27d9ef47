import type { Evaluation } from '../evaluate/evaluation'
import type { Units } from '../units/length'
import { walkOf, type Hazard } from './hazard'
import { digHazardsOf } from './hazardDigs'
import { handsHazardsOf } from './hazardHands'
import { pitHazardsOf } from './hazardPit'
import { powerHazardsOf } from './hazardPower'
import { rackHazardsOf } from './hazardRacks'
import { sawHazardsOf } from './hazardSaw'
import { strengthHazardsOf } from './hazardStrength'
import { timberHazardsOf, waterHazardsOf } from './hazardWater'
import { words, type WordsPiece } from './piece'

/** What can hurt someone at this very bay, with where; nothing that is not on it. Local codes have the last word. */
export const hazardsOf = (plan: Evaluation, units: Units): readonly Hazard[] => {
  const walk = walkOf(plan, units)
  return [
    ...digHazardsOf(walk),
    ...pitHazardsOf(walk),
    ...powerHazardsOf(walk),
    ...sawHazardsOf(walk),
    ...timberHazardsOf(walk),
    ...rackHazardsOf(walk),
    ...strengthHazardsOf(walk),
    ...handsHazardsOf(walk),
    ...waterHazardsOf(walk),
  ]
}

/** As it goes on after a colon; what is spelt in capitals stays so. */
const afterColon = (text: string): string =>
  /^[A-Z](?![A-Z])/.test(text) ? text.charAt(0).toLowerCase() + text.slice(1) : text

/** A hazard without its places: for a drawing or a table that shows them. */
export const cautionInBrief = ({ title, words: what }: Hazard): string => `${title}: ${afterColon(what)}`

/** The same with its places at the end: for the sheet of whoever is exposed, or beside a step. */
export const cautionText = (hazard: Hazard): string =>
  `${cautionInBrief(hazard)}${hazard.places.length === 0 ? '' : ` Here: ${hazard.places.join('; ')}.`}`

/** Words of caution of one sheet, by its id; none where this plan has nothing for it to mind. */
export const cautionsFor = (sheetId: string, plan: Evaluation, units: Units): readonly WordsPiece[] =>
  hazardsOf(plan, units)
    .filter(({ sheets }) => sheets.includes(sheetId))
    .map((hazard) => words(cautionText(hazard), 'caution'))

/** The words of one hazard for a step, by its key; undefined where this plan does not have it. */
export const cautionOf = (key: string, plan: Evaluation, units: Units): string | undefined => {
  const hazard = hazardsOf(plan, units).find((each) => each.key === key)
  return hazard && cautionText(hazard)
}
