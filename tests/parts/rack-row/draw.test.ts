import { describe, expect, test } from 'vitest'
import { boxOf } from '../../../src/geometry/box'
import type { BoxesMark, DiscsMark, Mark, PathMark } from '../../../src/model/drawing'
import { rackRow } from '../../../src/parts/rack-row/kind'
import type { RackRow } from '../../../src/parts/rack-row/schema'
import { toInches } from '../../../src/units/length'
import { bodiesOf, extentOf } from '../../support/footprints'
import { build, row } from '../../support/rackRows'

const marksOf = (part: RackRow): readonly Mark[] => rackRow.draw(part, build(part))

const boxes = (marks: readonly Mark[]) => marks.filter((mark): mark is BoxesMark => mark.as === 'boxes')
const discs = (marks: readonly Mark[]) => marks.filter((mark): mark is DiscsMark => mark.as === 'discs')
const paths = (marks: readonly Mark[]) => marks.filter((mark): mark is PathMark => mark.as === 'path')

describe('the plan of a row', () => {
  test('draws every stick in a box', () => {
    const drawn = boxes(marksOf(row())).reduce((sum, mark) => sum + mark.boxes.length / 4, 0)
    expect(drawn).toBe(build(row()).sticks.length)
  })

  test.each(['J2', 'J4', 'J5'] as const)('draws every stick of %s too', (joint) => {
    const part = row({ joint })
    const drawn = boxes(marksOf(part)).reduce((sum, mark) => sum + mark.boxes.length / 4, 0)
    expect(drawn).toBe(build(part).sticks.length)
  })

  test.each([
    [row({ hold: 'anchored' }), 8],
    [row({ hold: 'tied' }), 4],
    [row({ carriedBy: 'house' }), 26],
    [row(), 0],
  ])('marks what holds a row: a dot in a ring at each place', (part, places) => {
    const dots = discs(marksOf(part)).filter(({ pen }) => pen === 'steel')
    expect(dots.map((mark) => mark.discs.length / 3)).toEqual(places === 0 ? [] : [places, places])
  })

  test('draws all towers in one operation, as wide as their bodies', () => {
    const towers = discs(marksOf(row({ takenOut: [1, 2] }))).find(({ pen }) => pen === 'crop')!
    expect(towers.discs).toHaveLength(94 * 3)
    expect(toInches(towers.discs[2]!)).toBeCloseTo(2, 6)
  })

  test('takes no more operations for twenty racks, but for the racks numbers', () => {
    expect(marksOf(row({ racks: 20 })).length - marksOf(row()).length).toBe(17)
  })

  test('washes the canopy with its leaves', () => {
    const built = build(row())
    const [canopy] = paths(rackRow.draw(row(), built))
    const points = Array.from({ length: 4 }, (_, k) => ({
      x: canopy!.points[2 * k]!,
      y: canopy!.points[2 * k + 1]!,
    }))
    const [body] = bodiesOf(built, 'canopy')
    expect(extentOf({ ...body!, outline: points })).toEqual(extentOf(body!))
  })

  test.each([
    ['end', 1],
    ['start', -1],
  ] as const)('points the arrows of the fall to the %s', (fallsTo, sign) => {
    const arrows = paths(marksOf(row({ fallsTo }))).filter((mark) => mark.arrows)
    expect(arrows).toHaveLength(4)
    for (const { points } of arrows) expect(Math.sign(points[3]! - points[1]!)).toBe(sign)
  })

  test('writes the name, and the numbers of racks and lines', () => {
    const words = (part: RackRow) => marksOf(part).flatMap((mark) => (mark.as === 'text' ? [mark.text] : []))
    expect(words(row({ name: 'N1' }))).toEqual(['1', '2', '3', '1', '2', '3', '4', 'N1'])
  })

  test('draws risers 1-1/2 in along the row and 3-1/2 in across it', () => {
    const size = (part: RackRow) => {
      const risers = boxes(marksOf(part)).find((mark) => mark.boxes.length === 26 * 4 && mark.nearMm === 30)!
      const [x0, y0, x1, y1] = risers.boxes
      const { x1: east, y1: north } = boxOf([
        { x: 0, y: 0 },
        { x: x1! - x0!, y: y1! - y0! },
      ])
      return [toInches(east), toInches(north)]
    }
    expect(size(row())).toEqual([expect.closeTo(3.5, 6), expect.closeTo(1.5, 6)])
    expect(size(row({ heading: 180 }))).toEqual([expect.closeTo(1.5, 6), expect.closeTo(3.5, 6)])
  })
})
