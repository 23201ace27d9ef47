import DxfParser from 'dxf-parser'
import type { IDimensionEntity, ICircleEntity, IEntity, ILwpolylineEntity, ITextEntity } from 'dxf-parser'
import { describe, expect, test } from 'vitest'
import { isDrawing, pageDxf } from '../../../src/app/files/sheetDxf'
import { dimensionLength } from '../../../src/drawing/dimension'
import type { Page } from '../../../src/drawing/page'
import { orient, papers } from '../../../src/drawing/paper'
import { evaluate } from '../../../src/evaluate/evaluate'
import type { Mark } from '../../../src/model/drawing'
import { assemblyCard } from '../../../src/sheets/assembly/assemblyCard'
import { drillStick } from '../../../src/sheets/drill/drillStick'
import { floorPage } from '../../../src/sheets/floor/floorSheet'
import { pagesOf } from '../../../src/sheets/pagesOf'
import type { Sheet } from '../../../src/sheets/sheet'
import { inches, toInches, type Units } from '../../../src/units/length'
import { scenarios } from '../../support/scenarios'

/** The independent reader; a file that it does not take throws. */
const read = (text: string) => {
  const drawing = new DxfParser().parseSync(text)
  if (!drawing) throw new Error('not a DXF file')
  return drawing
}

const ofType = <T extends IEntity>(drawing: ReturnType<typeof read>, type: string): T[] =>
  drawing.entities.filter((entity) => entity.type === type) as T[]

const floorOf = (name: string, units: Units): Page =>
  floorPage(evaluate(scenarios[name]!()), {
    paper: units === 'metric' ? 'A3' : 'tabloid',
    orientation: 'auto',
    scale: 'fit',
    units,
    dateText: '2027-05-01',
    issue: '1',
  })

/** A page with one drawing at 1:10 whose floor origin lies 30 mm right of and 40 mm over the corner of the paper. */
const tenth = (...marks: readonly Mark[]): Page => ({
  title: 'Test',
  paper: orient(papers.A4, 'portrait'),
  units: 'metric',
  items: [
    { marks, placement: { scale: 0.1, xMm: 30, yMm: 40 } },
    {
      marks: [
        {
          as: 'text',
          pen: 'note',
          text: 'Title',
          at: { x: 10, y: 10 },
          paperMm: 4,
          anchor: 'start',
          upright: false,
        },
      ],
      placement: { scale: 1, xMm: 0, yMm: 0 },
    },
  ],
})

const square = (pen: 'wall' | 'drain', side: number): Mark => ({
  as: 'path',
  pen,
  wash: 'none',
  points: Float64Array.of(0, 0, side, 0, side, side, 0, side),
  closed: true,
})

