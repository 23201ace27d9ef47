import { describe, expect, test } from 'vitest'
import { compareFeeds } from '../../../src/evaluate/water/compareFeeds'
import { laidToReach } from '../../../src/evaluate/water/riserPlace'
import type { Layout } from '../../../src/layout/schema'
import { setFields } from '../../../src/layout/setFields'
import type { RackRow } from '../../../src/parts/rack-row/schema'
import { bay } from '../../support/bay'
import { drawnWater, rowOf } from '../../support/drawnWater'
import { scenarios } from '../../support/scenarios'

const rowsOf = ({ parts }: Layout): RackRow[] => parts.filter((part) => part.kind === 'rack-row')

const isJoined = (layout: Layout, row: RackRow): boolean =>
  drawnWater(layout).joins.some(({ from, to }) => from === row.id && to !== undefined)

const written = (layout: Layout, row: RackRow, values: object): Layout => {
  const edited = setFields(layout, [{ part: row.id, values: { ...values } }])
  if (!edited.ok) throw new Error(edited.sentence)
  return edited.layout
}

// In the first sample mains pass the ends of the rows only, and the middle of a row is out of their reach.
test.each(['kestrel-bend-house-2', 'old-dairy-corner'])(
  'in %s no feed offered takes the water away',
  (id) => {
    const layout = scenarios[id]!()
    const water = drawnWater(layout)
    for (const row of rowsOf(layout)
      .filter((each) => isJoined(layout, each))
      .slice(0, 2))
      for (const { values } of compareFeeds(row, water))
        expect(isJoined(written(layout, row, values), row)).toBe(true)
  },
)

describe('where the riser pipe of a split feed comes to stand', () => {
  const drawn = bay('30 x 96 ft').row('A', [100, 60])
  const split = { feed: 'centre-split' } as const
  const placeIn = (layout: Layout, values: Partial<RackRow> = split): unknown => {
    const row = rowOf(layout)
    const laid = laidToReach(row, values, drawnWater(layout))
    return laid.values.riserAt ?? row.riserAt
  }

  // One main passes the start of the row, another its middle too.
  const byEnd = drawn.main('End', [
    [80, 40],
    [120, 40],
  ])
  const byBoth = byEnd.main('Side', [
    [60, 60],
    [60, 400],
  ])

  test('by the end where the main passes', () => {
    expect(placeIn(byEnd.layout())).toBe('inlet-end')
  })

  test('by the middle where another main is as near: no header has to be laid along the row', () => {
    expect(placeIn(byBoth.layout())).toBe('middle')
  })

  test('a row that is split already keeps its place while water comes there', () => {
    const kept = bay('30 x 96 ft').row('A', [100, 60], { feed: 'centre-split', riserAt: 'inlet-end' })
    const layout = kept
      .main('Side', [
        [60, 60],
        [60, 400],
      ])
      .layout()
    expect(placeIn(layout, { feed: 'double-split' })).toBe('inlet-end')
  })

  test('with no main in reach of either place it is left where the row has it', () => {
    expect(placeIn(drawn.layout())).toBe('middle')
  })

  test('a straight feed has none to place', () => {
    const row = rowOf(drawn.layout())
    expect(laidToReach(row, { feed: 'straight' }, drawnWater(drawn.layout())).values).toEqual({
      feed: 'straight',
    })
  })
})
