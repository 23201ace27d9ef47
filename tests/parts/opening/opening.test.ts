import { describe, expect, test } from 'vitest'
import { signedArea } from '../../../src/geometry/polygon'
import type { BodyRole } from '../../../src/model/built'
import { opening } from '../../../src/parts/opening/kind'
import { openingSchema, type Opening } from '../../../src/parts/opening/schema'
import { inches, toInches } from '../../../src/units/length'
import { bodiesOf, extentOf } from '../../support/footprints'
import { at, flatSite } from '../../support/site'

const make = (more: Partial<Opening> = {}): Opening =>
  openingSchema.parse({ kind: 'opening', id: 'opening-1', at: at(0, 0), ...more })

const extents = (part: Opening, role: BodyRole): number[][] =>
  bodiesOf(opening.derive(part, flatSite()), role).map(extentOf)

// The sample bay is invented; its numbers are those of the worked example of the trade notes, hand arithmetic.
describe('the doors of the sample bay', () => {
  test('north door, x 40 to 76, swings in and keeps 36 x 36 in clear', () => {
    const door = make({ at: at(58, 856), heading: 270, swing: 'in' })
    expect(extents(door, 'door')).toEqual([[40, 855, 76, 857, 0, 80]])
    expect(extents(door, 'keep-clear')).toEqual([[40, 820, 76, 856, 0, 80]])
    expect(extents(door, 'door-swing')).toEqual([[40, 820, 76, 856, 0, 80]])
  })

  test('south double door, 96 x 90 in about x = 176, swings out and asks for nothing inside', () => {
    const door = make({
      at: at(176, 0),
      widthMm: inches(96),
      heightMm: inches(90),
      leaves: 'double',
    })
    expect(extents(door, 'door')).toEqual([[128, -1, 224, 1, 0, 90]])
    expect(opening.derive(door, flatSite()).bodies).toHaveLength(1)
  })
})

describe('leaves that swing in', () => {
  test('one leaf passes over a quarter disc as wide as the door', () => {
    const [swing] = bodiesOf(opening.derive(make({ swing: 'in' }), flatSite()), 'door-swing')
    const area = signedArea(swing!.outline) / inches(1) ** 2
    // Quarter of a circle of radius 36 in; chords take off less than 1/200 of it.
    expect(area / ((Math.PI / 4) * 36 * 36)).toBeGreaterThan(0.995)
    expect(area / ((Math.PI / 4) * 36 * 36)).toBeLessThanOrEqual(1)
  })

  test('two leaves pass over half the depth', () => {
    const part = make({ swing: 'in', leaves: 'double', widthMm: inches(96) })
    expect(extents(part, 'door-swing').map((extent) => extent.slice(0, 4))).toEqual([
      [0, 0, 48, 48],
      [-48, 0, 0, 48],
    ])
    expect(extents(part, 'keep-clear')[0]!.slice(0, 4)).toEqual([-48, 0, 48, 48])
  })

  test.each([
    // Looking south at the door from inside, the left jamb is the east one.
    ['left', 18],
    ['right', -18],
  ] as const)('hinge on the %s, seen from inside', (hinge, x) => {
    const [swing] = bodiesOf(opening.derive(make({ swing: 'in', hinge }), flatSite()), 'door-swing')
    expect(toInches(swing!.outline[0]!.x)).toBeCloseTo(x, 9)
  })

  test('a gap has no leaf, whatever its swing says', () => {
    expect(opening.derive(make({ leaves: 'none', swing: 'in' }), flatSite()).bodies).toHaveLength(1)
  })
})

describe('editing', () => {
  test('a jamb follows along the wall while the other stays', () => {
    const wider = opening.drag(make(), 'right', at(30, 99))
    expect(extents(wider, 'door')[0]!.slice(0, 4)).toEqual([-18, -1, 30, 1])
  })

  test('a mirror changes the hinge', () => {
    expect(opening.mirror(make({ hinge: 'left' }), { axis: 'y', atMm: 0 })).toMatchObject({
      hinge: 'right',
      heading: 270,
    })
  })
})

test('a door that swings out is drawn with its leaf outside', () => {
  const part = make({ swing: 'out' })
  const marks = opening.draw(part, opening.derive(part, flatSite()))
  const leaf = marks.find((mark) => mark.as === 'path' && mark.pen === 'outline' && !mark.closed)
  expect(leaf?.as === 'path' && toInches(leaf.points[3]!)).toBeCloseTo(-36, 9)
})

describe('let go near a wall', () => {
  // 20 x 30 ft, listed anticlockwise from the south-west corner; an L would have a wall that faces the other way.
  const house = [at(0, 0), at(240, 0), at(240, 360), at(0, 360)]
  const placed = ([x, y]: readonly [number, number]): number[] => {
    const part = opening.fitIn!(make({ at: at(x, y), widthMm: inches(36) }), house)
    return [toInches(part.at.x), toInches(part.at.y), part.heading]
  }

  test.each([
    ['the south wall', [100, 3], [100, 0, 90]],
    ['the east wall, from outside', [250, 120], [240, 120, 180]],
    ['the north wall', [100, 355], [100, 360, 270]],
    ['the west wall', [-1, 120], [0, 120, 0]],
    ['a corner: both jambs stay in the wall', [235, 8], [240, 18, 180]],
  ] as const)('it goes into %s and leads in', (_, from, to) => {
    expect(placed(from)).toEqual(to)
  })

  test('in the middle of the floor it stays where it is', () => {
    const door = make({ at: at(120, 180) })
    expect(opening.fitIn!(door, house)).toBe(door)
  })

  test('a wall askew takes no quarter turn, so the door is left alone', () => {
    const door = make({ at: at(120, 1) })
    expect(opening.fitIn!(door, [at(0, 0), at(240, 10), at(120, 200)])).toBe(door)
  })
})
