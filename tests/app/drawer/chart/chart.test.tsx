import { renderToStaticMarkup } from 'react-dom/server'
import { describe, expect, test } from 'vitest'
import { Chart } from '../../../../src/app/drawer/chart/Chart'
import type { ChartData } from '../../../../src/app/drawer/chart/chartData'
import { nearestStop, steppedStop } from '../../../../src/app/drawer/chart/cursor'
import {
  alongFloor,
  pumpHead,
  sightTube,
  totalFlow,
  towerFlow,
} from '../../../../src/app/drawer/chart/measures'
import { plotOf } from '../../../../src/app/drawer/chart/plot'
import { gph, gpm } from '../../../../src/units/flow'
import { feet, inches } from '../../../../src/units/length'

const units = 'feet-inches'

const data: ChartData = {
  title: 'Flow at each tower',
  says: 'Least 3.4 gph.',
  x: { name: 'Along the row', measure: alongFloor(units), holds: [0] },
  y: { name: 'Flow', measure: towerFlow(units), holds: [gph(3), gph(5)] },
  lines: [
    {
      name: 'Lateral 1',
      dash: 'continuous',
      ink: 'water',
      points: [
        { x: 0, y: gph(4.4) },
        { x: feet(28), y: gph(3.4) },
      ],
      marks: { shape: 'ring', points: [{ x: 0, y: gph(4.4) }] },
    },
    { name: 'Lateral 2', dash: 'dashed', ink: 'water', points: [{ x: 0, y: gph(4) }] },
  ],
  bands: [{ name: 'within 10 %', from: gph(3.6), to: gph(4.4) }],
  levels: [{ name: '4.0 gph wanted', y: gph(4), dash: 'dash-dot', side: 'above' }],
  posts: [{ name: 'water in', x: feet(14) }],
  flags: [{ words: 'least', x: feet(28), y: gph(3.4), ink: 'ink', side: 'below' }],
  stops: [
    { x: 0, words: 'Station 1' },
    { x: feet(28), words: 'Station 24' },
  ],
  table: { columns: ['Station', 'Line 1'], rows: [['1', '4.4 gph']] },
}

describe('a plot', () => {
  const plot = plotOf(data, { width: 500, height: 200 })

  test('ends on round numbers of the reader, and holds all that is drawn', () => {
    expect([plot.xTicks.from, plot.xTicks.to]).toEqual([0, 30])
    expect([plot.yTicks.from, plot.yTicks.to]).toEqual([3, 5])
    expect(plot.toX(feet(30))).toBeCloseTo(plot.right)
    expect(plot.toY(gph(3))).toBeCloseTo(plot.bottom)
    expect(plot.toY(gph(5))).toBeCloseTo(plot.top)
  })

  test('the same chart in metric has metric numbers at the same places', () => {
    const metric = plotOf(
      {
        ...data,
        x: { ...data.x, measure: alongFloor('metric') },
        y: { ...data.y, measure: towerFlow('metric') },
      },
      { width: 500, height: 200 },
    )
    // 28 ft are 8.53 m, and 5 gph are 18.9 L/h.
    expect([metric.xTicks.from, metric.xTicks.to]).toEqual([0, 10])
    expect(metric.yTicks.to).toBeGreaterThanOrEqual(18.9)
  })

  test('what is not a number is left out, and nothing at all still has axes', () => {
    const empty = {
      ...data,
      lines: [{ ...data.lines[0]!, points: [{ x: NaN, y: NaN }] }],
      flags: [],
      bands: [],
      levels: [],
      posts: [],
    }
    const { xTicks, yTicks } = plotOf(
      { ...empty, x: { ...data.x, holds: [] }, y: { ...data.y, holds: [] } },
      { width: 9, height: 9 },
    )
    expect(xTicks.to).toBeGreaterThan(xTicks.from)
    expect(yTicks.to).toBeGreaterThan(yTicks.from)
  })
})

test('axes have the units that their readers read', () => {
  const signs = (of: typeof towerFlow) => [of('feet-inches').sign, of('metric').sign]
  expect([towerFlow, totalFlow, sightTube, pumpHead].map(signs)).toEqual([
    ['gph', 'L/h'],
    ['gpm', 'L/min'],
    ['in', 'mm'],
    ['ft', 'm'],
  ])
  // 12 in of water are a foot; 32 gpm are 1,920 gph.
  expect(pumpHead(units).toReader(inches(12))).toBeCloseTo(1)
  expect(towerFlow(units).toReader(gpm(32))).toBeCloseTo(1920)
})

describe('the read-out', () => {
  test('stops at what lies nearest to the pointer', () => {
    const toX = (value: number) => value / 10
    expect(nearestStop(data.stops, 1, toX)).toBe(0)
    expect(nearestStop(data.stops, feet(20) / 10, toX)).toBe(1)
    expect(nearestStop([], 1, toX)).toBeUndefined()
  })

  test('goes along by arrow keys and stays within its ends', () => {
    expect(steppedStop('ArrowRight', undefined, 24)).toBe(0)
    expect(steppedStop('ArrowRight', 3, 24)).toBe(4)
    expect(steppedStop('ArrowRight', 23, 24)).toBe(23)
    expect(steppedStop('ArrowLeft', 0, 24)).toBe(0)
    expect(steppedStop('PageUp', 3, 24)).toBe(8)
    expect(steppedStop('End', 3, 24)).toBe(23)
    expect(steppedStop('Home', 3, 24)).toBe(0)
    expect(steppedStop('a', 3, 24)).toBeUndefined()
    expect(steppedStop('End', 3, 0)).toBeUndefined()
  })
})

describe('a chart on the page', () => {
  const page = renderToStaticMarkup(<Chart data={data} />)

  test('has the unit of the reader in the name of each axis', () => {
    expect(page).toContain('Flow, gph')
    expect(page).toContain('Along the row, ft')
  })

  test('says to a screen reader what it shows, and offers its table', () => {
    expect(page).toContain('aria-label="Flow at each tower. Least 3.4 gph."')
    expect(page).toContain('Show as table')
  })

  test('tells lines apart by dash as well as by name, and bands by name', () => {
    expect(page).toContain('chart-continuous')
    expect(page).toContain('chart-dashed')
    expect(page).toContain('within 10 %')
  })
})
