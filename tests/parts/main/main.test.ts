import { describe, expect, test } from 'vitest'
import { main } from '../../../src/parts/main/kind'
import { mainSchema, type Main } from '../../../src/parts/main/schema'
import { toInches } from '../../../src/units/length'
import { bodiesOf, extentOf } from '../../support/footprints'
import { at, flatSite, inchesOf, siteOn } from '../../support/site'

const line = (more: Partial<Main> = {}): Main =>
  mainSchema.parse({
    kind: 'main',
    id: 'main-1',
    points: [at(0, 0), at(100, 0), at(100, 60)],
    ...more,
  })

describe('a main', () => {
  test('lies 4 in above the floor at each point', () => {
    const [tube] = main.derive(
      line(),
      siteOn((x) => -x / 100),
    ).tubes
    expect(tube!.path.map(({ z }) => Number(toInches(z).toFixed(6)))).toEqual([4, 3, 3])
    expect(tube).toMatchObject({ role: 'main', stock: 'pe-2' })
  })

  test('is as long as its way', () => {
    expect(toInches(main.derive(line(), flatSite()).tubes[0]!.lengthMm)).toBeCloseTo(160, 9)
  })

  test('turns in an elbow, and can be joined at both its ends', () => {
    const { fittings, mouths } = main.derive(line(), flatSite())
    // Two clamps, screw heads opposite, on each of the two barbs of a 2 in elbow: trade notes, take-off rules.
    expect(fittings.map(({ item, at: place }) => [item, inchesOf(place.x), inchesOf(place.y)])).toEqual([
      ['elbow-pe-2', 100, 0],
      ...Array.from({ length: 4 }, () => ['clamp-pe-2', 100, 0]),
    ])
    expect(mouths.map(({ role, at: place }) => [role, inchesOf(place.x), inchesOf(place.y)])).toEqual([
      ['main-end', 0, 0],
      ['main-end', 100, 60],
    ])
  })

  test('takes up a strip as wide and high as the pipe', () => {
    const bodies = bodiesOf(main.derive(line(), flatSite()), 'main').map(extentOf)
    expect(bodies).toHaveLength(2)
    const [, south, , north, from, to] = bodies[0]!
    expect(north! - south!).toBeCloseTo(to! - from!, 3)
    expect((to! + from!) / 2).toBeCloseTo(4, 3)
    // ASTM D2239 2 in pipe has a bore of 2.067 in, from memory; its outside can't be less.
    expect(north! - south!).toBeGreaterThan(2.067)
  })

  test('is drawn with the way its water runs', () => {
    const marks = main.draw(line(), main.derive(line(), flatSite()))
    expect(marks).toContainEqual(expect.objectContaining({ pen: 'water', arrows: 'middle' }))
  })
})
