import { describe, expect, test } from 'vitest'
import { onPaper, type Page } from '../../src/drawing/page'
import { orient, papers } from '../../src/drawing/paper'
import { paintPage, rasterSize } from '../../src/drawing/raster'
import { paperTheme } from '../../src/drawing/theme'
import { RecordingCanvas } from '../support/recordingCanvas'

const page = (name: keyof typeof papers, items: Page['items'] = []): Page => ({
  title: 'Floor sheet',
  paper: orient(papers[name], 'landscape'),
  units: 'metric',
  items,
})

describe('the size of a picture', () => {
  test('letter at 200 dots an inch is 2200 x 1700 px', () => {
    expect(rasterSize(page('letter'), 200)).toEqual({ ok: true, widthPx: 2200, heightPx: 1700 })
  })

  test('A3 at 200 dots an inch is 3307 x 2339 px', () => {
    // 420 mm = 16.535 in, 297 mm = 11.693 in.
    expect(rasterSize(page('A3'), 200)).toEqual({ ok: true, widthPx: 3307, heightPx: 2339 })
  })

  test('what no canvas holds is refused with a sentence that names a resolution that works', () => {
    const size = rasterSize(page('tabloid'), 1200)
    expect(size.ok).toBe(false)
    if (size.ok) return
    const most = Number(/Take (\d+) dots/.exec(size.sentence)?.[1])
    expect(rasterSize(page('tabloid'), most).ok).toBe(true)
    expect(rasterSize(page('tabloid'), most + 2).ok).toBe(false)
  })

  test.each([0, -5, Number.NaN, 0.01])('%d dots an inch is refused', (dpi) => {
    expect(rasterSize(page('A4'), dpi).ok).toBe(false)
  })
})

describe('a page on a canvas', () => {
  const item: Page['items'][number] = {
    marks: [
      { as: 'boxes', pen: 'none', wash: 'timber', boxes: Float64Array.of(0, 0, 5000, 2500) },
      {
        as: 'text',
        pen: 'note',
        text: 'Row 1',
        at: { x: 0, y: 0 },
        paperMm: 2.5,
        anchor: 'start',
        upright: false,
      },
    ],
    placement: { scale: 1 / 50, xMm: 40, yMm: 60 },
    clip: { x0: 10, y0: 10, x1: 200, y1: 180 },
  }
  const dpi = 254
  const canvas = new RecordingCanvas()
  paintPage(canvas, page('A4', [item]), dpi, paperTheme)

  test('covers the whole sheet first, so that no picture is see-through', () => {
    expect(canvas.fills[0]).toBe(paperTheme.sheet)
    expect(canvas.points.slice(0, 2)).toEqual([
      [0, 0],
      [2970, 2100],
    ])
  })

  test('puts floor where the page says, 10 px a mm, the south at the foot', () => {
    const corners = canvas.points.slice(-2).map(([x, y]) => [Math.round(x), Math.round(y)])
    expect(corners).toEqual([
      [400, 1500],
      [1400, 1000],
    ])
  })

  test('writes letters of their true size and the right way round', () => {
    const [row] = canvas.written
    expect(row?.px).toBeCloseTo(25)
    expect(row?.along[0]).toBeCloseTo(1)
    expect(row?.up[1]).toBeCloseTo(-1)
  })

  test('leaves the canvas as it found it', () => {
    expect(canvas.matrix).toEqual([1, 0, 0, 1, 0, 0])
    expect(canvas.count('save')).toBe(canvas.count('restore'))
  })

  test('an item without a clip is not clipped', () => {
    const plain = new RecordingCanvas()
    paintPage(plain, page('A4', [{ marks: item.marks, placement: onPaper }]), dpi, paperTheme)
    expect(plain.count('clip')).toBe(0)
  })
})
