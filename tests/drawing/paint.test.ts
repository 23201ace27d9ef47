import { describe, expect, test } from 'vitest'
import fc from 'fast-check'
import { paint, type CanvasLike } from '../../src/drawing/paint'
import { nightTheme, paperTheme } from '../../src/drawing/theme'
import type { View } from '../../src/drawing/view'
import type { BoxesMark, DiscsMark, Mark, PathMark, TextMark } from '../../src/model/drawing'
import { floorCanvas } from '../support/recordingCanvas'

const PX_PER_PAPER_MM = 96 / 25.4
const HEIGHT_PX = 600

const viewAt = (pxPerMm: number, more: Partial<View> = {}): View => ({
  pxPerMm,
  pxPerPaperMm: PX_PER_PAPER_MM,
  on: 'screen',
  theme: paperTheme,
  writer: { length: (mm) => `${mm} mm` },
  ...more,
})

const painted = (marks: readonly Mark[], view: View) => {
  const canvas = floorCanvas(view.pxPerMm, HEIGHT_PX)
  paint(canvas, marks, view)
  return canvas
}

const boxes = (...numbers: number[]): BoxesMark => ({
  as: 'boxes',
  pen: 'timber',
  wash: 'timber',
  boxes: Float64Array.from(numbers),
})

const discs = (...numbers: number[]): DiscsMark => ({
  as: 'discs',
  pen: 'crop',
  wash: 'crop',
  discs: Float64Array.from(numbers),
})

const run = (more: Partial<PathMark> = {}): PathMark => ({
  as: 'path',
  pen: 'drain',
  wash: 'none',
  points: Float64Array.of(0, 0, 1000, 0),
  closed: false,
  ...more,
})

const words = (more: Partial<TextMark> = {}): TextMark => ({
  as: 'text',
  pen: 'note',
  text: 'Row 1',
  at: { x: 100, y: 200 },
  paperMm: 2.5,
  anchor: 'middle',
  upright: false,
  ...more,
})

/** A 2D context of the page and of a worker fit the interface: a mistake here is a compile error. */
const fits: ((ctx: CanvasRenderingContext2D) => CanvasLike)[] = [(ctx) => ctx]
const fitsOffScreen: ((ctx: OffscreenCanvasRenderingContext2D) => CanvasLike)[] = [(ctx) => ctx]

test('a context of the page and of a worker can be painted on', () => {
  expect([...fits, ...fitsOffScreen]).toHaveLength(2)
})

describe('many like things', () => {
  test('are one path, one fill and one stroke, however many', () => {
    const many = Array.from({ length: 4000 }, (_, i) => (i % 4 < 2 ? i : i + 200))
    const canvas = painted([boxes(...many)], viewAt(0.1))
    expect(canvas.count('rect')).toBe(1000)
    expect(canvas.count('beginPath')).toBe(1)
    expect(canvas.count('fill')).toBe(1)
    expect(canvas.count('stroke')).toBe(1)
  })

  test('discs are arcs where a curve shows and little squares of the same reach where none does', () => {
    expect(painted([discs(0, 0, 50)], viewAt(0.1)).count('arc')).toBe(1)
    const small = painted([discs(100, 100, 50)], viewAt(0.02))
    expect(small.count('arc')).toBe(0)
    const xs = small.points.map(([x]) => x)
    expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo(100 * 0.02)
  })

  test('have no outline where it would be all that shows', () => {
    expect(painted([boxes(0, 0, 1000, 38)], viewAt(0.1)).count('stroke')).toBe(0)
    expect(painted([boxes(0, 0, 1000, 50)], viewAt(0.1)).count('stroke')).toBe(1)
  })

  test('keep their outline where there is no wash to see them by', () => {
    expect(painted([{ ...boxes(0, 0, 10, 10), wash: 'none' }], viewAt(0.1)).count('stroke')).toBe(1)
  })

  test('outside what can be seen are left out', () => {
    const within = { x0: 0, y0: 0, x1: 1000, y1: 1000 }
    const canvas = painted(
      [boxes(10, 10, 60, 60, 2000, 0, 2100, 50), discs(-500, 0, 20)],
      viewAt(0.1, { within }),
    )
    expect(canvas.count('rect')).toBe(1)
    expect(canvas.count('arc')).toBe(0)
  })
})

describe('detail', () => {
  test('is left out from afar and drawn from near: one pixel on a screen', () => {
    const mark = { ...boxes(0, 0, 50, 50), nearMm: 20 }
    expect(painted([mark], viewAt(1 / 21)).calls).toHaveLength(0)
    expect(painted([mark], viewAt(1 / 19)).count('fill')).toBe(1)
  })

  test('on paper shows from a tenth of a mm', () => {
    const onPaper = { on: 'paper', pxPerPaperMm: 8 } as const
    const mark = { ...boxes(0, 0, 50, 50), nearMm: 10 }
    expect(painted([mark], viewAt(8 / 99, onPaper)).count('fill')).toBe(1)
    expect(painted([mark], viewAt(8 / 101, onPaper)).count('fill')).toBe(0)
  })
})