describe('a drawing for CAD', () => {
  test('has its true size in the units asked for, and says which', () => {
    const inMm = read(pageDxf(tenth(square('wall', 1000)), 'metric'))
    // AutoCAD DXF reference, $INSUNITS: 1 inches, 4 millimeters.
    expect(inMm.header['$INSUNITS']).toBe(4)
    expect(ofType<ILwpolylineEntity>(inMm, 'LWPOLYLINE')[0]!.vertices[2]).toMatchObject({ x: 1000, y: 1000 })
    const inInches = read(pageDxf(tenth(square('wall', inches(40))), 'feet-inches'))
    expect(inInches.header['$INSUNITS']).toBe(1)
    expect(ofType<ILwpolylineEntity>(inInches, 'LWPOLYLINE')[0]!.vertices[2]).toMatchObject({ x: 40, y: 40 })
  })

  test('has closed shapes as closed polylines on the layer of what they are of, each once', () => {
    const drawing = read(
      pageDxf(tenth(square('wall', 500), square('wall', 500), square('drain', 500)), 'metric'),
    )
    const shapes = ofType<ILwpolylineEntity>(drawing, 'LWPOLYLINE')
    expect(shapes.map(({ layer, shape }) => [layer, shape])).toEqual([
      ['WALL', true],
      ['DRAIN', true],
    ])
  })

  test('has discs as circles and boxes as closed polylines', () => {
    const drawing = read(
      pageDxf(
        tenth(
          { as: 'discs', pen: 'crop', wash: 'crop', discs: Float64Array.of(100, 200, 50, 300, 200, 60) },
          { as: 'boxes', pen: 'timber', wash: 'timber', boxes: Float64Array.of(0, 0, 38, 89) },
        ),
        'metric',
      ),
    )
    const circles = ofType<ICircleEntity>(drawing, 'CIRCLE')
    expect(circles.map(({ layer, center, radius }) => [layer, center.x, center.y, radius])).toEqual([
      ['CROP', 100, 200, 50],
      ['CROP', 300, 200, 60],
    ])
    const [box] = ofType<ILwpolylineEntity>(drawing, 'LWPOLYLINE')
    expect(box!.layer).toBe('TIMBER')
    expect(box!.vertices.map(({ x, y }) => [x, y])).toEqual([
      [0, 0],
      [38, 0],
      [38, 89],
      [0, 89],
    ])
  })

  test('has words turned and as high as on paper, times the scale; in CAD the height is that of capitals', () => {
    const drawing = read(
      pageDxf(
        tenth({
          as: 'text',
          pen: 'note',
          text: 'North door',
          at: { x: 500, y: 600 },
          paperMm: 2.5,
          anchor: 'middle',
          upright: true,
        }),
        'metric',
      ),
    )
    const words = ofType<ITextEntity>(drawing, 'TEXT').find(({ text }) => text === 'North door')!
    // 2.5 mm letters have capitals of 0.72 x 2.5 = 1.8 mm, and at 1:10 that is 18 mm.
    expect(words.textHeight).toBeCloseTo(18, 6)
    expect(words.rotation).toBe(90)
    expect(words.layer).toBe('NOTE')
    expect(words.endPoint).toMatchObject({ x: 500, y: 600 })
  })

  test('has the rest of the page round it, at the size of the drawing, on a layer that can be switched off', () => {
    const drawing = read(pageDxf(tenth(square('wall', 1000)), 'metric'))
    const title = ofType<ITextEntity>(drawing, 'TEXT').find(({ text }) => text === 'Title')!
    // 10 mm from the corner of the paper; the floor's origin is at 30, 40: (10 - 30) x 10 and (10 - 40) x 10.
    expect(title.endPoint).toMatchObject({ x: -200, y: -300 })
    expect(title.layer).toBe('SHEET')
  })

  test('has dimensions that CAD knows for such, aligned, with the measured value and the words of the paper', () => {
    const mark: Mark = {
      as: 'dimension',
      pen: 'dimension',
      from: { x: 0, y: 0 },
      to: { x: 300, y: 400 },
      offsetMm: 100,
      note: ' corner to corner',
    }
    const drawing = read(pageDxf(tenth(square('wall', 1000), mark), 'metric'))
    const [dimension] = ofType<IDimensionEntity>(drawing, 'DIMENSION')
    // 3-4-5: the offset is to the left of the way there, (-4, 3) / 5 x 100.
    expect(dimension).toMatchObject({
      dimensionType: 1,
      layer: 'DIMENSION',
      actualMeasurement: 500,
      text: '500 mm corner to corner',
      linearOrAngularPoint1: { x: 0, y: 0 },
      linearOrAngularPoint2: { x: 300, y: 400 },
      anchorPoint: { x: 220, y: 460 },
    })
    expect(drawing.blocks[dimension!.block]?.entities.length).toBeGreaterThan(3)
  })

  test('has the line types of the pens, their dashes as long as printed', () => {
    const drawing = read(pageDxf(tenth(square('drain', 1000)), 'metric'))
    const layers = drawing.tables.layer.layers
    expect(Object.keys(layers)).toEqual(
      expect.arrayContaining([
        'WALL',
        'TIMBER',
        'STEEL',
        'TROUGH',
        'DRAIN',
        'WATER',
        'CROP',
        'DIMENSION',
        'NOTE',
        'HIDDEN',
        'CENTRE',
        'SHEET',
      ]),
    )
    // ISO 128-2: dash 12 d, gap 3 d, of a pen of 0.25 mm; ten times that at 1:10.
    expect(drawing.tables.lineType.lineTypes['DRAIN']?.pattern).toEqual([30, -7.5])
  })

  test('takes words that would break its lines or be obeyed', () => {
    const hostile = 'A\n  0\nEOF %%u 50^J \\U+0041 “é” 🌱'
    const page = tenth(square('wall', 10), {
      as: 'text',
      pen: 'note',
      text: hostile,
      at: { x: 0, y: 0 },
      paperMm: 2,
      anchor: 'start',
      upright: false,
    })
    const texts = ofType<ITextEntity>(read(pageDxf(page, 'metric')), 'TEXT').map(({ text }) => text)
    expect(texts).toEqual(['A   0 EOF % %u 50^ J /U+0041 “é” 🌱', 'Title'])
  })

  test('is the same text whenever it is written', () => {
    const page = floorOf('lintel-lane-lean-to', 'feet-inches')
    expect(pageDxf(page, 'feet-inches')).toBe(pageDxf(page, 'feet-inches'))
  })

  test('is offered of pages with something to scale, and of no others', () => {
    expect(isDrawing(floorOf('lintel-lane-lean-to', 'metric'))).toBe(true)
    expect(isDrawing({ ...tenth(), items: tenth().items.slice(1) })).toBe(false)
  })
})

