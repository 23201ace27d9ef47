import { expect, test } from 'vitest'
import { evaluate } from '../../../src/evaluate/evaluate'
import { setFields } from '../../../src/layout/setFields'
import { tablesIn } from '../../../src/sheets/piece'
import { tubeCard } from '../../../src/sheets/tubes/tubeCard'
import { inches } from '../../../src/units/length'
import { scenarios } from '../../support/scenarios'

const options = {
  paper: 'letter',
  orientation: 'auto',
  scale: 'fit',
  units: 'feet-inches',
  dateText: '1 May 2027',
  issue: '1',
} as const

const layout = scenarios['kestrel-bend-house-2']!()
const n1 = layout.parts.find(({ name }) => name === 'N1')!

/** Groups of 3, 4, 5 and 12 stations at 56, 49, 42 and 37 in. Worked example of the trade notes. */
const GROUPS = [
  [3, 56],
  [4, 49],
  [5, 42],
  [12, 37],
] as const

/** The demo bay with one row changed. */
const changed = (values: Parameters<typeof setFields>[1][number]['values']) => {
  const edited = setFields(layout, [{ part: n1.id, values }])
  if (!edited.ok) throw new Error(edited.sentence)
  return evaluate(edited.layout)
}

const graded = changed({
  gradedTubes: GROUPS.map(([stations, long]) => ({ stations, lengthMm: inches(long) })),
})

const tables = tablesIn(tubeCard.pieces({ now: graded, issued: undefined }, options))

test('a row in four colours: a stop for each length, longest first', () => {
  // 4 lines hang at each station: 3 x 4 = 12, 4 x 4 = 16, 5 x 4 = 20, 12 x 4 = 48 tubes; the other rows stay at 36 in:
  // 2 more rows of 96 and 3 of 64 make 384.
  const cuts = tables.find(({ id }) => id === 'cuts')!
  expect(cuts.rows.map(({ cells }) => [cells[2]!.text, cells[3]!.value])).toEqual([
    ['56"', 12],
    ['49"', 16],
    ['42"', 20],
    ['37"', 48],
    ['36"', 384],
  ])
})

test('a bundle of each colour says which stations it is for, from where the water enters', () => {
  const bundles = tables.find(({ id }) => id === 'bundles')!
  const own = bundles.rows.filter(({ key }) => key.startsWith(n1.id))
  expect(own.map(({ cells }) => cells[3]!.text)).toEqual(['1 to 3', '4 to 7', '8 to 12', '13 to 24'])
})

test('the bundles hold every tube of the bay', () => {
  const bundles = tables.find(({ id }) => id === 'bundles')!
  const tubes = graded.bay.built.reduce((sum, { feed }) => sum + (feed?.tubes.length ?? 0), 0)
  expect(bundles.rows.reduce((sum, { cells }) => sum + Number(cells[4]!.value), 0)).toBe(tubes)
})
