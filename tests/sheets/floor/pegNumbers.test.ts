import { describe, expect, test } from 'vitest'
import { evaluate } from '../../../src/evaluate/evaluate'
import { overlaps } from '../../../src/geometry/box'
import type { Mark, TextMark } from '../../../src/model/drawing'
import { clearWords, textBox } from '../../../src/sheets/clearWords'
import { isPegNumber, pegNumbers } from '../../../src/sheets/floor/pegNumbers'
import { bay } from '../../support/bay'

const everywhere = { x0: -1e6, y0: -1e6, x1: 1e6, y1: 1e6 }
const evaluation = evaluate(
  bay('40 x 60 ft')
    .row('Row 1', [100, 100], { racks: 1, lines: 4 })
    .drain(
      'Drain',
      [
        [40, 205],
        [400, 205],
      ],
      { startInvert: -12 },
    )
    .layout(),
)
const run = evaluation.bay.levels.drains.get('drain-line-1')!
const marksAt = (ratio: number) => pegNumbers(evaluation, ratio, clearWords([], everywhere))
const isNumber = (mark: Mark): mark is TextMark => isPegNumber(mark)

describe('pegs on the floor sheet', () => {
  test('have a tick each, across the drain', () => {
    const ticks = marksAt(48).filter((mark) => mark.as === 'path')
    expect(run.pegs.length).toBeGreaterThan(3)
    expect(ticks).toHaveLength(run.pegs.length)
    for (const tick of ticks) {
      const [x0, , x1] = (tick as { points: Float64Array }).points
      // The drain runs east, so its ticks run north.
      expect(x0).toBeCloseTo(x1!, 6)
    }
  })

  test('are numbered from the low end, no number over another', () => {
    const numbers = marksAt(48).filter(isNumber)
    const boxes = numbers.map((mark) => textBox(mark, 48))
    boxes.forEach((box, i) => {
      for (const other of boxes.slice(i + 1)) expect(overlaps(box, other)).toBe(false)
    })
    const one = numbers.find(({ text }) => text === '1')!
    expect(one.at.x).toBeCloseTo(run.low.at.x, 6)
  })

  test('have both ends numbered where there is room for few', () => {
    const texts = marksAt(128)
      .filter(isNumber)
      .map(({ text }) => text)
    expect(texts).toContain('1')
    expect(texts).toContain(String(run.pegs.length))
  })

  test('are left out of a drawing that is too small for them', () => {
    expect(marksAt(240)).toEqual([])
  })
})
