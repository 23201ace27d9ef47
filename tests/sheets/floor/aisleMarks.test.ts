import { describe, expect, test } from 'vitest'
import type { Aisle } from '../../../src/checks/aisles'
import { evaluate } from '../../../src/evaluate/evaluate'
import { aisleMarks, waysToShow } from '../../../src/sheets/floor/aisleMarks'
import { clearWords } from '../../../src/sheets/clearWords'
import { inches } from '../../../src/units/length'
import { inTrench } from '../../../src/units/precision'
import { writerFor } from '../../../src/units/writer'
import { bay } from '../../support/bay'

const RATIO = 48
const write = writerFor('feet-inches', inTrench)
const everywhere = { x0: -1e6, y0: -1e6, x1: 1e6, y1: 1e6 }

const two = bay('30 x 50 ft').row('A', [63, 100], { racks: 2 }).row('B', [165, 100], { racks: 2 })

const aisle = (more: Partial<Aisle>): Aisle => ({
  row: 'rack-row-1',
  other: undefined,
  otherIs: 'wall',
  along: 'face',
  from: { x: 0, y: 0 },
  to: { x: 900, y: 0 },
  out: { x: 1, y: 0 },
  widthMm: 900,
  lengthMm: 5000,
  needMm: 900,
  clashBelowMm: 450,
  ...more,
})

describe('which aisles are written', () => {
  test('one of two that measure the same way close by, the longer', () => {
    const short = aisle({
      lengthMm: 60,
      otherIs: 'obstacle',
      other: 'obstacle-1',
      from: { x: 0, y: 900 },
      to: { x: 900, y: 900 },
    })
    expect(waysToShow([short, aisle({})], RATIO)).toEqual([[aisle({})]])
  })

  test('both where they are far apart on the paper', () => {
    const far = aisle({ from: { x: 0, y: 9000 }, to: { x: 900, y: 9000 } })
    expect(waysToShow([far, aisle({})], RATIO)).toHaveLength(2)
    expect(waysToShow([far, aisle({})], 10 * RATIO)).toHaveLength(1)
  })

  test('one for all of a column of rows that measure the same, and any of them may bear it', () => {
    const rows = [0, 1, 2, 3].map((i) =>
      aisle({ from: { x: 0, y: i * 20_000 }, to: { x: 900, y: i * 20_000 } }),
    )
    expect(waysToShow(rows.slice(0, 3), RATIO)).toHaveLength(3)
    const [way, ...others] = waysToShow(rows, RATIO)
    expect(others).toEqual([])
    expect(way).toHaveLength(4)
  })

  test('none where two things run into each other, nor wide ways beside an obstacle', () => {
    expect(waysToShow([aisle({ widthMm: -10 })], RATIO)).toEqual([])
    expect(waysToShow([aisle({ otherIs: 'obstacle', other: 'obstacle-1', widthMm: 1400 })], RATIO)).toEqual(
      [],
    )
  })
})

describe('widths on the plan', () => {
  const { bay: floor } = evaluate(two.layout())
  const marksWith = (taken: Parameters<typeof clearWords>[0]) =>
    aisleMarks(floor, RATIO, clearWords(taken, everywhere), write)

  test('each line is as long as the aisle that it measures, and spans clear floor', () => {
    const { marks, leftOut } = marksWith([])
    expect(leftOut).toBe(0)
    // Rows of four lines 18 in apart with 6 in leaves are 66 in wide: 102 in between centrelines leave 36 in.
    const between = marks.find(({ note }) => note === 'leaf to leaf')!
    expect(Math.abs(between.to.x - between.from.x)).toBeCloseTo(inches(36))
    // 63 - 33 in to the west wall, 100 - 6 in to the south wall; the east and north walls are over 10 ft away.
    const toWall = marks.filter(({ note }) => note === 'leaf to wall')
    const widths = toWall.map(({ from, to }) => Math.round(Math.hypot(to.x - from.x, to.y - from.y) / 25.4))
    expect(new Set(widths)).toEqual(new Set([30, 94]))
  })

  test('a line slides along its aisle to clear other words, and is left out where there is no room', () => {
    const centre = marksWith([]).marks.find(({ note }) => note === 'leaf to leaf')!
    const middle = { x0: centre.from.x, x1: centre.to.x, y0: centre.from.y - 300, y1: centre.from.y + 300 }
    const moved = marksWith([middle]).marks.find(({ note }) => note === 'leaf to leaf')!
    expect(moved.from.y).not.toBeCloseTo(centre.from.y)
    expect(moved.to.x - moved.from.x).toBeCloseTo(centre.to.x - centre.from.x)
    const all = marksWith([everywhere])
    expect(all.marks).toEqual([])
    expect(all.leftOut).toBeGreaterThan(0)
  })

  test('a way that nobody passes is drawn with the must-fix pen', () => {
    const close = evaluate(two.row('C', [243, 100], { racks: 2 }).layout())
    const { marks } = aisleMarks(close.bay, RATIO, clearWords([], everywhere), write)
    // 243 - 165 - 66 = 12 in, less than the 18 in that a person needs.
    const narrow = marks.find(({ from, to }) => Math.abs(Math.abs(to.x - from.x) - inches(12)) < 1)!
    expect(narrow.pen).toBe('must-fix')
  })
})
