import { describe, expect, test } from 'vitest'
import { asides } from '../../../src/sheets/floor/asides'

const drawing = { x0: 10, y0: 20, x1: 210, y1: 170 }

describe('a plan set aside', () => {
  test('leaves columns east of a narrow plan and none beside one that fills its room', () => {
    const ways = asides(drawing, { widthMm: 80, heightMm: 150 })
    expect(ways.map(({ spare }) => spare.length)).toEqual([1, 2])
    expect(asides(drawing, { widthMm: 190, heightMm: 148 })).toEqual([])
  })

  test('leaves columns south of a low plan', () => {
    const [way] = asides(drawing, { widthMm: 190, heightMm: 100 })
    expect(way!.drawing).toEqual({ ...drawing, y0: 70 })
    for (const { top } of way!.spare) expect(top).toBeLessThan(70)
  })

  test.each([
    { widthMm: 80, heightMm: 150 },
    { widthMm: 60, heightMm: 60 },
    { widthMm: 150, heightMm: 90 },
  ])('of $widthMm x $heightMm mm still fits what it keeps, and words stay off it', (plan) => {
    for (const { drawing: kept, spare } of asides(drawing, plan)) {
      expect(kept.x1 - kept.x0).toBeGreaterThanOrEqual(plan.widthMm)
      expect(kept.y1 - kept.y0).toBeGreaterThanOrEqual(plan.heightMm)
      for (const { left, top, widthMm, heightMm } of spare) {
        expect(left >= kept.x1 || top <= kept.y0).toBe(true)
        expect(widthMm).toBeGreaterThanOrEqual(40)
        expect(left + widthMm).toBeLessThanOrEqual(drawing.x1)
        expect(top - heightMm).toBeGreaterThanOrEqual(drawing.y0)
      }
    }
  })
})
