import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { evaluate } from '../../../src/evaluate/evaluate'
import { boxOf } from '../../../src/geometry/box'
import type { Table } from '../../../src/model/table'
import { tablesIn } from '../../../src/sheets/piece'
import { settingOut } from '../../../src/sheets/settingOut/settingOut'
import type { PlanOnPaper, SheetOptions } from '../../../src/sheets/sheet'
import { toInches } from '../../../src/units/length'
import { arbitraryBay } from '../../support/arbitraryBay'
import { scenarios } from '../../support/scenarios'

const options: SheetOptions = {
  paper: 'letter',
  orientation: 'auto',
  scale: 'fit',
  units: 'feet-inches',
  dateText: '1 May 2027',
  issue: '3',
}

const planOf = (layout: Parameters<typeof evaluate>[0]): PlanOnPaper => ({
  now: evaluate(layout),
  issued: undefined,
})
const tablesOf = (plan: PlanOnPaper): readonly Table[] => tablesIn(settingOut.pieces(plan, options))
const tableIn = (tables: readonly Table[], id: string): Table => tables.find((table) => table.id === id)!
const cellsOf = (table: Table, key: string) => table.rows.find((row) => row.key === key)!.cells

const layout = scenarios['kestrel-bend-house-2']!()
const plan = planOf(layout)
const tables = tablesOf(plan)
const idOf = (name: string) => layout.parts.find((part) => part.name === name)!.id
const inchesOf = (cells: readonly { readonly value: string | number | null }[]) =>
  cells.flatMap(({ value }) => (typeof value === 'number' ? [toInches(value)] : []))

describe('row N1 of the sample', () => {
  // Worked example of the trade notes, hand arithmetic: centreline x = 63, risers 40 apart (43 and 83), each 3-1/2 wide across:
  // outside 41-1/4 and 84-3/4. Three racks of 120 from y = 410 to 770, ends inset 2-1/8, posts 1-1/2 thick along:
  // outside 410 + 2-1/8 - 3/4 = 411-3/8 and 770 - 2-1/8 + 3/4 = 768-5/8.
  test.each([
    ['A', 41.25, 411.375],
    ['B', 84.75, 411.375],
    ['C', 84.75, 768.625],
    ['D', 41.25, 768.625],
  ])('has corner %s at %d in from the west and %d in from the south wall', (corner, west, south) => {
    const [westIn, southIn] = inchesOf(cellsOf(tableIn(tables, 'row-corners'), `${idOf('N1')} ${corner}`))
    expect(westIn).toBeCloseTo(west, 6)
    expect(southIn).toBeCloseTo(south, 6)
  })

  // 84.75 - 41.25 = 43.5 across (a cross-piece of the trade notes), 768.625 - 411.375 = 357.25 along (three bottom runners).
  // Pythagoras: 43.5^2 = 1892.25; 357.25^2 = 127627.5625; sum 129519.8125; root 359.889 in = 29 ft 11.889 in, 11-7/8 on the tape.
  test('has both diagonals by Pythagoras, the same on a square row', () => {
    const cells = cellsOf(tableIn(tables, 'row-diagonals'), idOf('N1'))
    const [ab, ad, ac, bd] = inchesOf(cells)
    expect([ab, ad]).toEqual([expect.closeTo(43.5, 6), expect.closeTo(357.25, 6)])
    expect(ac).toBeCloseTo(359.889, 3)
    expect(bd).toBeCloseTo(359.889, 3)
    expect(cells[3]!.text).toBe(`29' 11-7/8"`)
  })

  test('is checked by 3-4-5 ft: 43-1/2 in across holds three feet, not six', () => {
    expect(inchesOf(cellsOf(tableIn(tables, 'row-squares'), idOf('N1')))).toEqual(
      [36, 48, 60].map((inch) => expect.closeTo(inch, 6)),
    )
  })

  // Pairs of posts stand every 30 in from y = 410, the first and the last 2-1/8 in inside.
  test('has its 13 pairs of posts where the trade notes put them, with its two likes in one table', () => {
    const feet = tableIn(tables, `feet-${idOf('N1')}`)
    expect(feet.title).toContain('N1, N2 and N3')
    const along = feet.rows.map(({ cells }) => toInches(Number(cells[1]!.value)))
    expect(along).toHaveLength(13)
    expect(along.slice(0, 3)).toEqual([412.125, 440, 470].map((inch) => expect.closeTo(inch, 6)))
    expect(along.at(-1)).toBeCloseTo(767.875, 6)
  })

  test('stands on chalk lines about its centreline, 5 ft 3 in from the west wall', () => {
    const cells = cellsOf(tableIn(tables, 'feet-lines'), idOf('N1'))
    expect(cells.map(({ text }) => text).slice(1)).toEqual(['west wall', `3' 7"`, `5' 3"`, `6' 11"`])
  })
})

