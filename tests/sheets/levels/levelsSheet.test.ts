import { describe, expect, test } from 'vitest'
import { evaluate } from '../../../src/evaluate/evaluate'
import { longCut } from '../../../src/evaluate/longCut/cut'
import type { Table } from '../../../src/model/table'
import { levelsSheet } from '../../../src/sheets/levels/levelsSheet'
import { sectionView, TIMES } from '../../../src/sheets/levels/sectionView'
import { pagesOf } from '../../../src/sheets/pagesOf'
import { tablesIn } from '../../../src/sheets/piece'
import type { PlanOnPaper, SheetOptions } from '../../../src/sheets/sheet'
import { toInches } from '../../../src/units/length'
import { toGallons } from '../../../src/units/volume'
import { pageText } from '../../support/pageText'
import { PEGS_N } from '../../support/pegs'
import { scenarios } from '../../support/scenarios'

const options: SheetOptions = {
  paper: 'tabloid',
  orientation: 'auto',
  scale: 'fit',
  units: 'feet-inches',
  dateText: '1 May 2027',
  issue: '3',
}

const layout = scenarios['kestrel-bend-house-2']!()
const plan: PlanOnPaper = { now: evaluate(layout), issued: undefined }
const idOf = (name: string) => layout.parts.find((part) => part.name === name)!.id
const tables = tablesIn(levelsSheet.pieces(plan, options))
const tableIn = (id: string): Table => tables.find((table) => table.id === id)!
const valueIn = (table: Table, row: string, column: string): number => {
  const at = table.columns.findIndex(({ key }) => key === column)
  return Number(table.rows.find(({ key }) => key === row)!.cells[at]!.value)
}

describe('the section of drain N', () => {
  const cut = longCut(plan.now.bay, idOf('Drain N'))!
  const room = { widthMm: 330, heightMm: 120 }
  const view = sectionView(cut, room, { x: 20, y: 40 }, 'feet-inches')

  test('is drawn to a scale of the rule, its levels ten times as large, within its room', () => {
    expect(view.xOf(1000 + cut.endMm / 2) - view.xOf(cut.endMm / 2)).toBeCloseTo(1000 / view.scale.ratio, 9)
    expect(view.yOf(100) - view.yOf(0)).toBeCloseTo((100 * TIMES) / view.scale.ratio, 9)
    expect(TIMES).toBe(10)
    expect(view.box.x1 - view.box.x0).toBeLessThanOrEqual(room.widthMm)
    expect(view.box.y1 - view.box.y0).toBeLessThanOrEqual(room.heightMm)
  })

  // Worked example of the trade notes, hand arithmetic: inverts of the stake-out, from the wall of the pit.
  test.each(PEGS_N)('has the peg at station %d where its invert is', (station, invert) => {
    const peg = cut.drains[0]!.pegs.find(({ sMm }) => Math.abs(toInches(cut.wallMm - sMm) - station) < 0.01)!
    const overFoot = (view.yOf(peg.invertMm) - view.box.y0) * (view.scale.ratio / TIMES)
    expect(toInches(overFoot + view.lowMm)).toBeCloseTo(invert, 1)
  })
})

describe('the pages of the sample', () => {
  const pages = pagesOf(levelsSheet, plan, options)
  const texts = pages.map((page) => pageText(page))

  test('are one for each drain first, lying, with its pegs, holes, fall and the levels of its pit', () => {
    expect(pages.every(({ paper }) => paper.orientation === 'landscape')).toBe(true)
    for (const [page, name] of ['Drain N', 'Drain S'].entries()) {
      expect(texts[page]).toContain(`${name} to Pit`)
      expect(texts[page]).toContain(`${name} falls 1/8 in/ft`)
    }
    // Cuts of the stake-out at its lowest outlets and its inlet: the worked example of the trade notes, 6 in more for the peg.
    for (const words of ['17-1/4"', '17-1/8"', '16-3/4"', 'N3 line 4', 'Inlet -11-1/8"'])
      expect(texts[0]!.split('\n')).toContain(words)
    for (const words of [
      'Overflow -1\' 1"',
      'Drain-back level -1\' 2"',
      'Pump-off level -2\' 5"',
      'Bottom -3\' 1"',
    ])
      expect(texts[0]!.split('\n')).toContain(words)
  })

  test('state both scales', () => {
    expect(texts[0]).toContain('heights 1:4.8, 10 times as large')
    expect(texts[0]).toContain('lengths 1/4 in = 1 ft (1:48)')
  })
})

describe('levels in tables', () => {
  // Worked example of the trade notes: level from the floor's north-west corner, and gallons over the bottom.
  test.each([
    ['overflow', -13, 426],
    ['drain-back level', -14, 409],
    ['running level', -22.5, 258],
    ['low alarm', -27, 178],
    ['pump-off level', -29, 142],
    ['bottom', -37, 0],
  ])('of the pit has the %s at %d in over %d gallons', (level, atIn, holds) => {
    const table = tableIn(`pit-${idOf('Pit')}`)
    const key = `${idOf('Pit')} ${level}`
    expect(toInches(valueIn(table, key, 'levelMm'))).toBeCloseTo(atIn, 1)
    expect(Math.abs(toGallons(valueIn(table, key, 'litres')) - holds)).toBeLessThan(1)
    expect(toInches(valueIn(table, key, 'downMm'))).toBeCloseTo(-atIn, 1)
  })

  test('has a drop for every outlet, from its gutter down to the crown', () => {
    const table = tableIn('drops')
    const outlets = plan.now.bay.built.flatMap(({ mouths }) =>
      mouths.filter(({ role }) => role === 'trough-outlet'),
    )
    expect(table.rows).toHaveLength(outlets.length)
    for (const { key } of table.rows)
      expect(valueIn(table, key, 'dropMm')).toBeCloseTo(
        valueIn(table, key, 'invertOutletMm') - valueIn(table, key, 'crownMm'),
        9,
      )
  })

  test('tells each gap of a pit once, however many drains come into it', () => {
    const { rows } = tableIn('gaps')
    expect(new Set(rows.map(({ key }) => key)).size).toBe(rows.length)
    // Worked example of the trade notes: inlets -11.08 and -11.32 over an overflow at -13.
    const inlet = (name: string) =>
      toInches(valueIn(tableIn('gaps'), `${idOf(name)} inlet overflowMm`, 'gapMm'))
    expect(inlet('Drain N')).toBeCloseTo(1.92, 1)
    expect(inlet('Drain S')).toBeCloseTo(1.68, 1)
  })
})

test('an empty bay has no levels', () => {
  expect(levelsSheet.pieces({ now: evaluate({ ...layout, parts: [] }), issued: undefined }, options)).toEqual(
    [],
  )
})
