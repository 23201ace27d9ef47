import { expect, test } from 'vitest'
import { evaluate } from '../../../src/evaluate/evaluate'
import { setField } from '../../../src/layout/setField'
import { figureColumns } from '../../../src/sheets/change/figureColumns'
import { toldOf } from '../../../src/sheets/change/told'
import { atSaw } from '../../../src/units/precision'
import { bay } from '../../support/bay'
import { scenarios } from '../../support/scenarios'

const names = { was: 'A', now: 'B' }
const cells = (was: ReturnType<typeof evaluate>, now: ReturnType<typeof evaluate>) =>
  Object.fromEntries(
    figureColumns(toldOf(was, now, 'feet-inches', atSaw), names).rows.map(({ key, cells: [, a, b] }) => [
      key,
      [a?.text, b?.text],
    ]),
  )

/** Worked example of the trade notes: six rows of 3 or 2 racks of 8 bars of 4 towers; 32 towers a rack of 9 sites each. */
test('a rack less is 32 towers and 288 sites less, and takes fewer boards and hours', () => {
  const sample = scenarios['kestrel-bend-house-2']!()
  const n1 = sample.parts.find(({ name }) => name === 'N1')!.id
  const shorter = setField(sample, n1, 'racks', 2)
  if (!shorter.ok) throw new Error(shorter.sentence)
  const figures = cells(evaluate(sample), evaluate(shorter.layout))
  expect(figures['towers']).toEqual(['480', '448'])
  expect(figures['sites']).toEqual(['4,320', '4,032'])
  for (const key of ['boards', 'hours']) {
    const [a, b] = figures[key]!.map((text) => Number(text?.replace(/\D/g, '')))
    expect(b).toBeLessThan(a!)
  }
})

test('a bay without a row has no water, no pit and no warning', () => {
  const empty = evaluate(bay('30 x 96 ft').layout())
  expect(cells(empty, empty)).toMatchObject({
    towers: ['0', '0'],
    boards: ['0', '0'],
    flow: ['no water', 'no water'],
    pit: ['no pit', 'no pit'],
    toMend: ['0', '0'],
  })
})
