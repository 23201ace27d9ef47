import { describe, expect, test } from 'vitest'
import { governs } from '../../../src/evaluate/water/governs'
import { waterOf } from '../../../src/evaluate/water/waterOf'
import { causes } from '../../../src/evaluate/water/whatIf'
import { waterBay } from '../../support/waterBay'

/** Two zones on a main so thin and long that one starves; each by a lateral that loses next to nothing. */
const onThinMain = () =>
  waterBay()
    .pit('P')
    .main(
      'M',
      [
        [0, 0],
        [1200, 0],
      ],
      'pe-1-1/4',
    )
    .row('A', { along: 60, stations: 6, lateral: 'pe-1' })
    .row('B', { along: 1200, stations: 6, lateral: 'pe-1' })

const one = () =>
  waterBay()
    .pit('P')
    .main('M', [
      [0, 0],
      [480, 0],
    ])

describe('what governs', () => {
  test('is the main where a long thin one feeds short laterals', () => {
    const { bay } = governs(onThinMain().inputs())!
    expect(bay.rulings[0]).toMatchObject({ cause: 'main' })
    expect(bay.rulings[0]!.share).toBeGreaterThan(0.8)
  })

  test('is the lateral within one straight row, and nothing else has a share', () => {
    const { bay, rows } = governs(one().row('A').inputs())!
    expect(bay.rulings.map(({ cause }) => cause)[0]).toBe('lateral')
    expect(bay.rulings[0]!.share).toBeGreaterThan(0.95)
    for (const cause of ['level', 'bore', 'length', 'temperature'])
      expect(rows.get('A')!.rulings.find((ruling) => ruling.cause === cause)!.share).toBe(0)
  })

  test('is the level where one row hangs higher than the other', () => {
    const bay = one()
      .row('A', { along: 240, stations: 4, lateral: 'pe-1', outlet: 76 })
      .row('B', { along: 240, stations: 4, lateral: 'pe-1', outlet: 90 })
      .pit('Q')
    expect(governs(bay.inputs())!.bay.rulings[0]!.cause).toBe('level')
  })

  test('is the length of the tubes, or their bore, where rows have unlike ones', () => {
    const longer = one()
      .row('A', { along: 240, stations: 4, tubeIn: 36 })
      .row('B', { along: 240, stations: 4, tubeIn: 60 })
    expect(governs(longer.inputs())!.bay.rulings[0]!.cause).toBe('length')
    const wider = one()
      .row('A', { along: 240, stations: 4, tube: 'tube-1/8' })
      .row('B', { along: 240, stations: 4, tube: 'tube-1/4' })
    expect(governs(wider.inputs())!.bay.rulings[0]!.cause).toBe('bore')
  })

  test('ranks every cause once, the greatest share first, and says what is left of their sum', () => {
    const { bay } = governs(onThinMain().inputs())!
    const shares = bay.rulings.map(({ share }) => share)
    expect(bay.rulings.map(({ cause }) => cause).toSorted()).toEqual([...causes].toSorted())
    expect(shares).toEqual(shares.toSorted((a, b) => b - a))
    expect(bay.interactions + shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 9)
  })

  test('with every cause off all towers are alike', () => {
    const bay = onThinMain().row('C', { along: 600, tubeIn: 50, outlet: 80, kind: 'centre-split' })
    const water = waterOf(bay.inputs(), { without: new Set(causes) })
    expect(water.bay!.spread).toBeLessThan(0.005)
    expect(waterOf(bay.inputs()).bay!.spread).toBeGreaterThan(0.1)
  })

  test('a shut row has no say, and a bay without water is not asked', () => {
    const shut = governs(onThinMain().inputs(), { valves: new Map([['B', false]]) })!
    expect([...shut.rows.keys()]).toEqual(['A'])
    expect(shut.bay.rulings[0]!.cause).toBe('lateral')
    expect(governs(waterBay().row('A').inputs())).toBeUndefined()
  })
})
