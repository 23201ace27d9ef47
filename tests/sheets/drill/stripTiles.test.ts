import fc from 'fast-check'
import { expect, test } from 'vitest'
import { stripOf, tapeStep, tilesToPrint } from '../../../src/sheets/drill/stripTiles'
import { inches, type Units } from '../../../src/units/length'

const WIDE = { widthMm: 189.9, largestMm: inches(1.1875), units: 'feet-inches' } as const

const stretches = (tiles: readonly { fromMm: number; toMm: number }[]) =>
  tiles.map(({ fromMm, toMm }) => [fromMm / 25.4, toMm / 25.4].map((inch) => Math.round(inch * 1e6) / 1e6))

test('a riser on letter paper: tiles of 7 in, each 5 in on from the last, the last to the top', () => {
  // 215.9 mm of paper less 26 mm of margins is 7.47 in, so 7 whole inches; 2 in overlap. Hand arithmetic.
  const { tiles } = stripOf(inches(71.9375), WIDE)
  expect(tiles).toHaveLength(14)
  expect(stretches(tiles.slice(0, 3))).toEqual([
    [0, 7],
    [5, 12],
    [10, 17],
  ])
  expect(stretches(tiles.slice(-1))).toEqual([[65, 71.9375]])
})

test('only the foot and the tile that shows the hole best are printed', () => {
  const strip = stripOf(inches(71.9375), WIDE)
  const hole = { fromMm: inches(68.9), toMm: inches(69.85) }
  // On tile 13, 60 to 67 in, it is not; on tile 14, 65 in to the top, it is whole.
  expect(tilesToPrint(strip, [hole]).map(({ number }) => number)).toEqual([1, 14])
  expect(
    tilesToPrint(strip, [{ fromMm: inches(5.5), toMm: inches(6.5) }]).map(({ number }) => number),
  ).toEqual([1, 2])
})

test('any hole of any member is whole on a tile that is printed; tiles begin on numbers of the tape', () => {
  const someUnits = fc.constantFrom<Units[]>('feet-inches', 'metric')
  const member = fc.record({
    lengthMm: fc.double({ min: 300, max: 3000, noNaN: true }),
    widthMm: fc.double({ min: 90, max: 400, noNaN: true }),
    largestMm: fc.double({ min: 10, max: 60, noNaN: true }),
    at: fc.double({ min: 0, max: 1, noNaN: true }),
    units: someUnits,
  })
  fc.assert(
    fc.property(member, ({ lengthMm, widthMm, largestMm, at, units }) => {
      const strip = stripOf(lengthMm, { widthMm, largestMm, units })
      const fromMm = at * (lengthMm - largestMm)
      const hole = { fromMm, toMm: fromMm + largestMm }
      const printed = tilesToPrint(strip, [hole])
      expect(printed.some((tile) => tile.fromMm <= hole.fromMm && hole.toMm <= tile.toMm)).toBe(true)
      expect(strip.tiles.at(-1)!.toMm).toBeCloseTo(lengthMm, 6)
      const steps = strip.tiles.map((tile) => tile.fromMm / tapeStep(units).numberMm)
      for (const step of steps) expect(step).toBeCloseTo(Math.round(step), 6)
    }),
    { seed: 1126, numRuns: 300 },
  )
})
