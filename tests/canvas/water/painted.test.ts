import { describe, expect, test } from 'vitest'
import { lensOf } from '../../../src/canvas/lens'
import { legendFacts, dryTowers, stateCounts } from '../../../src/canvas/water/legendFacts'
import { paintedRows } from '../../../src/canvas/water/painted'
import { paintTowers } from '../../../src/canvas/water/paintTowers'
import { rowStateOf } from '../../../src/canvas/water/rowStates'
import { DRY } from '../../../src/canvas/water/scale'
import { towerAt, towerSpotsOf } from '../../../src/canvas/water/spots'
import { shadeColours } from '../../../src/drawing/cividis'
import { nightTheme, paperTheme } from '../../../src/drawing/theme'
import { evaluate } from '../../../src/evaluate/evaluate'
import { feet } from '../../../src/units/length'
import { writerFor } from '../../../src/units/writer'
import { bay } from '../../support/bay'
import { RecordingCanvas } from '../../support/recordingCanvas'
import { twoRows, withWater } from '../../support/wetBay'

const A = 'rack-row-1'
const B = 'rack-row-2'
const writer = writerFor('feet-inches')

/** Row A from 4.0 gph at its start down by 0.1 a station; B without a main. */
const wet = () =>
  withWater(twoRows(), [{ part: A, state: 'Drifting', flow: (station) => 4.1 - station / 10 }], {
    [B]: 'no-main',
  })

const lens = (pxPerMm: number, theme = paperTheme) =>
  lensOf({ x: 0, y: feet(60), pxPerMm }, { width: 1200, height: 900 }, theme, 'feet-inches')

describe('rows as they are painted', () => {
  test('have a shade a tower, lighter where more flows; a row without water has none', () => {
    const [a, b] = paintedRows(wet(), 'feet-inches')
    const heads = a!.spots.heads
    const shadeAt = (wanted: number) => a!.shades[heads.findIndex(({ station }) => station === wanted)]!
    expect(shadeAt(1)).toBeGreaterThan(shadeAt(4))
    expect(shadeAt(4)).toBeGreaterThan(shadeAt(8))
    expect([...b!.shades].every((shade) => shade === DRY)).toBe(true)
  })

  test('are the same arrays for as long as neither flows nor scale change, so that a drag makes few', () => {
    const evaluation = wet()
    const [first, again] = [paintedRows(evaluation, 'feet-inches'), paintedRows(evaluation, 'feet-inches')]
    expect(again[0]!.shades).toBe(first[0]!.shades)
  })

  test('leave out towers that were taken out', () => {
    const all = evaluate(
      bay('40 x 60 ft')
        .row('A', [100, 100], { racks: 1, takenOut: [0, 5] })
        .layout(),
    )
    expect(paintedRows(all, 'feet-inches')[0]!.shades).toHaveLength(30)
  })
})

describe('the painter', () => {
  const painted = (pxPerMm: number, theme = paperTheme) => {
    const canvas = new RecordingCanvas()
    paintTowers(canvas, paintedRows(wet(), 'feet-inches'), lens(pxPerMm, theme))
    return canvas
  }

  test('fills every tower of a fed row and strikes every dry one out, in one path a shade', () => {
    const canvas = painted(0.05)
    const used = canvas.fills.filter((colour) => shadeColours.includes(String(colour)))
    expect(used).toHaveLength(shadeColours.length)
    // 32 discs filled by shade, 32 dry ones in paper, and the rim round all 64.
    expect(canvas.count('arc')).toBe(32 + 32 + 64)
    expect(canvas.count('lineTo')).toBe(32)
  })

  test('draws little squares from afar, and no rim that would be all there is', () => {
    const canvas = painted(0.01)
    expect(canvas.count('arc')).toBe(0)
    expect(canvas.count('rect')).toBe(64)
  })

  test('leaves out what is out of sight', () => {
    const canvas = new RecordingCanvas()
    const elsewhere = lensOf(
      { x: feet(500), y: feet(560), pxPerMm: 0.05 },
      { width: 1200, height: 900 },
      nightTheme,
      'feet-inches',
    )
    paintTowers(canvas, paintedRows(wet(), 'feet-inches'), elsewhere)
    expect(canvas.count('arc') + canvas.count('rect')).toBe(0)
  })
})

test('the tower under the pointer is the nearest, and none is far from all', () => {
  const spots = towerSpotsOf(wet().bay.builtOf.get(A)!, null)!
  spots.heads.forEach(({ at }, index) => expect(towerAt(spots, { x: at.x + 20, y: at.y - 20 })).toBe(index))
  expect(towerAt(spots, { x: spots.box.x0 - 500, y: spots.box.y0 })).toBeUndefined()
})

describe('the legend', () => {
  test('says the ends in the unit of the reader, and where the wanted flow lies', () => {
    const facts = legendFacts('flow', wet(), 'feet-inches')!
    // 3.3 to 4.0 gph in steps of 0.2.
    expect(facts.ticks).toEqual(['3.2 gph', '3.6 gph', '4.0 gph'])
    expect(facts.marked.words).toBe('4.0 gph wanted')
    expect(facts.marked.share).toBeCloseTo(1, 6)
    expect(legendFacts('flow', wet(), 'metric')!.ticks[0]).toMatch(/ L\/h$/)
  })

  test('says so where no tower takes what is wanted', () => {
    const weak = withWater(twoRows(), [{ part: A, state: 'Starved', flow: (station) => 2.1 - station / 10 }])
    expect(legendFacts('flow', weak, 'feet-inches')!.marked).toEqual({
      share: undefined,
      words: '4.0 gph wanted, more than any tower takes',
    })
  })

  test('has nothing to show where nothing flows', () => {
    expect(legendFacts('flow', withWater(twoRows(), []), 'feet-inches')).toBeUndefined()
    expect(legendFacts('velocity', withWater(twoRows(), []), 'feet-inches')).toBeUndefined()
  })

  test('counts rows by state and towers without water', () => {
    expect(stateCounts(wet())).toEqual([{ state: 'Drifting', rows: 1 }])
    expect(dryTowers(wet(), 'feet-inches')).toBe(32)
  })
})

// By hand: (4.0 - 3.3) / 4.0 = 17.5 %.
test('a row says on the plan how it is fed', () => {
  expect(rowStateOf(wet(), A, writer)).toEqual({ state: 'Drifting', words: 'A: Drifting 17.5 %' })
  expect(rowStateOf(wet(), B, writer)).toEqual({ state: 'Starved', words: 'B: no water' })
  expect(rowStateOf(wet(), 'nobody', writer)).toBeUndefined()
})
