import { describe, expect, test } from 'vitest'
import { zoneEffects } from '../../../src/evaluate/water/zoneEffects'
import { waterOf } from '../../../src/evaluate/water/waterOf'
import { inches } from '../../../src/units/length'
import { waterBay } from '../../support/waterBay'

const fed = (supply: 'pump' | 'box') => {
  const start = waterBay()
  const bay = supply === 'pump' ? start.pit('P') : start.box('B', 110, { main: 'M', along: 0 })
  return bay
    .main('M', [
      [0, 0],
      [600, 0],
    ])
    .row('A', { along: 120 })
    .row('B1', { along: 300 })
    .row('B2', { behind: 'B1' })
    .row('C', { along: 600 })
    .row('D', { along: 600, valves: { isOpen: false } })
    .inputs()
}

describe('shutting a zone', () => {
  const inputs = fed('pump')
  const effects = zoneEffects(inputs)!

  test('is asked of every zone that stands open, with the rows behind its valve', () => {
    expect(effects.zones).toEqual(['A', 'B1', 'C'])
    const { rows } = waterOf(inputs)
    const both = rows.get('B1')!.totalLph + rows.get('B2')!.totalLph
    expect(effects.flowLph.get('B1')! / both).toBeCloseTo(1, 6)
    expect(effects.shut('D')).toBeUndefined()
    expect(effects.shut('B2')).toBeUndefined()
  })

  test('gives the others more, as the bay says that is drawn with it shut', () => {
    for (const part of effects.zones) {
      const { changes, most } = effects.shut(part)!
      const drawn = waterOf(inputs, { valves: new Map([[part, false]]) }).zones
      expect([...changes.keys()]).toEqual(effects.zones.filter((zone) => zone !== part))
      for (const [zone, change] of changes) {
        expect(change).toBeGreaterThan(0)
        expect(change).toBeCloseTo(drawn.get(zone)!.flowLph / effects.flowLph.get(zone)! - 1, 5)
      }
      expect(most!.change).toBe(Math.max(...changes.values()))
    }
  })

  test('does more the more it took: the zone with two rows moves the others most', () => {
    const moved = (part: string) => effects.shut(part)!.changes.get('C')!
    expect(moved('B1')).toBeGreaterThan(moved('A'))
  })

  test('is too much beyond 10 per cent', () => {
    for (const part of effects.zones) {
      const { isTooMuch, most } = effects.shut(part)!
      expect(isTooMuch).toBe(Math.abs(most!.change) > 0.1)
    }
  })
})

// Trade notes: a head box gives constant head whatever is open.
test('under a head box close by zones hardly feel each other', () => {
  const [box, pump] = [zoneEffects(fed('box'))!, zoneEffects(fed('pump'))!]
  for (const part of box.zones) {
    expect(Math.abs(box.shut(part)!.most!.change)).toBeLessThan(Math.abs(pump.shut(part)!.most!.change))
    expect(box.shut(part)!.isTooMuch).toBe(false)
  }
})

test('a single zone moves no other, and a bay without water has none', () => {
  const single = waterBay()
    .pit('P')
    .main('M', [
      [0, 0],
      [inches(5), 0],
    ])
    .row('A')
    .inputs()
  expect(zoneEffects(single)!.shut('A')).toMatchObject({ most: undefined, isTooMuch: false })
  expect(zoneEffects(waterBay().row('A').inputs())).toBeUndefined()
})
