import { describe, expect, test } from 'vitest'
import { waterOf } from '../../../src/evaluate/water/waterOf'
import type { Water } from '../../../src/model/water'
import { gpm } from '../../../src/units/flow'
import { inches, toInches } from '../../../src/units/length'
import { CURVE, type RowSketch, waterBay, type WaterSketch } from '../../support/waterBay'

const along40ft = (sketch: WaterSketch) =>
  sketch.main('M', [
    [0, 0],
    [480, 0],
  ])

const threeRows = along40ft(waterBay().pit('P'))
  .row('A', { along: 120 })
  .row('B', { along: 300 })
  .row('C', { along: 480, kind: 'centre-split' })

const towersLph = ({ rows }: Water): number => {
  let sum = 0
  for (const { tubeLph } of rows.values()) for (const flow of tubeLph) sum += flow
  return sum
}

const meanOf = (water: Water, row: string): number => water.rows.get(row)!.figures.meanLph

describe('water is neither made nor lost', () => {
  test('what the pump gives is what the towers get and what the bypass lets back', () => {
    const bay = along40ft(waterBay().pit('P', { bypass: { boreMm: inches(1), lossK: 300 } })).row('A')
    const water = waterOf(bay.inputs())
    const pump = water.pumps.get('P')!
    expect(pump.bypassLph).toBeGreaterThan(100)
    expect(pump.flowLph).toBeCloseTo(towersLph(water) + pump.bypassLph, 3)
    expect(water.totalLph).toBeCloseTo(towersLph(water), 6)
  })

  test('each leg of the main carries what is still to come, and no head rises along it', () => {
    const water = waterOf(threeRows.inputs())
    const { legs, points } = water.mains.get('M')!
    const [a, b, c] = ['A', 'B', 'C'].map((row) => water.zones.get(row)!.flowLph)
    expect(legs.map(({ flowLph }) => flowLph)).toEqual([
      expect.closeTo(a! + b! + c!, 2),
      expect.closeTo(b! + c!, 2),
      expect.closeTo(c!, 2),
    ])
    expect(points.map(({ meets }) => meets)).toEqual(['P', 'A', 'B', 'C'])
    points.slice(1).forEach(({ headMm }, i) => expect(headMm).toBeLessThan(points[i]!.headMm))
  })

  test('a row behind the valve of another is one zone with it', () => {
    const bay = along40ft(waterBay().pit('P')).row('A').row('B', { behind: 'A' })
    const water = waterOf(bay.inputs())
    expect(water.zones.get('A')!.rows).toEqual(['A', 'B'])
    expect(water.rows.get('B')!.zone).toBe('A')
    expect(water.zones.size).toBe(1)
    const both = water.rows.get('A')!.totalLph + water.rows.get('B')!.totalLph
    expect(water.zones.get('A')!.flowLph).toBeCloseTo(both, 6)
    expect(water.pumps.get('P')!.flowLph).toBeCloseTo(both, 2)
  })
})

describe('a bay that is the same from both ends', () => {
  test('gives both its rows the same', () => {
    const bay = along40ft(waterBay().pit('P', { along: 240, at: [240, 0] }))
      .row('A', { along: 60 })
      .row('B', { along: 420 })
    const water = waterOf(bay.inputs())
    expect(meanOf(water, 'A')).toBeCloseTo(meanOf(water, 'B'), 4)
    const [out, back] = water.mains.get('M')!.legs.slice(1, 3)
    expect(out!.flowLph).toBeCloseTo(-back!.flowLph, 3)
  })

  test('a ring main sends half its water either way', () => {
    const bay = waterBay()
      .pit('P')
      .main('M', [
        [0, 0],
        [240, 0],
        [240, 240],
        [0, 240],
        [0, 0],
      ])
      .row('A', { along: 480 })
    const water = waterOf(bay.inputs())
    const [there] = water.mains.get('M')!.legs
    const back = water.mains.get('M')!.legs.at(-1)
    expect(water.rows.get('A')!.totalLph).toBeGreaterThan(100)
    expect(there!.flowLph).toBeCloseTo(water.totalLph / 2, 0)
    expect(back!.flowLph).toBeCloseTo(-water.totalLph / 2, 0)
  })

  test('two mains on one pump share alike, and a branch hangs on the main that it ends on', () => {
    const bay = waterBay()
      .pit('P')
      .main('M', [
        [0, 0],
        [240, 0],
      ])
      .main('N', [
        [240, 0],
        [240, 240],
      ])
      .joined('N', [240, 0], 'M', 240)
      .row('A', { main: 'N', along: 240 })
    const water = waterOf(bay.inputs())
    expect(water.mains.get('N')!.legs.at(-1)!.flowLph).toBeCloseTo(water.totalLph, 2)
    expect(water.mains.get('M')!.legs[0]!.flowLph).toBeCloseTo(water.totalLph, 2)
  })
})

