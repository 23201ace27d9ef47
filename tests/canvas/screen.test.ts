import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { drawnParts } from '../../src/canvas/drawnParts'
import { layLabels } from '../../src/canvas/label'
import { lensOf } from '../../src/canvas/lens'
import { movedIn } from '../../src/canvas/moved'
import { namesIn, roomyWords } from '../../src/canvas/names'
import { multiples, rulerStep, tickWords } from '../../src/canvas/rulerSteps'
import { bitmapTransform } from '../../src/canvas/useBitmap'
import { paperTheme } from '../../src/drawing/theme'
import { evaluate } from '../../src/evaluate/evaluate'
import { movePartsBy } from '../../src/layout/edits'
import { panned, toFloor, toScreen, zoomedAt } from '../../src/store/view'
import { feet, inches } from '../../src/units/length'
import { writerFor } from '../../src/units/writer'
import { bay } from '../support/bay'

const lens = (pxPerInch: number) =>
  lensOf(
    { x: 0, y: feet(60), pxPerMm: pxPerInch / inches(1) },
    { width: 1200, height: 900 },
    paperTheme,
    'feet-inches',
  )

describe('rulers', () => {
  test('write whole feet from afar and inches from near', () => {
    const words = (pxPerInch: number) => {
      const step = rulerStep(pxPerInch / inches(1), 'feet-inches')
      return [1, 2].map((n) => tickWords(n * step.majorMm, step, 'feet-inches', writerFor('feet-inches')))
    }
    expect(words(1)).toEqual([`10'`, `20'`])
    expect(words(6)).toEqual([`1'`, `2'`])
    expect(words(70)).toEqual(['1"', '2"'])
  })

  test('write metres, or millimetres from near', () => {
    const words = (pxPerMm: number) => {
      const step = rulerStep(pxPerMm, 'metric')
      return tickWords(3 * step.majorMm, step, 'metric', writerFor('metric'))
    }
    expect(words(0.04)).toBe('6 m')
    expect(words(1)).toBe('300')
  })

  test('keep their words apart at every zoom, and their ticks no nearer than 4 px', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.004, max: 4, noNaN: true }),
        fc.constantFrom('feet-inches', 'metric'),
        (pxPerMm, units) => {
          const { majorMm, minorMm } = rulerStep(pxPerMm, units as 'feet-inches' | 'metric')
          expect(majorMm * pxPerMm).toBeGreaterThanOrEqual(64)
          expect(minorMm * pxPerMm).toBeGreaterThanOrEqual(4)
          expect(majorMm / minorMm).toBeCloseTo(Math.round(majorMm / minorMm), 9)
        },
      ),
      { seed: 3, numRuns: 300 },
    )
  })

  test('ticks lie on multiples, both ends included', () => {
    expect(multiples(-10, 10, 5)).toEqual([-10, -5, 0, 5, 10])
    expect(multiples(1, 4, 5)).toEqual([])
  })
})

describe('labels', () => {
  const room = { x0: 0, y0: 0, x1: 600, y1: 400 }
  const label = fc.record({
    at: fc.record({ x: fc.integer({ min: -50, max: 650 }), y: fc.integer({ min: 60, max: 340 }) }),
    words: fc.constantFrom('36" Fits', '22" Tight', '8" overlap Clash'),
  })

  test('stay on the canvas, and a handful never cover each other', () => {
    fc.assert(
      fc.property(fc.array(label, { maxLength: 5 }), (labels) => {
        const slips = layLabels(labels, room)
        slips.forEach((a, index) => {
          expect(a.x0).toBeGreaterThanOrEqual(0)
          expect(a.x1).toBeLessThanOrEqual(600)
          for (const b of slips.slice(0, index))
            expect(a.x0 < b.x1 && b.x0 < a.x1 && a.y0 < b.y1 && b.y0 < a.y1).toBe(false)
        })
      }),
      { seed: 11, numRuns: 300 },
    )
  })

  test('from beyond the edge step beside a name at the edge', () => {
    const wish = { at: { x: 300, y: -900 }, words: '36" Fits' }
    const name = { x0: 290, y0: 0, x1: 310, y1: 15 }
    const [slip] = layLabels([wish], room, [name])
    expect(slip!.y0).toBeGreaterThanOrEqual(name.y1)
    expect(slip!.y1).toBeLessThan(60)
  })

  test('step beside a name that they would cover, and lie on it only where they must', () => {
    const words = '36" Fits'
    const wish = { at: { x: 300, y: 200 }, words }
    const name = { x0: 290, y0: 190, x1: 310, y1: 210 }
    const covers = (names: readonly (typeof name)[]) =>
      layLabels([wish], room, names).map(({ y0, y1 }) => y0 < name.y1 && name.y0 < y1)
    expect(covers([])).toEqual([true])
    expect(covers([name])).toEqual([false])
    expect(covers([{ ...name, y0: 0, y1: 400 }])).toEqual([true])
  })

  test('lie on names rather than under what covers the paper', () => {
    const wish = { at: { x: 320, y: 20 }, words: 'least' }
    const over = { x0: 200, x1: 400, y0: 0, y1: 56 }
    const [slip] = layLabels([wish], room, [{ x0: 0, x1: 400, y0: 0, y1: 400 }], [over])
    expect(slip!.y0).toBeGreaterThanOrEqual(over.y1)
  })
})

