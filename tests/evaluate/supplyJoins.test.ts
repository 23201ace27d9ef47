import { describe, expect, test } from 'vitest'
import { derive } from '../../src/evaluate/1-derive'
import { join } from '../../src/evaluate/2-join'
import type { Layout } from '../../src/layout/schema'
import type { Join } from '../../src/model/levels'
import { bay, type Sketch } from '../support/bay'
import { nameIn } from '../support/judged'
import { inchesOf } from '../support/site'

const SUPPLY: readonly Join['kind'][] = [
  'zone-to-main',
  'zone-to-zone',
  'main-to-main',
  'pump-to-main',
  'box-to-main',
]

const joinsIn = (layout: Layout): readonly Join[] => join(derive(layout).built, layout.settings)

/** `N1: zone-to-main Main at 120`, with where it is along the main, in. */
const told = (sketch: Sketch): string[] => {
  const layout = sketch.layout()
  return joinsIn(layout)
    .filter(({ kind }) => SUPPLY.includes(kind))
    .map(({ kind, from, to, alongMm }) => {
      const onto = to === undefined ? '-' : `${nameIn(layout, to)} at ${inchesOf(alongMm)}`
      return `${nameIn(layout, from)}: ${kind} ${onto}`
    })
}

/** A pit whose pump stands at x 118, y 139: 57 - 18 in beyond its middle, towards the north. */
const PIT = { x: [100, 136], y: [43, 157] } as const
const withPit = (size = '60 x 60 ft'): Sketch => bay(size).pit('Pit', PIT)

/** Water comes into a one-rack row at its start, on its left riser, 20 in west of its centre line. */
const withRow = (sketch: Sketch, name: string, x: number, values = {}): Sketch =>
  sketch.row(name, [x, 300], { racks: 1, ...values })

describe('a pump', () => {
  test('feeds a main at its end, or in its middle where no end is near', () => {
    expect(
      told(
        withPit().main('Main', [
          [118, 150],
          [400, 150],
        ]),
      ),
    ).toEqual(['Pit: pump-to-main Main at 0'])
    // Two halves off the pump: 118 - 20 in along.
    expect(
      told(
        withPit().main('Main', [
          [20, 150],
          [400, 150],
        ]),
      ),
    ).toEqual(['Pit: pump-to-main Main at 98'])
  })

  test('feeds each main that begins or ends within 4 ft of it, at its nearer end', () => {
    const two = withPit()
      .main('East', [
        [118, 150],
        [400, 150],
      ])
      .main('West', [
        [20, 160],
        [110, 160],
      ])
    expect(told(two)).toEqual(['Pit: pump-to-main East at 0', 'Pit: pump-to-main West at 90'])
  })

  test('feeds nothing where no main is within 10 ft, and the join tells how far the nearest is', () => {
    const far = withPit().main('Main', [
      [118, 260],
      [400, 260],
    ])
    expect(told(far)).toEqual(['Pit: pump-to-main -'])
    // 260 - 139 in.
    expect(joinsIn(far.layout()).map(({ gapMm }) => inchesOf(gapMm))).toEqual([121])
  })

  test('a second pit may feed the same main at its other end', () => {
    const pair = withPit()
      .pit('Pit 2', { x: [400, 436], y: [43, 157] })
      .main('Main', [
        [118, 150],
        [418, 150],
      ])
    expect(told(pair)).toEqual(['Pit: pump-to-main Main at 0', 'Pit 2: pump-to-main Main at 300'])
  })

  test('a pit without pumps gives no water', () => {
    const dry = bay('60 x 60 ft')
      .pit('Pit', PIT, { pumps: 0 })
      .main('Main', [
        [118, 150],
        [400, 150],
      ])
    expect(told(dry)).toEqual([])
  })
})

describe('a row', () => {
  const mains = bay('60 x 60 ft')
    .main('Near', [
      [100, 280],
      [300, 280],
    ])
    .main('Far', [
      [100, 200],
      [300, 200],
    ])
    .main('Out of reach', [
      [100, 100],
      [300, 100],
    ])

  test('takes its water from the nearest main, or from the one that is chosen', () => {
    expect(told(withRow(mains, 'Row', 200))).toEqual(['Row: zone-to-main Near at 80'])
    expect(told(withRow(mains, 'Row', 200, { waterFrom: 'main-2' }))).toEqual(['Row: zone-to-main Far at 80'])
  })

  test('joins nothing where the main that is chosen is out of reach, and tells how far that one is', () => {
    const row = withRow(mains, 'Row', 200, { waterFrom: 'main-3' })
    expect(told(row)).toEqual(['Row: zone-to-main -'])
    const [zone] = joinsIn(row.layout()).filter(({ kind }) => kind === 'zone-to-main')
    expect(inchesOf(zone!.gapMm)).toBe(200)
  })

  test('falls back to the nearest where the main that was chosen is gone', () => {
    expect(told(withRow(mains, 'Row', 200, { waterFrom: 'main-9' }))).toEqual([
      'Row: zone-to-main Near at 80',
    ])
  })

  test('joins the head of a rise, not its foot, where the main passes on above', () => {
    const over = bay('60 x 60 ft').main('Main', [
      [100, 280],
      [150, 280],
      [150, 280, 84],
      [300, 280, 84],
    ])
    // 50 in on the floor, 80 in up from 4 in, and 30 in on.
    expect(told(withRow(over, 'Row', 200))).toEqual(['Row: zone-to-main Main at 160'])
  })
})

