import { describe, expect, test } from 'vitest'
import { setHouse } from '../../src/layout/bayEdits'
import { emptyBay } from '../../src/layout/empty'
import {
  cornerAfter,
  newService,
  pointAfter,
  profileRows,
  rectangleOf,
  spotLevelRows,
  wallChoices,
  withItem,
  withProfile,
  withRectangle,
  withSpotLevels,
} from '../../src/sidebar/houseRows'
import type { Point } from '../../src/geometry/point'
import { feet, onTick } from '../../src/units/length'
import { expectEditLaws } from '../support/laws'
import { scenarios } from '../support/scenarios'

const bay = emptyBay(feet(30), feet(96), 'A house')
const square = bay.house

describe('a row that is put in', () => {
  const bend = [
    { x: 0, y: 0 },
    { x: 100, y: 0 },
    { x: 100, y: 40 },
  ]

  test('among corners lies in the middle of the wall, the last wall back to the first corner', () => {
    expect([0, 1, 2].map((corner) => cornerAfter(bend, corner))).toEqual([
      { x: 50, y: 0 },
      { x: 100, y: 20 },
      { x: 50, y: 20 },
    ])
  })

  test('among points lies in the middle of the leg, after the last one straight on', () => {
    expect([0, 1, 2].map((point) => pointAfter(bend, point))).toEqual([
      { x: 50, y: 0 },
      { x: 100, y: 20 },
      { x: 100, y: 60 },
    ])
  })

  test('makes an L of four corners, one typed length at a time, each of them a shape that a house may have', () => {
    const [a, b, c, d] = square.outline as [Point, Point, Point, Point]
    const first = cornerAfter(square.outline, 0)
    const second = cornerAfter([a, first, b, c, d], 1)
    const north = feet(30)
    const steps: Point[][] = [
      [a, first, b, c, d],
      [a, first, second, b, c, d],
      [a, first, { x: second.x, y: north }, b, c, d],
      [a, first, { x: first.x, y: north }, b, c, d],
      [a, first, { x: first.x, y: north }, { x: b.x, y: north }, c, d],
    ]
    for (const outline of steps) expect(setHouse(bay, { ...square, outline }).ok).toBe(true)
  })
})

describe('the size of a house', () => {
  test('is told for four square corners, whichever comes first', () => {
    expect(rectangleOf(square.outline)).toEqual([onTick(feet(30)), onTick(feet(96))])
    const [first, ...rest] = square.outline
    expect(rectangleOf([...rest, first!])).toEqual([onTick(feet(30)), onTick(feet(96))])
  })

  test('is not told for an L or for a leaning wall', () => {
    expect(rectangleOf(scenarios['old-dairy-corner']!().house.outline)).toBeUndefined()
    const [a, b, c, d] = square.outline
    expect(rectangleOf([a!, b!, { x: c!.x - 100, y: c!.y }, d!])).toBeUndefined()
  })

  test('is changed about the south-west corner, and can be undone', () => {
    const resized = withRectangle(square, feet(20), feet(48))
    expect(rectangleOf(resized.outline)).toEqual([feet(20), feet(48)])
    expect(resized.outline[0]).toEqual(square.outline[0])
    expectEditLaws(bay, (layout) => {
      const edited = setHouse(layout, resized)
      return edited.ok ? edited.layout : layout
    })
  })
})

test('the lists of a surveyed house come back from their tables', () => {
  for (const build of Object.values(scenarios)) {
    const { house } = build()
    expect(withSpotLevels(house, spotLevelRows(house))).toEqual(house)
    for (const wall of house.curvedWalls) expect(withProfile(wall, profileRows(wall))).toEqual(wall)
  }
})

test('heights typed out of order stand in order of their distance', () => {
  const wall = { edge: 0, profile: [] }
  const rows = [
    [1200, 3000],
    [0, 1500],
  ]
  expect(withProfile(wall, rows).profile.map(({ distanceMm }) => distanceMm)).toEqual([0, 1200])
})

test('a new buried line is a sound one', () => {
  const edited = setHouse(bay, { ...square, services: [newService(square)] })
  expect(edited.ok).toBe(true)
})

test('the walls of a square house are named by the side they stand on', () => {
  expect(wallChoices(square.outline).map(({ words }) => words)).toEqual([
    '1, south side',
    '2, east side',
    '3, north side',
    '4, west side',
  ])
})

test('one thing of a list is put in place of another, or taken out', () => {
  expect(withItem(['a', 'b', 'c'], 1, 'x')).toEqual(['a', 'x', 'c'])
  expect(withItem(['a', 'b', 'c'], 1, undefined)).toEqual(['a', 'c'])
})
