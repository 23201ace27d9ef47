import { describe, expect, test } from 'vitest'
import { signedArea } from '../../../src/geometry/polygon'
import { sump } from '../../../src/parts/sump/kind'
import { sumpSchema, type Sump } from '../../../src/parts/sump/schema'
import { volumeL } from '../../../src/solvers/gravity/basin'
import { inches, toInches } from '../../../src/units/length'
import { toGallons } from '../../../src/units/volume'
import { bodiesOf, extentOf } from '../../support/footprints'
import { at, flatSite, inchesOf } from '../../support/site'

const pit = (more: Partial<Sump> = {}): Sump =>
  sumpSchema.parse({ kind: 'sump', id: 'sump-1', at: at(300, 400), ...more })

const round = (more: Partial<Sump> = {}): Sump => pit({ shape: 'round', widthMm: inches(48), ...more })
const sloped = (more: Partial<Sump> = {}): Sump =>
  pit({
    shape: 'sloped',
    widthMm: inches(48),
    bottomLengthMm: inches(90),
    bottomWidthMm: inches(24),
    ...more,
  })

const built = (part: Sump) => sump.derive(part, flatSite())
const dug = (part: Sump) => bodiesOf(built(part), 'pit')[0]!

describe('a round pit', () => {
  test('reaches its radius to every side, whatever its length was', () => {
    expect(extentOf(dug(round({ lengthMm: inches(200) })))).toEqual([276, 376, 324, 424, -37, 0])
  })

  test('covers its circle and hardly more', () => {
    // pi x 24^2 = 1809.6 in2; a polygon of 24 sides about it is 0.6 % more, tan(7.5 deg) / 7.5 deg in radians = 1.0058.
    const inches2 = signedArea(dug(round()).outline) / inches(1) ** 2
    expect(inches2).toBeGreaterThan(1809.6)
    expect(inches2).toBeLessThan(1809.6 * 1.006)
  })

  test('holds what a cylinder holds', () => {
    // pi x 24^2 / 231 = 7.834 gal an inch.
    expect(toGallons(volumeL(built(round()).pit!.basin, inches(1)))).toBeCloseTo(7.834, 3)
  })

  test('has one handle, on its edge, and both sides move with it', () => {
    expect(
      sump.handles(round()).map(({ id, at: place }) => [id, inchesOf(place.x), inchesOf(place.y)]),
    ).toEqual([['edge', 300, 424]])
    const wider = sump.drag(round(), 'edge', at(300, 430))
    expect([inchesOf(wider.widthMm), wider.at]).toEqual([60, at(300, 400)])
    expect(inchesOf(sump.drag(round(), 'edge', at(300, 401)).widthMm)).toBe(12)
    expect(inchesOf(sump.drag(round(), 'c1', at(300, 430)).widthMm)).toBe(48)
  })

  test('has its pump in the middle and is drawn as a circle with both diagonals inside it', () => {
    const [pump] = built(round()).fittings.filter(({ item }) => item === 'pump-middle')
    expect([toInches(pump!.at.x), toInches(pump!.at.y)].map(Math.round)).toEqual([300, 400])
    const marks = sump.draw(round(), built(round()))
    const diagonals = marks.filter((mark) => mark.as === 'path' && !mark.closed)
    expect(diagonals).toHaveLength(2)
    for (const mark of diagonals)
      if (mark.as === 'path')
        expect(Math.hypot(mark.points[0]! - inches(300), mark.points[1]! - inches(400))).toBeCloseTo(
          inches(24),
          6,
        )
  })
})

describe('a pit whose sides lean', () => {
  test('is dug as wide as its rim, and holds a prismoid', () => {
    expect(extentOf(dug(sloped()))).toEqual([276, 343, 324, 457, -37, 0])
    // 24 x 90 = 2160, 48 x 114 = 5472, half way 36 x 102 = 3672: (2160 + 14688 + 5472) x 37 / 6 = 137640 in3 / 231 = 595.8 gal.
    expect(toGallons(volumeL(built(sloped()).pit!.basin, inches(37)))).toBeCloseTo(595.84, 1)
  })

  test('has its pump over its bottom', () => {
    // (90 - 24) / 2 = 33 in from the middle, 12 in from the bottom's end.
    const [pump] = built(sloped()).fittings.filter(({ item }) => item === 'pump-middle')
    expect(toInches(pump!.at.y) - 400).toBeCloseTo(33, 6)
  })

  test('never leans in when a corner is pushed in', () => {
    const small = sump.drag(sloped(), 'c1', at(288, 380))
    expect(small.bottomWidthMm).toBeLessThanOrEqual(small.widthMm)
    expect(small.bottomLengthMm).toBeLessThanOrEqual(small.lengthMm)
  })

  test('is drawn with a hidden line at its bottom', () => {
    const marks = sump.draw(sloped(), built(sloped()))
    const outlines = marks.filter((mark) => mark.as === 'path' && mark.closed)
    expect(outlines.map(({ pen }) => pen)).toEqual(['outline', 'hidden'])
  })
})

describe('a tote off the shelf', () => {
  const tote = (id: string) =>
    sump.create(
      'sump-1',
      'T',
      at(50, 50),
      sump.presets.find((preset) => preset.id === id)!,
    )

  test('on the floor digs nothing; cut in, 15 in', () => {
    expect(inchesOf(dug(tote('tote-on-floor')).fromMm)).toBe(0)
    expect(inchesOf(dug(tote('tote-in-floor')).fromMm)).toBe(-15)
  })

  test('holds some 55 gal to its rim', () => {
    // 38 x 17 = 646, 43 x 21 = 903, half way 40.5 x 19 = 769.5: (646 + 3078 + 903) x 17 / 6 = 13110 in3 / 231 = 56.8 gal.
    const { basin } = built(tote('tote-on-floor')).pit!
    expect(toGallons(volumeL(basin, inches(17)))).toBeCloseTo(56.75, 1)
  })
})