describe('a row behind another row’s valve', () => {
  const pair = (values = {}): Sketch => withRow(withRow(bay('60 x 60 ft'), 'A', 200), 'B', 260, values)

  test('takes its water from the nearest row with valves, or the one that is chosen', () => {
    const three = (values = {}) => withRow(pair(), 'C', 320, { valveSet: 'shared', ...values })
    expect(told(three()).at(-1)).toBe('C: zone-to-zone B at 0')
    expect(told(three({ waterFrom: 'rack-row-1' })).at(-1)).toBe('C: zone-to-zone A at 0')
  })

  test('never takes it from a row that has no valves, so that no two rows wait for each other', () => {
    const shared = { valveSet: 'shared' } as const
    const both = withRow(withRow(bay('60 x 60 ft'), 'A', 200, shared), 'B', 260, shared)
    expect(told(both)).toEqual(['A: zone-to-zone -', 'B: zone-to-zone -'])
    expect(told(withRow(pair(shared), 'C', 320, { ...shared, waterFrom: 'rack-row-2' })).slice(-2)).toEqual([
      'B: zone-to-zone A at 0',
      'C: zone-to-zone A at 0',
    ])
  })
})

describe('mains', () => {
  test('that end on another join it; the two ends of one place join once', () => {
    const tee = bay('60 x 60 ft')
      .main('Long', [
        [100, 100],
        [400, 100],
      ])
      .main('Branch', [
        [200, 101],
        [200, 300],
      ])
    expect(told(tee)).toEqual(['Branch: main-to-main Long at 100'])
    const onward = tee.main('On', [
      [400, 100],
      [500, 100],
    ])
    expect(told(onward)).toEqual(['Long: main-to-main On at 0', 'Branch: main-to-main Long at 100'])
  })

  test('that pass over each other are not joined', () => {
    const over = bay('60 x 60 ft')
      .main('Low', [
        [100, 100],
        [400, 100],
      ])
      .main(
        'High',
        [
          [200, 100],
          [200, 300],
        ],
        { height: 84 },
      )
    expect(told(over)).toEqual([])
  })

  test('that come round within 2 in of where they begin are one ring, fed where they close', () => {
    const ring = withPit().main('Ring', [
      [118, 150],
      [400, 150],
      [400, 400],
      [118, 400],
      [118, 151.5],
    ])
    expect(told(ring)).toEqual(['Pit: pump-to-main Ring at 0'])
    const [built] = derive(ring.layout()).built.filter(({ tubes }) =>
      tubes.some(({ role }) => role === 'main'),
    )
    const { path } = built!.tubes[0]!
    expect(path.at(-1)).toEqual(path[0])
  })
})

describe('a head box', () => {
  const box = bay('60 x 60 ft').headBox('Box', { x: [188, 212], y: [91, 109] })

  test('takes a main that fills it and gives to one that begins there', () => {
    const both = box
      .main('Fill', [
        [20, 100],
        [190, 100],
      ])
      .main('Out', [
        [210, 100],
        [500, 100],
      ])
    expect(told(both)).toEqual(['Box: box-to-main Fill at 170', 'Box: box-to-main Out at 0'])
  })

  test('gives to the nearest main that passes in reach', () => {
    expect(
      told(
        box.main('Main', [
          [20, 200],
          [500, 200],
        ]),
      ),
    ).toEqual(['Box: box-to-main Main at 180'])
  })
})

test('what another part’s change leaves as it was keeps its very joins', () => {
  const layout = withRow(withRow(bay('60 x 60 ft'), 'A', 200), 'B', 320, { valveSet: 'shared' })
    .main('Main', [
      [100, 280],
      [400, 280],
    ])
    .layout()
  const before = joinsIn(layout)
  const moved = {
    ...layout,
    // The main's far end goes a foot further: no row meets it elsewhere.
    parts: layout.parts.map((part) =>
      part.kind === 'main'
        ? { ...part, points: part.points.map((p, k) => (k === 1 ? { ...p, x: p.x + 304.8 } : p)) }
        : part,
    ),
  }
  const after = joinsIn(moved)
  const zones = (joins: readonly Join[]) => joins.filter(({ kind }) => kind.startsWith('zone'))
  expect(zones(after)).toHaveLength(2)
  zones(after).forEach((zone, index) => expect(zone).toBe(zones(before)[index]))
})