describe('rows that stay dry', () => {
  test('a shut one is said to be shut, and the others rise', () => {
    const shut = waterOf(threeRows.inputs(), { valves: new Map([['B', false]]) })
    const open = waterOf(threeRows.inputs())
    expect(shut.dry).toEqual(new Map([['B', 'shut']]))
    expect(shut.rows.has('B')).toBe(false)
    expect(shut.zones.get('B')).toMatchObject({ isOpen: false, flowLph: 0, valveLossMm: 0 })
    expect(meanOf(shut, 'A')).toBeGreaterThan(meanOf(open, 'A'))
    expect(shut.fault).toBeUndefined()
  })

  test('one that joins nothing, and one whose main no pump reaches', () => {
    const bay = along40ft(waterBay().pit('P'))
      .main('N', [
        [0, 900],
        [480, 900],
      ])
      .row('A')
      .row('B', { main: 'N' })
    const { joins, ...rest } = bay.row('C').inputs()
    const parted = joins.map((join) => (join.from === 'C' ? { ...join, to: undefined } : join))
    const water = waterOf({ ...rest, joins: parted })
    expect(water.dry).toEqual(
      new Map([
        ['B', 'no-supply'],
        ['C', 'no-main'],
      ]),
    )
    expect([...water.rows.keys()]).toEqual(['A'])
    expect(water.mains.has('N')).toBe(false)
  })

  test('a bay without a pump has dry rows and no fault', () => {
    const water = waterOf(along40ft(waterBay()).row('A').inputs())
    expect(water.dry).toEqual(new Map([['A', 'no-supply']]))
    expect(water.bay).toBeUndefined()
    expect(water.fault).toBeUndefined()
  })

  test('rows behind one another in a circle are joined to nothing', () => {
    const bay = along40ft(waterBay().pit('P')).row('A', { behind: 'B' }).row('B', { behind: 'A' })
    expect(waterOf(bay.inputs()).dry).toEqual(
      new Map([
        ['A', 'no-main'],
        ['B', 'no-main'],
      ]),
    )
  })
})

describe('pumps', () => {
  test('one 60 ft under the towers lifts nothing, and says so', () => {
    const water = waterOf(
      along40ft(waterBay().pit('P', { suction: -720 }))
        .row('A')
        .inputs(),
    )
    const pump = water.pumps.get('P')!
    expect(water.fault).toBeUndefined()
    expect(pump.isLifting).toBe(false)
    expect(toInches(pump.staticMm)).toBeCloseTo(796, 6)
    expect(water.totalLph).toBe(0)
    expect(water.rows.get('A')).toMatchObject({ state: 'Starved', figures: { meanLph: 0, spread: 0 } })
    for (const value of Object.values(water.bay!)) expect(value).not.toBeNaN()
  })

  test('two pumps side by side give more than one, and each less than alone', () => {
    const [one, two] = [1, 2].map((pumps) =>
      waterOf(along40ft(waterBay().pit('P', { pumps })).row('A').row('B').row('C').inputs()),
    )
    expect(two!.totalLph).toBeGreaterThan(one!.totalLph)
    expect(two!.totalLph).toBeLessThan(2 * one!.totalLph)
  })

  test('a pump at either end of the main is like the other', () => {
    const bay = along40ft(
      waterBay()
        .pit('P')
        .pit('Q', { along: 480, at: [480, 0] }),
    ).row('A', { along: 240 })
    const water = waterOf(bay.inputs())
    expect(water.pumps.get('P')!.flowLph).toBeCloseTo(water.pumps.get('Q')!.flowLph, 2)
    expect(water.pumps.get('P')!.flowLph).toBeCloseTo(water.totalLph / 2, 2)
  })

  test('a dirty filter takes water away', () => {
    const dirty = waterOf(threeRows.inputs(), { filter: 'dirty' })
    expect(dirty.totalLph).toBeLessThan(waterOf(threeRows.inputs()).totalLph)
  })

  test('works at a point of its own curve', () => {
    const pump = waterOf(threeRows.inputs()).pumps.get('P')!
    const after = CURVE.findIndex(({ flowLph }) => flowLph > pump.flowLph)
    expect(pump.headMm).toBeLessThan(CURVE[after - 1]!.headMm)
    expect(pump.headMm).toBeGreaterThan(CURVE[after]!.headMm)
    // 1 gpm against 1 ft is 0.18858 W (3.785411784 / 60 kg/s * 9.80665 * 0.3048), at 998.2 kg/m3.
    const watts = ((pump.flowLph / gpm(1)) * (toInches(pump.headMm) / 12) * 0.18858 * 998.2) / 1000
    expect(pump.watts).toBeCloseTo(watts, 1)
  })
})

