import { describe, expect, test } from 'vitest'
import { flowChart, headChart } from '../../../src/app/drawer/rowCharts'
import { rowFigures } from '../../../src/app/drawer/rowFigures'
import { lateralFlows } from '../../../src/app/drawer/rowFlows'
import { gph } from '../../../src/units/flow'
import { inches } from '../../../src/units/length'
import { writerFor } from '../../../src/units/writer'
import { handRow } from './handRow'

const split = handRow(
  [
    {
      fedAt: [22.5],
      stations: [
        { along: 0, gph: [3.9, 3.8], head: 7 },
        { along: 15, gph: [4.1, 4], head: 7.5 },
        { along: 30, gph: [4.1, 4], head: 7.5 },
        { along: 45, gph: [3.9], head: 7 },
      ],
    },
    { fedAt: [22.5], stations: [{ along: 15, gph: [3.4], head: 7.25 }], firstLine: 3 },
  ],
  'centre-split',
)

const wanted = { targetLph: gph(4) }

describe('laterals of a row', () => {
  const [first, second] = lateralFlows(split.feed, split.water)

  test('each has its own towers, with place and flow', () => {
    expect(first?.lines).toEqual([1, 2])
    expect(first?.towers).toHaveLength(7)
    expect(first?.towers.at(-1)).toEqual({
      station: 4,
      line: 1,
      alongMm: inches(45),
      flowLph: gph(3.9),
      lowLph: gph(3.9),
      highLph: gph(3.9),
    })
    expect(second?.lines).toEqual([3])
    expect(second?.towers).toHaveLength(1)
  })

  test('heads are read over the tube ends, as in a sight tube, in order along the lateral', () => {
    const heads = first?.heads.map(({ alongMm, headMm }) => [alongMm / inches(1), headMm / inches(1)])
    expect(heads).toEqual(
      [
        [0, 7],
        [15, 7.5],
        [22.5, 8],
        [30, 7.5],
        [45, 7],
      ].map((pair) => pair.map((value) => expect.closeTo(value, 9))),
    )
    expect(first?.fedAtMm).toEqual([inches(22.5)])
  })
})

describe('charts of a row', () => {
  const laterals = lateralFlows(split.feed, split.water)
  const chart = flowChart(laterals, split.water.figures, wanted, 'feet-inches')

  test('a line each lateral, told apart by dash and mark, with every tower marked', () => {
    expect(chart.lines.map(({ name, dash }) => [name, dash])).toEqual([
      ['Lateral 1, lines 1 and 2', 'continuous'],
      ['Lateral 2, line 3', 'dashed'],
    ])
    expect(chart.lines[0]?.marks?.shape).not.toBe(chart.lines[1]?.marks?.shape)
    expect(chart.lines.flatMap(({ marks }) => marks?.points ?? [])).toHaveLength(8)
    // Two towers at a station are joined at the mean of both: (3.9 + 3.8) / 2.
    expect(chart.lines[0]?.points[0]?.y).toBeCloseTo(gph(3.85))
  })

  test('the band reaches from 10 % under to 10 % over what is wanted: 3.6 to 4.4 gph about 4', () => {
    expect(chart.bands?.[0]?.from).toBeCloseTo(gph(3.6))
    expect(chart.bands?.[0]?.to).toBeCloseTo(gph(4.4))
  })

  test('a stop reads out all towers of its station, in the units of the reader', () => {
    expect(chart.stops[1]?.words).toBe(`Station 2, 1' 3" along: line 1 4.1 gph, line 2 4.0 gph`)
    expect(chart.stops[0]?.words).toContain('line 3 3.4 gph')
    expect(flowChart(laterals, split.water.figures, wanted, 'metric').stops[1]?.words).toContain(
      '381 mm along',
    )
  })

  test('the table has a row each station and a column each line, and says where no tower hangs', () => {
    expect(chart.table.columns).toEqual(['Station', 'Along', 'Line 1', 'Line 2', 'Line 3'])
    expect(chart.table.rows).toHaveLength(4)
    expect(chart.table.rows[3]).toEqual(['4', `3' 9"`, '3.9 gph', 'no tower', 'no tower'])
  })

  test('the head chart says in sight-tube inches how far the water stands over the tube ends', () => {
    const heads = headChart(laterals, 'feet-inches')
    expect(heads.says).toBe('In a sight tube water stands from 7" to 8" over the tube ends.')
    expect(heads.posts).toEqual([{ name: 'water in', x: inches(22.5) }])
  })
})

test('a ring is called one', () => {
  const { feed, water } = handRow([{ fedAt: [0], stations: [{ along: 15, gph: [4], head: 7 }] }], 'ring')
  const [lateral] = feed.laterals
  const ring = {
    ...feed,
    laterals: [{ ...lateral!, joints: [...lateral!.joints, 0], alongMm: [...lateral!.alongMm, 0] }],
  }
  const laterals = lateralFlows(ring, water)
  expect(laterals[0]?.towers).toHaveLength(1)
  expect(flowChart(laterals, water.figures, wanted, 'metric').lines[0]?.name).toBe('Ring, line 1')
})

describe('figures of a row', () => {
  const figures = rowFigures(
    split.water,
    { tubeScatter: 0.03, outletErrorMm: 0 },
    undefined,
    writerFor('feet-inches'),
  )
  const figure = (name: RegExp) => figures.find((each) => name.test(each.name))

  // Classes from the published scales, all from memory: Merriam and Keller 1978 (DU 93 %: excellent, 90 and over); Wu and
  // Gitlin 1979 (22.7 %: not acceptable, over 20); ASAE EP458 (Us 87 %: good, 85 to 90); ASAE EP405.1 (3 %: excellent, under 5).
  test.each([
    [/^Low quarter/, '93.0 %', 'excellent', 'Merriam and Keller 1978'],
    [/^Spread/, '22.7 %', 'not acceptable', 'Wu and Gitlin 1979'],
    [/^Statistical/, '87.0 %', 'good', 'ASAE EP458'],
    [/^Scatter/, '3.0 %', 'excellent', 'ASAE EP405.1'],
  ])('%s has its class and says whose it is', (name, value, grade, source) => {
    expect(figure(name)).toMatchObject({ value, grade })
    expect(figure(name)?.note).toContain(source)
    expect(figure(name)?.note).toContain('from memory')
  })

  test('a tube near the change from smooth to churned flow is warned of', () => {
    const told = (tubeReynolds: number) =>
      rowFigures(
        { ...split.water, tubeReynolds },
        { tubeScatter: 0.03, outletErrorMm: 0 },
        undefined,
        writerFor('metric'),
      ).at(-1)?.note
    expect(told(1680)).toContain('smooth: like tubes give like flows')
    expect(told(2300)).toContain('may run smooth or churned')
    expect(told(4500)).toContain('churned')
  })

  test('what building adds is said in nine builds of ten, with what it is reckoned from', () => {
    const built = rowFigures(
      split.water,
      { tubeScatter: 0.03, outletErrorMm: inches(1 / 4) },
      {
        scenarios: 100,
        flowLph: { low: gph(3.6), high: gph(4.4) },
        lowLph: new Float64Array(0),
        highLph: new Float64Array(0),
        spread: { low: 0.24, high: 0.31 },
        lowQuarter: { low: 0.9, high: 0.92 },
      },
      writerFor('feet-inches'),
    )
    const spread = built.find(({ name }) => name === 'Spread as built')
    expect(spread?.value).toBe('24.0 % to 31.0 %')
    expect(spread?.note).toContain('1/4" of level and tubes that scatter by 3.0 %')
  })
})