describe('pens and washes', () => {
  test('a line is never thinner than a pixel, and its dashes are of the pen, in px', () => {
    const [stroke] = painted([run({ pen: 'grid' })], viewAt(0.01)).strokes
    expect(stroke?.px).toBeCloseTo(1)
    const [drain] = painted([run()], viewAt(0.01)).strokes
    expect(drain?.dash).toEqual(
      paperTheme.pens.drain.dashMm.map((mm) => expect.closeTo(mm * PX_PER_PAPER_MM)),
    )
  })

  test('a pen keeps its width at every zoom', () => {
    for (const pxPerMm of [0.02, 0.2, 2])
      expect(painted([run({ pen: 'wall' })], viewAt(pxPerMm)).strokes[0]?.px).toBeCloseTo(
        0.7 * PX_PER_PAPER_MM,
      )
  })

  test('the theme gives the colours', () => {
    for (const theme of [paperTheme, nightTheme]) {
      const canvas = painted([boxes(0, 0, 100, 100)], viewAt(1, { theme }))
      expect(canvas.fills).toEqual([theme.washes.timber.colour])
      expect(canvas.strokes[0]?.colour).toBe(theme.pens.timber.colour)
    }
  })

  test('no pen and no wash write nothing', () => {
    const canvas = painted([run({ pen: 'none' }), words({ pen: 'none' })], viewAt(1))
    expect([...canvas.fills, ...canvas.strokes, ...canvas.written]).toEqual([])
  })

  test('a hatch stays within its shape and leaves no clip behind', () => {
    const shape = run({
      pen: 'keep-clear',
      wash: 'keep-clear',
      closed: true,
      points: Float64Array.of(0, 0, 900, 0, 900, 900, 0, 900),
    })
    const { calls } = painted([shape], viewAt(0.2))
    expect(calls.indexOf('clip')).toBeGreaterThan(calls.indexOf('save'))
    expect(calls.lastIndexOf('restore')).toBeGreaterThan(calls.indexOf('clip'))
    expect(calls.filter((c) => c === 'save')).toHaveLength(calls.filter((c) => c === 'restore').length)
  })
})

describe('arrows', () => {
  test('point the way the run goes', () => {
    const [, , tip] = painted([run({ arrows: 'end' })], viewAt(0.2)).points
    expect(tip?.[0]).toBeCloseTo(200)
    expect(tip?.[1]).toBeCloseTo(HEIGHT_PX)
  })
})

describe('words', () => {
  test('are centred on their place, to the px', () => {
    const [row] = painted([words()], viewAt(0.5)).written
    expect(row?.x).toBeCloseTo(50)
    expect(Math.abs(row!.y - (HEIGHT_PX - 100))).toBeLessThan(row!.px / 2)
    expect(row?.anchor).toBe('center')
  })

  test('are at least 12 px on a screen, and true to size on paper', () => {
    expect(painted([words({ paperMm: 2 })], viewAt(0.001)).written[0]?.px).toBeCloseTo(12)
    const paper = painted([words({ paperMm: 2 })], viewAt(0.1, { on: 'paper', pxPerPaperMm: 4 }))
    expect(paper.written[0]?.px).toBeCloseTo(8)
  })

  test('upright words read from the right, from the foot up', () => {
    const [row] = painted([words({ upright: true })], viewAt(0.3)).written
    expect(row?.along[0]).toBeCloseTo(0)
    expect(row?.along[1]).toBeCloseTo(-1)
  })

  test('are never mirrored nor upside down, whichever way a dimension runs (seed 11)', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -4000, max: 4000 }),
        fc.integer({ min: -4000, max: 4000 }),
        fc.integer({ min: -600, max: 600 }),
        fc.constantFrom(0.02, 0.1, 0.5),
        (x, y, offsetMm, pxPerMm) => {
          fc.pre(x !== 0 || y !== 0)
          const mark: Mark = {
            as: 'dimension',
            pen: 'dimension',
            from: { x: 0, y: 0 },
            to: { x, y },
            offsetMm,
            note: 'leaf to leaf',
          }
          const { written } = painted([mark], viewAt(pxPerMm))
          expect(written.length).toBeGreaterThan(0)
          for (const { along, up } of written) {
            // The tops of letters lie a quarter turn anticlockwise of the reading direction; on a surface y runs down.
            expect(along[0] * up[1] - along[1] * up[0]).toBeCloseTo(-1)
            expect(along[0] > -1e-6).toBe(true)
          }
        },
      ),
      { seed: 11 },
    )
  })
})
