import type { Evaluation } from '../evaluate/evaluation'
import type { Units } from '../units/length'
import { cautionInBrief, hazardsOf } from './hazards'

/** Stands on every printed sheet. */
export const FOOTER =
  "This plan is a builder's aid. It is not an engineering drawing. Permits, structure, electrical work, plumbing " +
  'cross-connection (air gap on make-up) and grading are for licensed people. Local codes have the last word.'

/** Words at a pit on the plan, for whoever stands at it. */
export const AT_THE_PIT = 'Pit: lid on and locked. Never go in alone.'

/** Words of caution of the floor sheet, whose plan shows the places: for what is on this floor and nothing else. */
export const cautions = (evaluation: Evaluation, units: Units): string[] =>
  hazardsOf(evaluation, units)
    .filter(({ sheets }) => sheets.includes('floor'))
    .map(cautionInBrief)
