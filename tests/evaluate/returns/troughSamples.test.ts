import { expect, test } from 'vitest'
import { evaluate } from '../../../src/evaluate/evaluate'
import { scenarios } from '../../support/scenarios'

const RULES = ['outlet-flow-max', 'tip-air-min', 'trough-puddle-max', 'trough-freeboard-min']

/*
 * The lean-to's gutter falls 1/8 in a foot, and its outlet stands 14 in from the low end: 14 / 96 = 0.146 in of puddle. All other
 * samples have 18-1/2 in of tail at 1/16 in a foot, 2 in outlets for 1.7 gpm at most, and 2 in left with one of them blocked.
 */
test.each([
  ['kestrel-bend-house-2', []],
  ['lintel-lane-lean-to', ['Tight trough-puddle-max']],
  ['old-dairy-corner', []],
  ['sallow-flats-one-acre', []],
] as const)('the troughs of %s', (name, found) => {
  const { findings } = evaluate(scenarios[name]!())
  const said = findings
    .filter(({ rule }) => RULES.includes(rule))
    .map(({ state, rule }) => `${state} ${rule}`)
  expect(said).toEqual(found)
})