describe('the house of the sample', () => {
  // 352 by 856 in: 352^2 = 123904; 856^2 = 732736; sum 856640; root 925.548 in = 77 ft 1.548 in, 1-1/2 on the tape.
  test('has two diagonals, by Pythagoras', () => {
    const { rows } = tableIn(tables, 'house-diagonals')
    expect(rows).toHaveLength(2)
    for (const { cells } of rows) expect(toInches(Number(cells[2]!.value))).toBeCloseTo(925.548, 3)
    expect(rows[0]!.cells[2]!.text).toBe(`77' 1-1/2"`)
  })

  // 29 ft 4 in and 71 ft 4 in: nine times 3-4-5 ft.
  test('is checked by 27-36-45 ft in its corners', () => {
    expect(inchesOf(tableIn(tables, 'house-squares').rows[0]!.cells)).toEqual(
      [27 * 12, 36 * 12, 45 * 12].map((inch) => expect.closeTo(inch, 6)),
    )
  })

  test('of six corners has braces only where a tape can be pulled inside of it', () => {
    const { rows } = tableIn(tablesOf(planOf(scenarios['old-dairy-corner']!())), 'house-diagonals')
    const keys = rows.map(({ key }) => key)
    expect(keys).toContain('H1 H5')
    // From the south-east corner to the north-east one it would leave the house at the inner corner.
    expect(keys).not.toContain('H2 H4')
  })

  test('has its benchmark described: what it is, where it stands, what it reads', () => {
    const [first] = settingOut.pieces(plan, options)
    const text = first?.as === 'words' ? first.text : ''
    expect(text).toContain('Brass nail in the sill of the south door, east end')
    expect(text).toContain(`called 100' 0"`)
    // At x = 224 in on the south wall; 2-1/2 in under the zero of the bay's levels.
    expect(text).toContain(`18' 8" from the west wall`)
    expect(text).toContain('it reads -2-1/2"')
  })
})

test('drains, pits and mains have their ends and corners, and what is in the way its room', () => {
  const places = tableIn(tables, 'places')
  const named = places.rows.map(({ cells }) => `${cells[0]!.text} ${cells[1]!.text}`)
  expect(named).toEqual(
    expect.arrayContaining(['Drain N High end', 'Drain N Low end', 'Pit Corner A', 'Pit Corner D']),
  )
  // Worked example of the trade notes: the pit spans x 304 to 340 and y 316 to 430.
  expect(inchesOf(cellsOf(places, `${idOf('Pit')} C`))).toEqual(
    [340, 430].map((inch) => expect.closeTo(inch, 6)),
  )
  const clear = tableIn(tables, 'keep-clear').rows.map(({ cells }) => cells[0]!.text)
  expect(clear).toEqual(expect.arrayContaining(['Post', 'Heater', 'Panel', 'North door']))
})

test('an empty bay has nothing to set out', () => {
  expect(settingOut.pieces(planOf({ ...layout, parts: [] }), options)).toEqual([])
})

test('any bay has all of its rows set out: four corners that hold every post, equal diagonals, every foot on a line', () => {
  fc.assert(
    fc.property(arbitraryBay, (any) => {
      const { now } = planOf(any)
      const made = tablesOf({ now, issued: undefined })
      const rows = now.bay.built.filter(({ rack }) => rack !== undefined)
      const ofRows = made.find(({ id }) => id === 'row-corners')
      const { x0, y0 } = boxOf(now.bay.house.outline)
      expect(ofRows?.rows.length ?? 0).toBe(4 * rows.length)
      for (const { part } of rows) {
        const [a, c] = ['A', 'C'].map((corner) => cellsOf(ofRows!, `${part} ${corner}`).slice(2))
        const [west, south] = a!.map(({ value }) => Number(value))
        const [east, north] = c!.map(({ value }) => Number(value))
        for (const { at } of now.bay.levels.feet.get(part) ?? []) {
          expect(at.x - x0).toBeGreaterThan(west!)
          expect(at.x - x0).toBeLessThan(east!)
          expect(at.y - y0).toBeGreaterThan(south!)
          expect(at.y - y0).toBeLessThan(north!)
        }
        const diagonals = cellsOf(
          made.find(({ id }) => id === 'row-diagonals')!,
          part,
        )
        expect(diagonals[3]!.value).toBe(diagonals[4]!.value)
      }
    }),
    { seed: 6203, numRuns: 60 },
  )
})

test('rows that are alike bear names alike, in the acre too, where no letter lies within a row', () => {
  const acre = scenarios['sallow-flats-one-acre']!()
  const figure = settingOut.pieces(planOf(acre), options).find((piece) => piece.as === 'figure')!
  if (figure.as !== 'figure') throw new Error('no figure')
  const rows = new Set(acre.parts.filter(({ kind }) => kind === 'rack-row').map(({ name }) => name))
  const marks = figure.draw({ widthMm: 186, heightMm: 220 }).items.flatMap((item) => item.marks)
  const names = marks.flatMap((mark) => (mark.as === 'text' && rows.has(mark.text) ? [mark] : []))
  expect(names.length).toBeGreaterThan(rows.size / 2)
  expect(new Set(names.map((mark) => JSON.stringify({ ...mark, at: 0, text: '' }))).size).toBe(1)
})
