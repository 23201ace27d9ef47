import { describe, expect, test } from 'vitest'
import { shift } from '../../../src/geometry/motion'
import { main } from '../../../src/parts/main/kind'
import { mainSchema, type Main } from '../../../src/parts/main/schema'
import { inches, toInches } from '../../../src/units/length'
import { bodiesOf, extentOf } from '../../support/footprints'
import { at, flatSite, inchesOf } from '../../support/site'

const up = (x: number, y: number, height: number) => ({ ...at(x, y), heightMm: inches(height) })

const line = (points: readonly object[]): Main => mainSchema.parse({ kind: 'main', id: 'main-1', points })

/** Along the floor at 4 in, over a door at 94 in, and down again. */
const overDoor = line([at(0, 0), at(100, 0), up(100, 0, 94), up(150, 0, 94), at(150, 0), at(200, 0)])

const heights = ({ points }: Main) =>
  points.map(({ heightMm }) => (heightMm === undefined ? '-' : inchesOf(heightMm)))

describe('a main with heights of its own', () => {
  test('is as long as its way up and down', () => {
    // 100 + 90 up + 50 + 90 down + 50.
    expect(toInches(main.derive(overDoor, flatSite()).tubes[0]!.lengthMm)).toBeCloseTo(380, 6)
  })

  test('turns in two elbows at each rise', () => {
    const elbows = main.derive(overDoor, flatSite()).fittings.filter(({ item }) => item === 'elbow-pe-2')
    expect(elbows.map(({ at: place }) => [inchesOf(place.x), inchesOf(place.z)])).toEqual([
      [100, 4],
      [100, 94],
      [150, 94],
      [150, 4],
    ])
  })

  test('stands in the way where it rises and not under its high stretch', () => {
    const bands = bodiesOf(main.derive(overDoor, flatSite()), 'main').map(extentOf)
    const high = bands.filter(([x0, , x1]) => x0! >= 100 - 0.01 && x1! <= 150.01)
    expect(high.map(([, , , , from]) => Math.round(from!))).toEqual([93])
    // Two straight rises, each a square as wide as the pipe: 2.067 + 2 x 0.138 = 2.343 in.
    const rises = bands.filter(([x0, , x1]) => x1! - x0! < 3)
    expect(rises.map(([x0, , x1]) => Number((x1! - x0!).toFixed(3)))).toEqual([2.343, 2.343])
  })

  test('a slanting leg is in nobody’s way under its high end', () => {
    const slant = bodiesOf(main.derive(line([at(0, 0), up(120, 0, 64)]), flatSite()), 'main').map(extentOf)
    // 60 in of rise in steps of 6 in at most: ten pieces of 12 in.
    expect(slant).toHaveLength(10)
    const [x0, , x1, , from] = slant.at(-1)!
    expect([x0, x1].map((n) => Math.round(n!))).toEqual([108, 120])
    expect(from!).toBeGreaterThan(56)
  })

  test('keeps its heights when it is moved, mirrored, dragged and given a point', () => {
    const bent = line([at(0, 0), up(100, 0, 94), up(200, 0, 84)])
    expect(heights(main.move(bent, shift(10, 20)))).toEqual(['-', 94, 84])
    expect(heights(main.mirror(bent, { axis: 'x', atMm: 0 }))).toEqual(['-', 94, 84])
    expect(heights(main.drag(bent, 'p1', at(100, 50)))).toEqual(['-', 94, 84])
    expect(heights(main.removePoint!(bent, 'p0'))).toEqual([94, 84])
  })

  test('a point put in lies on the pipe: halfway up from 4 to 94 in it is at 49', () => {
    const bent = line([at(0, 0), up(100, 0, 94), at(200, 0)])
    expect(heights(main.addPoint!(bent, at(50, 3)))).toEqual(['-', 49, 94, '-'])
    expect(heights(main.addPoint!(line([at(0, 0), at(100, 0)]), at(50, 3)))).toEqual(['-', '-', '-'])
  })

  test('tells on the plan how high it lies where it lies higher or lower than the rest', () => {
    const marks = main.draw(overDoor, main.derive(overDoor, flatSite()))
    const told = marks.flatMap((mark) =>
      mark.as === 'height' ? [[inchesOf(mark.at.x), inchesOf(mark.heightMm)]] : [],
    )
    expect(told).toEqual([
      [100, 94],
      [150, 94],
    ])
  })
})
