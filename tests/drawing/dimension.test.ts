import { describe, expect, test } from 'vitest'
import fc from 'fast-check'
import { dimensionStrokes } from '../../src/drawing/dimension'
import { textWidth } from '../../src/drawing/lettering'
import type { DimensionMark } from '../../src/model/drawing'

const SIZES = { letterMm: 3, tickMm: 2 }

const dimension = (x: number, y: number, more: Partial<DimensionMark> = {}): DimensionMark => ({
  as: 'dimension',
  pen: 'dimension',
  from: { x: 0, y: 0 },
  to: { x, y },
  offsetMm: 0,
  note: '',
  ...more,
})

const wordsOf = (mark: DimensionMark, length: string) => dimensionStrokes(mark, length, SIZES)?.words ?? []

describe('the strokes of a dimension', () => {
  test('the line runs to the left of the way from one end to the other', () => {
    const { lines } = dimensionStrokes(dimension(100, 0, { offsetMm: 10 }), '100', SIZES)!
    expect(Array.from(lines.slice(0, 4))).toEqual([0, 10, 100, 10])
    const northward = dimensionStrokes(dimension(0, 100, { offsetMm: 10 }), '100', SIZES)!
    expect(Array.from(northward.lines.slice(0, 4))).toEqual([-10, 0, -10, 100])
  })

  test('a shifted line has two extension lines and two ticks; one in place has only ticks', () => {
    expect(dimensionStrokes(dimension(100, 0, { offsetMm: 10 }), '', SIZES)!.lines).toHaveLength(5 * 4)
    expect(dimensionStrokes(dimension(100, 0), '', SIZES)!.lines).toHaveLength(3 * 4)
  })

  test('the line is as long as what it measures, whatever its slant (seed 5)', () => {
    fc.assert(
      fc.property(fc.integer({ min: -900, max: 900 }), fc.integer({ min: 1, max: 900 }), (x, y) => {
        const [x0, y0, x1, y1] = dimensionStrokes(dimension(x, y, { offsetMm: 77 }), '', SIZES)!.lines
        expect(Math.hypot(x1! - x0!, y1! - y0!)).toBeCloseTo(Math.hypot(x, y))
      }),
      { seed: 5 },
    )
  })

  test('two ends in one place are no dimension', () => {
    expect(dimensionStrokes(dimension(0, 0), '0', SIZES)).toBeUndefined()
  })
})

describe('the words of a dimension', () => {
  const note = 'leaf to leaf'

  test('stand in one line above it where there is room', () => {
    const [line, ...others] = wordsOf(dimension(100, 0, { note }), '36"')
    expect(others).toEqual([])
    expect(line?.text).toBe('36" leaf to leaf')
    expect(line!.at.x).toBe(50)
    expect(line!.at.y).toBeGreaterThan(1.5)
  })

  test('put the note below where both fit but not side by side', () => {
    const room = textWidth(note, SIZES.letterMm) / 0.9
    const lines = wordsOf(dimension(room, 0, { note }), '36"')
    expect(lines.map(({ text }) => text)).toEqual(['36"', note])
    expect(lines[0]!.at.y).toBeGreaterThan(0)
    expect(lines[1]!.at.y).toBeLessThan(0)
  })

  test('leave the note out where only the length fits', () => {
    expect(wordsOf(dimension(10, 0, { note }), '36"').map(({ text }) => text)).toEqual(['36"'])
  })

  test('stand across a line that is shorter than the length', () => {
    const [line] = wordsOf(dimension(4, 0, { note }), '1690 mm')
    expect(line?.turn).toBeCloseTo(Math.PI / 2)
    expect(line?.at).toEqual({ x: 2, y: 0 })
  })

  test('stand past the end of a line that is shorter than a letter', () => {
    const [line] = wordsOf(dimension(2, 0), '1690 mm')
    expect(line!.at.x).toBeGreaterThan(2)
    expect(line?.anchor).toBe('start')
    const [westward] = wordsOf(dimension(-2, 0), '1690 mm')
    expect(westward!.at.x).toBeLessThan(-2)
    expect(westward?.anchor).toBe('end')
  })
})
