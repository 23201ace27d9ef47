import { describe, expect, test } from 'vitest'
import { evaluate } from '../../../src/evaluate/evaluate'
import { acceptFinding } from '../../../src/layout/bayEdits'
import { floorSheet } from '../../../src/sheets/floor/floorSheet'
import { tablesIn } from '../../../src/sheets/piece'
import type { SheetOptions } from '../../../src/sheets/sheet'
import { toInches } from '../../../src/units/length'
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
const planOf = (of: typeof layout) => ({ now: evaluate(of), issued: undefined })
const tablesOf = (of: typeof layout) => tablesIn(floorSheet.pieces(planOf(of), options))
const tableIn = (of: typeof layout, id: string) => tablesOf(of).find((table) => table.id === id)!
const idOf = (name: string) => layout.parts.find((part) => part.name === name)!.id

describe('the floor sheet in tables', () => {
  // Worked example of the trade notes: 480 towers, 4,320 sites; six rows of four lines, two and three racks.
  test('counts rows, racks, towers and sites', () => {
    const { rows } = tableIn(layout, 'rows')
    const sum = rows.at(-1)!
    expect(sum.isSum).toBe(true)
    expect(sum.cells.map(({ value }) => value)).toEqual(['Together', 15, null, null, null, null, 480, 4320])
    const north = rows.find(({ key }) => key === idOf('N1'))!.cells.map(({ text }) => text)
    expect(north.slice(0, 4)).toEqual(['N1', '3', '4', `30' 0"`])
  })

  // Worked example of the trade notes: 30 in to the west wall, aisles of 36 and 36, 52 to the east wall.
  test.each([
    ['N1', 'west', 'wall', 30],
    ['N1', 'east', 'N2', 36],
    ['N2', 'east', 'N3', 36],
    ['N3', 'east', 'wall', 52],
  ])('measures from %s %s to %s %d in, leaf to leaf', (row, side, to, wide) => {
    const aisle = tableIn(layout, 'aisles').rows.find(
      ({ cells }) => cells[0]!.text === row && cells[1]!.text === side && cells[2]!.text === to,
    )!
    expect(toInches(Number(aisle.cells[3]!.value))).toBeCloseTo(wide, 6)
  })

  test('has a key of its own for every way, whatever bay', () => {
    for (const of of Object.values(scenarios)) {
      const keys = tableIn(of(), 'aisles').rows.map(({ key }) => key)
      expect(new Set(keys).size).toBe(keys.length)
    }
  })

  test('moves a warning that was accepted from what is open to what is lived with, with reason and name', () => {
    const open = tableIn(scenarios['old-dairy-corner']!(), 'open')
    const key = open.rows.find(({ cells }) => cells[1]!.value === 1)!.key
    const edited = acceptFinding(scenarios['old-dairy-corner']!(), key, 'Old, and never used again', 'Ana')
    const after = edited.ok ? edited.layout : layout
    expect(tableIn(after, 'open').rows.map((row) => row.key)).not.toContain(key)
    const answered = tableIn(after, 'accepted').rows.find((row) => row.key === key)!
    expect(answered.cells.slice(1).map(({ text }) => text)).toEqual(['Old, and never used again', 'Ana'])
  })

  test('has nothing to say of an empty floor', () => {
    expect(floorSheet.pieces(planOf({ ...layout, parts: [] }), options)).toEqual([])
  })
})