describe('names on the plan', () => {
  test('leave the size of a drain of 30 ft away where they would hide it, and then its name', () => {
    const drained = drawnParts(
      evaluate(
        bay('40 x 60 ft')
          .drain('Drain N', [
            [40, 205],
            [400, 205],
          ])
          .layout(),
      ),
    )
    const wordsAt = (pxPerInch: number) =>
      roomyWords(namesIn(drained, lens(pxPerInch)), lens(pxPerInch)).map(({ text }) => text)
    expect(wordsAt(1)).toEqual(['Drain N, 4 in drain pipe'])
    expect(wordsAt(0.25)).toEqual(['Drain N'])
    expect(wordsAt(0.1)).toEqual([])
  })

  const drawn = drawnParts(
    evaluate(
      bay('40 x 60 ft')
        .row('Row 1', [100, 100], { racks: 1 })
        .post('Post 1', [150, 640])
        .post('Post 2', [154, 640])
        .layout(),
    ),
  )
  const shown = (pxPerInch: number) =>
    roomyWords(namesIn(drawn, lens(pxPerInch)), lens(pxPerInch)).map(({ text }) => text)

  test('are left out of parts that are too small to bear one', () => {
    expect(shown(1)).toContain('Row 1')
    expect(shown(1)).not.toContain('Post 1')
  })

  test('never lie on each other: of two posts side by side one is named until there is room', () => {
    expect(shown(4)).toContain('Post 1')
    expect(shown(4)).not.toContain('Post 2')
  })
})

describe('the sheet while the view moves', () => {
  test('lies where the new view shows the same floor', () => {
    const drawn = lens(2)
    const view = zoomedAt(panned(drawn.view, 37, -12), { x: 300, y: 200 }, 1.7)
    const now = { ...drawn, view }
    const [x, y, scale] = bitmapTransform(drawn, now)
      .match(/-?[0-9.]+(?:e-?[0-9]+)?/g)!
      .map(Number)
    const px = { x: 555, y: 321 }
    const floor = toFloor(drawn.view, px)
    expect(px.x * scale! + x!).toBeCloseTo(toScreen(view, floor).x, 6)
    expect(px.y * scale! + y!).toBeCloseTo(toScreen(view, floor).y, 6)
  })

  test('lies as it was drawn where the view is the same', () => {
    expect(bitmapTransform(lens(2), { ...lens(2), view: lens(2).view })).not.toBe('')
    const one = lens(2)
    expect(bitmapTransform(one, one)).toBe('')
  })
})

describe('what is drawn over the sheet', () => {
  const layout = bay('40 x 60 ft').row('Row 1', [100, 100]).row('Row 2', [220, 100]).layout()

  test('is what a preview changed, added or took out', () => {
    expect(movedIn(layout, undefined)).toEqual([])
    expect(movedIn(layout, movePartsBy(layout, ['rack-row-2'], 10, 0))).toEqual(['rack-row-2'])
    expect(movedIn(layout, { ...layout, parts: layout.parts.slice(1) })).toEqual(['rack-row-1'])
  })

  test('leaves the rest the same objects, so that the sheet is not drawn again', () => {
    const before = drawnParts(evaluate(layout))
    const after = drawnParts(evaluate(movePartsBy(layout, ['rack-row-2'], 10, 0)))
    expect(after[0]).toBe(before[0])
    expect(after[1]).not.toBe(before[1])
  })
})
