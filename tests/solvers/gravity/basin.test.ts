import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { depthMm, surfaceMm2, volumeL, type Basin } from '../../../src/solvers/gravity/basin'
import { feet, inches } from '../../../src/units/length'
import { gallons, toGallons } from '../../../src/units/volume'

const box: Basin = { shape: 'box', lengthMm: inches(114), widthMm: inches(36) }
const round: Basin = { shape: 'round', diameterMm: feet(4) }
const frustum: Basin = {
  shape: 'sloped',
  bottomLengthMm: 600,
  bottomWidthMm: 400,
  topLengthMm: 1000,
  topWidthMm: 800,
  depthMm: 500,
}

describe('litres under a depth', () => {
  test('a box of 36 x 114 in holds 17.77 gal an inch', () => {
    // Worked example of the trade notes, hand arithmetic: 36 x 114 = 4104 in3, / 231 = 17.766 gal.
    expect(toGallons(volumeL(box, inches(1)))).toBeCloseTo(17.766, 3)
    expect(toGallons(volumeL(box, inches(37)))).toBeCloseTo(657.35, 2)
  })

  test('a round one of 4 ft holds 94 gal a foot', () => {
    // Cylindrical tanks, US gallons a foot of depth: 48 in, 94.0 (tables of tank makers, from memory). By hand: pi x 4 x 4 / 4 =
    // 12.566 ft3 x 7.4805 = 94.00.
    expect(toGallons(volumeL(round, feet(1)))).toBeCloseTo(94.0, 1)
  })

  test('sides that lean: the prismoidal formula by hand', () => {
    // 0.6 x 0.4 = 0.24 at the bottom, 1.0 x 0.8 = 0.8 at the top, 0.8 x 0.6 = 0.48 half way up:
    // (0.24 + 4 x 0.48 + 0.8) x 0.5 / 6 = 2.96 / 12 = 0.246667 m3.
    expect(volumeL(frustum, 500)).toBeCloseTo(246.667, 3)
    // Half full: 0.24, 0.7 x 0.5 = 0.35, 0.48: (0.24 + 1.4 + 0.48) x 0.25 / 6 = 0.088333 m3.
    expect(volumeL(frustum, 250)).toBeCloseTo(88.333, 3)
  })

  test('a frustum of a pyramid: (A + B + sqrt(A B)) h / 3', () => {
    // Where both sides lean alike in proportion the solid is a cut pyramid (Euclid XII.7 and its corollary): 2 x 2 over 1 x 1,
    // 3 high: (1 + 4 + 2) x 3 / 3 = 7.
    const cut: Basin = {
      shape: 'sloped',
      bottomLengthMm: 1000,
      bottomWidthMm: 1000,
      topLengthMm: 2000,
      topWidthMm: 2000,
      depthMm: 3000,
    }
    expect(volumeL(cut, 3000)).toBeCloseTo(7000, 6)
  })

  test('over its rim it goes on as wide as there, under its bottom there is nothing', () => {
    expect(volumeL(frustum, 600)).toBeCloseTo(246.667 + 80, 3)
    for (const basin of [box, round, frustum]) expect([volumeL(basin, 0), volumeL(basin, -5)]).toEqual([0, 0])
  })
})

const mm = (least: number, most: number) => fc.integer({ min: least, max: most })

const anyBasin: fc.Arbitrary<Basin> = fc.oneof(
  fc.record({ shape: fc.constant('box' as const), lengthMm: mm(300, 15_000), widthMm: mm(300, 15_000) }),
  fc.record({ shape: fc.constant('round' as const), diameterMm: mm(300, 15_000) }),
  fc.record({
    shape: fc.constant('sloped' as const),
    bottomLengthMm: mm(150, 15_000),
    bottomWidthMm: mm(150, 15_000),
    topLengthMm: mm(300, 15_000),
    topWidthMm: mm(300, 15_000),
    depthMm: mm(1, 3000),
  }),
)

describe('whatever the shape', () => {
  test('depth and litres lead back to each other', () => {
    fc.assert(
      fc.property(anyBasin, fc.double({ min: 0.01, max: 5000, noNaN: true }), (basin, depth) => {
        expect(depthMm(basin, volumeL(basin, depth))).toBeCloseTo(depth, 5)
      }),
      { seed: 20_251_127, numRuns: 300 },
    )
  })

  test('deeper is always more, by no less than the surface at either depth allows', () => {
    fc.assert(
      fc.property(anyBasin, mm(0, 4000), mm(1, 500), (basin, depth, more) => {
        const gained = volumeL(basin, depth + more) - volumeL(basin, depth)
        const surfaces = [0, 0.25, 0.5, 0.75, 1].map((share) => surfaceMm2(basin, depth + share * more))
        expect(gained).toBeGreaterThan(0)
        // A slice lies between its least and its greatest surface; these are at its ends, or where two sides lean to and fro.
        expect(gained).toBeLessThanOrEqual(1e-6 * more * Math.max(...surfaces) * 1.02)
        expect(gained).toBeGreaterThanOrEqual(1e-6 * more * Math.min(...surfaces) * 0.98)
      }),
      { seed: 20_251_128, numRuns: 300 },
    )
  })

  test('what is let in slice by slice is what is there', () => {
    fc.assert(
      fc.property(
        anyBasin,
        fc.array(fc.double({ min: 0.1, max: 500, noNaN: true }), { maxLength: 20 }),
        (basin, poured) => {
          let depth = 0
          for (const litres of poured) depth = depthMm(basin, volumeL(basin, depth) + litres)
          const total = poured.reduce((sum, litres) => sum + litres, 0)
          expect(Math.abs(volumeL(basin, depth) - total)).toBeLessThanOrEqual(1e-6 * Math.max(total, 1))
        },
      ),
      { seed: 20_251_129, numRuns: 200 },
    )
  })

  test('a slow sum of thin slices gives the same', () => {
    fc.assert(
      fc.property(anyBasin, mm(1, 3500), (basin, depth) => {
        const slices = 2000
        let litres = 0
        for (let i = 0; i < slices; i += 1)
          litres += (surfaceMm2(basin, ((i + 0.5) * depth) / slices) * depth) / slices / 1e6
        expect(volumeL(basin, depth) / litres).toBeCloseTo(1, 3)
      }),
      { seed: 20_251_130, numRuns: 60 },
    )
  })

  test('nothing stands at no depth', () => {
    for (const basin of [box, round, frustum])
      expect([depthMm(basin, 0), depthMm(basin, -gallons(1))]).toEqual([0, 0])
  })
})
