import { expect, test } from 'vitest'
import { evaluate } from '../../../src/evaluate/evaluate'
import { balance } from '../../../src/evaluate/water/balance'
import { waterOf } from '../../../src/evaluate/water/waterOf'
import { setFields } from '../../../src/layout/setFields'
import { tablesIn } from '../../../src/sheets/piece'
import { valveCard } from '../../../src/sheets/valves/valveCard'
import { scenarios } from '../../support/scenarios'

const options = {
  paper: '4x6',
  orientation: 'auto',
  scale: 'fit',
  units: 'feet-inches',
  dateText: '1 May 2027',
  issue: '1',
} as const

const layout = scenarios['kestrel-bend-house-2']!()
const now = evaluate(layout)
const n1 = layout.parts.find(({ name }) => name === 'N1')!

/** The demo bay with one row changed. */
const changed = (values: Parameters<typeof setFields>[1][number]['values']) => {
  const edited = setFields(layout, [{ part: n1.id, values }])
  if (!edited.ok) throw new Error(edited.sentence)
  return evaluate(edited.layout)
}
const tables = tablesIn(valveCard.pieces({ now, issued: undefined }, options))

test('a tag for each zone, and set by the tags the solved bay runs what they say', () => {
  const turns = new Map(
    tables.map(({ id, rows }) => [
      id.replace('zone-', ''),
      Number(rows.find(({ key }) => key === 'turns')!.cells[1]!.value),
    ]),
  )
  expect([...turns.keys()]).toEqual([...now.bay.water.zones.keys()])
  const set = waterOf(now.bay, { trimTurns: turns })
  for (const { id, rows } of tables) {
    const says = Number(rows.find(({ key }) => key === 'flowLph')!.cells[1]!.value)
    expect(set.zones.get(id.replace('zone-', ''))!.flowLph / says).toBeCloseTo(1, 2)
  }
})

test('what the sight tube must show is read first, large', () => {
  const pieces = valveCard.pieces({ now, issued: undefined }, options)
  const big = pieces.flatMap((piece) => (piece.as === 'words' && piece.tone === 'big' ? [piece.text] : []))
  expect(big).toHaveLength(balance(now.bay, 'target')!.zones.length)
  for (const text of big) expect(text).toMatch(/^Sight tube \d+(-\d\/\d)?"$/)
})

test('a zone that is shut has no setting, and the sheet says why', () => {
  const shut = changed({ valve: 'shut' })
  const pieces = valveCard.pieces({ now: shut, issued: undefined }, options)
  const said = pieces.flatMap((piece) => (piece.as === 'words' ? [piece.text] : [])).join(' ')
  expect(said).toContain('N1: its ball valve is shut in the plan')
  expect(tablesIn(pieces)).toHaveLength(5)
})
