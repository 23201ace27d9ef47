import { describe, expect, test } from 'vitest'
import { standardScales } from '../../src/drawing/paper'
import { checkBar, checkLength, scaleSegment } from '../../src/sheets/bars'
import { inTrench } from '../../src/units/precision'
import { writerFor } from '../../src/units/writer'

describe('the scale bar', () => {
  test.each(['feet-inches', 'metric'] as const)(
    'has a handy length at every standard scale in %s',
    (units) => {
      for (const { ratio } of standardScales(units)) {
        const barMm = (4 * scaleSegment(ratio, units)) / ratio
        expect(barMm, `1:${ratio}`).toBeLessThanOrEqual(52)
        if (ratio >= 20 && ratio <= 600) expect(barMm, `1:${ratio}`).toBeGreaterThan(15)
      }
    },
  )
})

describe('the check bar', () => {
  test('is the longest of 12, 6, 4 and 2 in, or 300, 150, 100 and 50 mm, that its room holds', () => {
    expect(checkLength(310, 'feet-inches')).toBeCloseTo(304.8)
    expect(checkLength(300, 'feet-inches')).toBeCloseTo(152.4)
    expect(checkLength(310, 'metric')).toBe(300)
    expect(checkLength(99, 'metric')).toBe(50)
  })

  test.each([
    ['lying', { x0: 10, y0: 10, x1: 330, y1: 18 }],
    ['upright', { x0: 10, y0: 10, x1: 18, y1: 330 }],
  ])('%s is as long on paper as it says', (_, room) => {
    const [line, ...others] = checkBar(room, 'feet-inches', writerFor('feet-inches', inTrench))
    if (line?.as !== 'path') throw new Error('the bar is a line')
    const [x0, y0, x1, y1] = line.points
    expect(Math.hypot(x1! - x0!, y1! - y0!)).toBeCloseTo(12 * 25.4)
    expect(others.some((mark) => mark.as === 'text' && mark.text.startsWith('Measure me: 12"'))).toBe(true)
  })
})
