import { describe, expect, test } from 'vitest'
import { balance } from '../../../src/evaluate/water/balance'
import { pumpSizing } from '../../../src/evaluate/water/sizing'
import { gph } from '../../../src/units/flow'
import { feet } from '../../../src/units/length'
import { CURVE, waterBay } from '../../support/waterBay'

const bayWith = (pump = {}) =>
  waterBay()
    .pit('P', pump)
    .main('M', [
      [0, 0],
      [600, 0],
    ])
    .row('A', { along: 120 })
    .row('B', { along: 360 })
    .row('C', { along: 600 })
    .inputs()

const { clean, dirty } = pumpSizing(bayWith())!

describe('the duty of a pump', () => {
  test('is the flow wanted of all towers, without a bypass through the pump as a whole', () => {
    expect(clean.wantedLph / (3 * 48 * gph(4))).toBeCloseTo(1, 9)
    expect(clean.flowLph / clean.wantedLph).toBeCloseTo(1, 6)
  })

  // By hand: 9.6 gpm on the curve from 24 ft at none through 21 at 20 gpm: between 22 and 23-1/2 ft.
  test('is read off the curve', () => {
    expect(clean.giveMm).toBeGreaterThan(feet(22))
    expect(clean.giveMm).toBeLessThan(feet(23.5))
  })

  // By hand: from 24 in under the zero up to the open ends at 76 in, and 7 to 11 in for tubes and lateral: 107 in at the least.
  test('is more than the way up', () => {
    expect(clean.needMm).toBeGreaterThan(feet(107 / 12))
    expect(clean.needMm).toBeLessThan(feet(12))
    expect(clean.neediest).toBe('C')
    expect(clean.giveMm - clean.needMm).toBeCloseTo(clean.spareMm, 9)
  })

  test('is harder with a dirty filter, at the same flow', () => {
    expect(dirty.flowLph).toBeCloseTo(clean.flowLph, 3)
    expect(dirty.needMm).toBeGreaterThan(clean.needMm)
    expect(dirty.spareMm).toBeLessThan(clean.spareMm)
  })

  test('has to spare what the valve card says is too much, and the other way round', () => {
    expect(balance(bayWith())!.verdict).toBe('too-large')
    expect(clean.spareMm).toBeGreaterThan(0)
    // By hand: 0.38 of 22.6 ft are 103 in, less than the 107 in that the way up and the tubes alone want.
    const weak = { curve: CURVE.map(({ flowLph, headMm }) => ({ flowLph, headMm: headMm * 0.38 })) }
    expect(balance(bayWith(weak))!.verdict).toBe('too-small')
    expect(pumpSizing(bayWith(weak))!.clean.spareMm).toBeLessThan(0)
  })
})

test('a head box, or a bay without water, has no pump to size', () => {
  const box = waterBay()
    .box('B', 110, { main: 'M', along: 0 })
    .main('M', [
      [0, 0],
      [600, 0],
    ])
    .row('A')
    .inputs()
  expect(pumpSizing(box)).toBeUndefined()
  expect(pumpSizing(waterBay().row('A').inputs())).toBeUndefined()
})