describe('a head box', () => {
  const fed = along40ft(waterBay().box('B', 110, { main: 'M', along: 0 }))
    .row('A', { along: 24 })
    .row('C', { along: 480 })

  test('holds its head when a zone is shut, where a pump does not', () => {
    const [all, one] = [waterOf(fed.inputs()), waterOf(fed.inputs(), { valves: new Map([['C', false]]) })]
    const rise = meanOf(one, 'A') / meanOf(all, 'A') - 1
    const pumped = along40ft(waterBay().pit('P')).row('A', { along: 24 }).row('C', { along: 480 }).inputs()
    const [pumpAll, pumpOne] = [waterOf(pumped), waterOf(pumped, { valves: new Map([['C', false]]) })]
    expect(rise).toBeGreaterThanOrEqual(0)
    expect(rise).toBeLessThan(0.05)
    expect(meanOf(pumpOne, 'A') / meanOf(pumpAll, 'A') - 1).toBeGreaterThan(3 * rise)
  })

  test('gives what the towers take, and keeps what a pump overfeeds', () => {
    const water = waterOf(fed.inputs())
    expect(water.boxes.get('B')).toMatchObject({ inLph: 0, outLph: expect.closeTo(water.totalLph, 2) })
    const filled = waterOf(fed.pit('P').inputs())
    const { inLph, outLph } = filled.boxes.get('B')!
    expect(inLph - outLph).toBeCloseTo(filled.pumps.get('P')!.flowLph - filled.totalLph, 1)
    expect(inLph).toBeGreaterThan(0)
  })
})

/** Found by the property test over any bay: the heads went to and fro by half a metre for ever. */
test('wide tubes that hang at the very head of a throttled zone settle', () => {
  const wide: RowSketch = { behind: 'A', stations: 10, towers: 1, tube: 'tube-1/4', tubeIn: 35, outlet: 90 }
  const bay = along40ft(waterBay().pit('P', { hasCheckValve: false }))
    .row('A', { along: 0, stations: 2, towers: 1, tubeIn: 12, outlet: 60, valves: { trimTurns: 0.5 } })
    .row('B', wide)
    .row('C', { behind: 'A', stations: 26, towers: 1, tubeIn: 49, outlet: 61 })
    .row('D', wide)
    .inputs()
  for (const waterC of [15, 20, 25, 30, 32, 35]) {
    const water = waterOf(bay, { waterC })
    expect(water.fault).toBeUndefined()
    expect(water.pumps.get('P')!.flowLph / towersLph(water)).toBeCloseTo(1, 6)
  }
})

test('of two rows that are alike the first is named, whatever was solved before', () => {
  const bay = along40ft(waterBay().pit('P', { along: 240, at: [240, 0] }))
    .row('A', { along: 60 })
    .row('B', { along: 420 })
    .inputs()
  for (const waterC of [20, 5, 33, 12]) {
    waterOf(bay, { waterC })
    const { least, most } = waterOf(bay).bay!
    expect([least.part, least.station, least.line]).toEqual(['A', 24, 1])
    expect([most.part, most.station, most.line]).toEqual(['A', 1, 1])
  }
})

test('the answer does not hang on what was solved before', () => {
  const first = waterOf(threeRows.inputs())
  waterOf(threeRows.inputs(), { waterC: 5, valves: new Map([['A', false]]) })
  const again = waterOf(threeRows.inputs())
  for (const [part, { tubeLph }] of first.rows)
    tubeLph.forEach((flow, i) => expect(again.rows.get(part)!.tubeLph[i]! / flow).toBeCloseTo(1, 5))
})
