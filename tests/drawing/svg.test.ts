import { describe, expect, test } from 'vitest'
import { onPaper, type Page, type PageItem } from '../../src/drawing/page'
import { orient, papers } from '../../src/drawing/paper'
import { pageSvg } from '../../src/drawing/svg'
import { nightTheme, paperTheme } from '../../src/drawing/theme'
import type { Mark } from '../../src/model/drawing'

const pageWith = (...items: PageItem[]): Page => ({
  title: 'Floor <sheet> & "more"',
  paper: orient(papers.A4, 'landscape'),
  units: 'metric',
  items,
})

const box = (...numbers: number[]): Mark => ({
  as: 'boxes',
  pen: 'timber',
  wash: 'timber',
  boxes: Float64Array.from(numbers),
})

const text = (words: string, upright = false): Mark => ({
  as: 'text',
  pen: 'note',
  text: words,
  at: { x: 20, y: 30 },
  paperMm: 3,
  anchor: 'start',
  upright,
})

const written = (marks: readonly Mark[], item: Partial<PageItem> = {}): string =>
  pageSvg(pageWith({ marks, placement: onPaper, ...item }), paperTheme)

describe('a page as SVG', () => {
  test('is the true size of its paper', () => {
    expect(written([])).toContain('width="297mm" height="210mm" viewBox="0 0 297 210"')
  })

  test('writes a height over the floor in the reader’s units, beside its place', () => {
    // 94 in = 2387.6 mm, to the millimetre.
    const svg = written([{ as: 'height', pen: 'note', at: { x: 20, y: 30 }, heightMm: 2387.6 }])
    expect(svg).toContain('at 2388 mm</text>')
  })

  test('turns y over: the floor grows north, the sheet grows down', () => {
    expect(written([box(10, 20, 30, 50)])).toContain('d="M10 190H30V160H10Z"')
  })

  test('puts floor on paper at the scale of the item', () => {
    const svg = written([box(0, 0, 5000, 2500)], { placement: { scale: 1 / 50, xMm: 40, yMm: 60 } })
    expect(svg).toContain('d="M40 150H140V100H40Z"')
  })

  test('gives the same text for the same page, letter for letter', () => {
    const marks = [box(1, 2, 3, 4), text('Row 1')]
    expect(written(marks)).toBe(written(structuredClone(marks)))
  })

  test('escapes what people type', () => {
    const svg = written([text('4" < 6" & <b>')])
    expect(svg).toContain('4&quot; &lt; 6&quot; &amp; &lt;b&gt;')
    expect(svg).toContain('<title>Floor &lt;sheet&gt; &amp; &quot;more&quot;</title>')
  })

  test('turns upright words a quarter anticlockwise', () => {
    expect(written([text('Row 1', true)])).toContain('translate(20 180) rotate(-90)')
  })

  test('writes the length of a dimension in the units of the sheet', () => {
    const mark: Mark = {
      as: 'dimension',
      pen: 'dimension',
      from: { x: 0, y: 0 },
      to: { x: 914.4, y: 0 },
      offsetMm: 0,
      note: 'leaf to leaf',
    }
    const placement = { scale: 1 / 10, xMm: 50, yMm: 50 }
    expect(written([mark], { placement })).toContain('914 mm leaf to leaf')
    const inFeet = { ...pageWith({ marks: [mark], placement }), units: 'feet-inches' } as const
    expect(pageSvg(inFeet, paperTheme)).toContain('36&quot; leaf to leaf')
  })

  test('leaves out detail finer than a tenth of a mm on paper', () => {
    const timber = `fill="${paperTheme.washes.timber.colour}"`
    const fine: Mark = { ...box(1, 1, 2, 2), nearMm: 9 } as Mark
    expect(written([fine], { placement: { scale: 1 / 100, xMm: 0, yMm: 0 } })).not.toContain(timber)
    expect(written([fine], { placement: { scale: 1 / 80, xMm: 0, yMm: 0 } })).toContain(timber)
  })

  test('clips an item to its room', () => {
    const svg = written([box(0, 0, 9, 9)], { clip: { x0: 10, y0: 20, x1: 110, y1: 90 } })
    expect(svg).toContain('<rect x="10" y="120" width="100" height="70"/>')
    expect(svg).toContain('clip-path="url(#clip-0)"')
  })

  test('hatches over the wash', () => {
    const svg = written([{ ...box(0, 0, 9, 9), wash: 'pit' } as Mark])
    expect(svg).toContain(`fill="${paperTheme.washes.pit.colour}"`)
    const { colour, widthMm } = paperTheme.washes.pit.hatch!
    expect(svg).toContain(`stroke="${colour}" stroke-width="${widthMm}"`)
    // Patterns and clips about each shape would be printed as dots.
    expect(svg).not.toContain('<pattern')
  })

  test('takes its colours from the theme', () => {
    const page = pageWith({ marks: [box(0, 0, 9, 9)], placement: onPaper })
    expect(pageSvg(page, nightTheme)).toContain(nightTheme.pens.timber.colour)
    expect(pageSvg(page, nightTheme)).not.toContain(paperTheme.pens.timber.colour)
  })
})
