import { describe, expect, test } from 'vitest'
import { sump } from '../../../src/parts/sump/kind'
import { sumpSchema, type Sump } from '../../../src/parts/sump/schema'
import { toInches } from '../../../src/units/length'
import { bodiesOf, extentOf } from '../../support/footprints'
import { at, flatSite, inchesOf, siteOn } from '../../support/site'

/** The sample bay's pit, x 304 to 340 and y 316 to 430 in. */
const pit = (more: Partial<Sump> = {}): Sump =>
  sumpSchema.parse({ kind: 'sump', id: 'sump-1', at: at(322, 373), ...more })

describe('a pit', () => {
  test('of the sample bay goes 35 in below a floor at -2 in', () => {
    // Worked example of the trade notes, hand arithmetic: bottom at -37, deepest point 35 in below the floor.
    const [body] = bodiesOf(sump.derive(pit(), flatSite(-2)), 'pit')
    expect(extentOf(body!)).toEqual([304, 316, 340, 430, -35, 0])
  })

  test('is as deep as it is under the highest edge of its floor', () => {
    // A floor that falls 1 in per 36 in eastward, from 0 at the west edge.
    const [body] = bodiesOf(
      sump.derive(
        pit(),
        siteOn((x) => -(x - at(304, 0).x) / 36),
      ),
      'pit',
    )
    expect(toInches(body!.fromMm)).toBeCloseTo(-37, 6)
  })

  test('takes drains at the overflow and gives water at the pump-off level, both inside it', () => {
    const { mouths, bodies } = sump.derive(pit(), flatSite(-2))
    expect(mouths.map(({ role, at: place }) => [role, inchesOf(place.z)])).toEqual([
      ['pit-inlet', -13],
      ['pump', -29],
    ])
    const [x0, y0, x1, y1] = extentOf(bodies[0]!)
    for (const { at: place } of mouths) {
      expect(toInches(place.x)).toBeGreaterThan(x0!)
      expect(toInches(place.x)).toBeLessThan(x1!)
      expect(toInches(place.y)).toBeGreaterThan(y0!)
      expect(toInches(place.y)).toBeLessThan(y1!)
    }
  })

  test('is resized by a corner while the corner across stays', () => {
    const wider = sump.drag(pit(), 'c1', at(352, 436))
    const [body] = bodiesOf(sump.derive(wider, flatSite()), 'pit')
    expect(extentOf(body!).slice(0, 4)).toEqual([304, 316, 352, 436])
  })

  test('never becomes narrower than 12 in, however far a corner is pushed in', () => {
    const narrow = sump.drag(pit(), 'c1', at(0, 0))
    expect([narrow.lengthMm, narrow.widthMm].map(inchesOf)).toEqual([12, 12])
  })

  test('is drawn as a hole, with both diagonals', () => {
    const marks = sump.draw(pit(), sump.derive(pit(), flatSite()))
    const diagonals = marks.filter((mark) => mark.as === 'path' && !mark.closed)
    expect(diagonals).toHaveLength(2)
  })
})
