import { describe, expect, test } from 'vitest'
import fc from 'fast-check'
import { inches } from '../../../src/units/length'
import { readingsAlong } from '../../../src/sheets/floor/runningDimensions'
import { spread } from '../../../src/sheets/spread'
import type { RowRun } from '../../../src/sheets/floor/rowRuns'

const spot = (x: number, y: number) => ({ x: inches(x), y: inches(y) })
const northward = (x: number, from: number, to: number): RowRun => ({
  part: `rack-row-${x}`,
  from: spot(x, from),
  to: spot(x, to),
  runs: 'y',
})
const square = [spot(0, 0), spot(300, 0), spot(300, 400), spot(0, 400)]

const inInches = (readings: ReturnType<typeof readingsAlong>) =>
  readings.map(({ fromWallMm, isCentre }) => `${isCentre ? 'CL ' : ''}${Math.round(fromWallMm / 25.4)}`)

describe('readings', () => {
  const rows = [northward(63, 50, 170), northward(165, 50, 170), northward(63, 220, 340)]

  test('across the rows are centrelines, along them ends, each once', () => {
    expect(inInches(readingsAlong('x', rows, square, 0))).toEqual(['0', 'CL 63', 'CL 165', '300'])
    expect(inInches(readingsAlong('y', rows, square, 0))).toEqual(['0', '50', '170', '220', '340', '400'])
  })

  test('are counted from the inside of the wall, wherever the house lies', () => {
    const far = square.map(({ x, y }) => ({ x: x + inches(1000), y }))
    expect(inInches(readingsAlong('x', [northward(1063, 0, 9)], far, inches(1000)))).toEqual([
      '0',
      'CL 63',
      '300',
    ])
  })

  test('a row that runs east is read the other way round', () => {
    const eastward: RowRun = { part: 'rack-row-1', from: spot(30, 100), to: spot(150, 100), runs: 'x' }
    expect(inInches(readingsAlong('x', [eastward], square, 0))).toEqual(['0', '30', '150', '300'])
    expect(inInches(readingsAlong('y', [eastward], square, 0))).toEqual(['0', 'CL 100', '400'])
  })

  test('an L-shaped house is read at its inner corner too', () => {
    const outline = [spot(0, 0), spot(288, 0), spot(288, 288), spot(480, 288), spot(480, 480), spot(0, 480)]
    expect(inInches(readingsAlong('x', [], outline, 0))).toEqual(['0', '288', '480'])
  })
})

describe('words pushed apart', () => {
  const places = fc
    .array(fc.integer({ min: 0, max: 500 }), { minLength: 1, maxLength: 30 })
    .map((list) => list.toSorted((a, b) => a - b))

  test('keep their order and their distance, and stay where they are if nothing pushes (seed 8)', () => {
    fc.assert(
      fc.property(places, fc.integer({ min: 1, max: 40 }), (at, gap) => {
        const words = spread(at, gap)
        expect(words).toHaveLength(at.length)
        words.slice(1).forEach((word, i) => expect(word - words[i]!).toBeGreaterThanOrEqual(gap - 1e-9))
        if (at.slice(1).every((place, i) => place - at[i]! >= gap)) expect(words).toEqual(at)
      }),
      { seed: 8 },
    )
  })

  test('share the push: two in one place step aside by half a gap each', () => {
    expect(spread([100, 100], 10)).toEqual([95, 105])
  })

  test('are moved no more in all than any other order-keeping set would be (seed 6)', () => {
    const cost = (words: readonly number[], at: readonly number[]) =>
      words.reduce((sum, word, i) => sum + (word - at[i]!) ** 2, 0)
    fc.assert(
      fc.property(
        places,
        fc.integer({ min: 1, max: 40 }),
        fc.integer({ min: -30, max: 30 }),
        (at, gap, shift) => {
          // Another set that keeps the distance: pushed one way from a shifted start.
          let last = -Infinity
          const rival = at.map((place) => (last = Math.max(place + shift, last + gap)))
          expect(cost(spread(at, gap), at)).toBeLessThanOrEqual(cost(rival, at) + 1e-6)
        },
      ),
      { seed: 6 },
    )
  })
})