/** The sample's pages of a sheet that have something to be measured. */
const drawnPages = (sheet: Sheet): readonly Page[] =>
  pagesOf(
    sheet,
    { now: evaluate(scenarios['kestrel-bend-house-2']!()), issued: undefined },
    {
      paper: 'letter',
      orientation: 'auto',
      scale: 'fit',
      units: 'feet-inches',
      dateText: '2027-05-01',
      issue: '1',
    },
  ).filter(isDrawing)

/** Longest side of what is drawn on a layer, in. */
const longestOn = (page: Page, layer: string): number =>
  Math.max(
    ...ofType<ILwpolylineEntity>(read(pageDxf(page, 'feet-inches')), 'LWPOLYLINE')
      .filter((line) => line.layer === layer)
      .map(
        ({ vertices }) => Math.max(...vertices.map(({ y }) => y)) - Math.min(...vertices.map(({ y }) => y)),
      ),
  )

// The sample's riser: half of a 12 ft board less half an 1/8 in kerf, 72 - 1/16 = 71-15/16 in (worked example of the trade notes).
test('a rack of the assembly card, drawn in mm of paper, has its true size in CAD', () => {
  const [side] = drawnPages(assemblyCard)
  expect(longestOn(side!, 'TIMBER')).toBeCloseTo(71.9375, 3)
})

test('the drill strip is offered at full size', () => {
  const pages = drawnPages(drillStick)
  expect(pages.length).toBeGreaterThan(0)
  for (const page of pages) expect(read(pageDxf(page, 'feet-inches')).entities.length).toBeGreaterThan(10)
})

describe.each(Object.keys(scenarios))('the floor sheet of %s in CAD', (name) => {
  const layout = scenarios[name]!()
  const xs = layout.house.outline.map(({ x }) => x)
  const ys = layout.house.outline.map(({ y }) => y)

  test.each(['feet-inches', 'metric'] as const)('in %s: its walls reach as far as the house', (units) => {
    const inUnit = (mm: number) => (units === 'metric' ? mm : toInches(mm))
    const drawing = read(pageDxf(floorOf(name, units), units))
    const walls = ofType<ILwpolylineEntity>(drawing, 'LWPOLYLINE').filter(({ layer }) => layer === 'WALL')
    const corners = walls.flatMap(({ vertices }) => vertices)
    const reach = [
      Math.min(...corners.map(({ x }) => x)),
      Math.min(...corners.map(({ y }) => y)),
      Math.max(...corners.map(({ x }) => x)),
      Math.max(...corners.map(({ y }) => y)),
    ]
    const house = [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)].map(inUnit)
    for (const [index, side] of house.entries()) expect(Math.abs(reach[index]! - side)).toBeLessThan(0.01)
  })

  test('its dimensions are as long as those of the page, and lie where they measure', () => {
    const page = floorOf(name, 'feet-inches')
    const wanted = page.items
      .flatMap(({ marks }) => marks)
      .flatMap((mark) => (mark.as === 'dimension' ? [toInches(dimensionLength(mark))] : []))
      .filter((length) => length > 0)
    const drawn = ofType<IDimensionEntity>(read(pageDxf(page, 'feet-inches')), 'DIMENSION')
    expect(drawn.length).toBe(wanted.length)
    for (const [index, each] of drawn.entries()) {
      const { linearOrAngularPoint1: from, linearOrAngularPoint2: to } = each
      expect(each.actualMeasurement).toBeCloseTo(wanted[index]!, 5)
      expect(Math.hypot(to.x - from.x, to.y - from.y)).toBeCloseTo(wanted[index]!, 4)
    }
  })
})
