import { describe, expect, test } from 'vitest'
import { refill } from '../../../src/evaluate/water/refill'
import { waterOf } from '../../../src/evaluate/water/waterOf'
import { toGpm } from '../../../src/units/flow'
import { toGallons } from '../../../src/units/volume'
import { bay } from '../../support/bay'
import { drawnWater } from '../../support/drawnWater'
import { type PumpSketch, type RowSketch, waterBay } from '../../support/waterBay'

const inputsWith = (pump: PumpSketch = {}, sketch: RowSketch = {}) =>
  waterBay()
    .pit('P', pump)
    .main('M', [
      [0, 0],
      [240, 0],
    ])
    .row('A', { along: 120, outlet: 76, ...sketch })
    .row('B', { along: 240, outlet: 76, ...sketch })
    .inputs()

describe('what comes home', () => {
  // By hand, each row: 24 spans of 15 in of 0.824 in pipe, at the level of the open ends, hold 0.533 x 360 = 192.0 in3; of the
  // riser pipe nothing stands higher than they do; 48 tubes of 0.0123 in2 and 36 in hold 21.2 in3. 213.2 in3 are 0.923 gal.
  test('behind a check valve is what stands as high as the lowest open end', () => {
    const { rows, rowsLitres, mainsLitres } = refill(inputsWith())!
    for (const { litres } of rows.values()) expect(toGallons(litres)).toBeCloseTo(0.923, 2)
    expect(rowsLitres).toBeCloseTo(rows.get('A')!.litres + rows.get('B')!.litres, 9)
    expect(mainsLitres).toBe(0)
  })

  // The laterals lie at 76 in: with open ends at 80 in they stay full, and only tubes run out; 21.2 in3 are 0.0916 gal.
  test('is nothing of laterals that lie lower than their tubes end', () => {
    const { rows } = refill(inputsWith({}, { outlet: 80 }))!
    expect(toGallons(rows.get('A')!.litres)).toBeCloseTo(0.0916, 3)
  })

  // By hand: with open ends at 58 in half of the riser pipe from 40 to 76 in stands higher: 18 in of 1.049 in hold 15.6 in3
  // more, 0.067 gal.
  test('is of a riser pipe what stands higher than the lowest open end', () => {
    const { rows } = refill(inputsWith({}, { outlet: 58 }))!
    expect(toGallons(rows.get('A')!.litres)).toBeCloseTo(0.923 + 0.067, 2)
  })

  // By hand: 240 in of 2.067 in main hold 805 in3, 3.49 gal; the pump's pipe up to it 84 in of the same, 1.22 gal; and each row's,
  // 80 in down and 24 in across, 83.5 in of 1.049 in: for both 144.4 in3 or 0.625 gal. Riser pipes run empty as well.
  test('without a check valve is all of it', () => {
    const { mainsLitres, rows } = refill(inputsWith({ hasCheckValve: false }))!
    expect(Math.abs(toGallons(mainsLitres) - (3.49 + 1.22 + 0.625))).toBeLessThan(0.03)
    expect(toGallons(rows.get('A')!.litres)).toBeCloseTo(0.923 + 31.1 / 231, 2)
  })

  // Trade notes, worked: the laterals of the sample bay hold 13.5 gal and are all of what six rows let go but for headers.
  // Here one such row of 30 ft with two laterals of 3/4 in: 2 x 0.533 x 360 in3 are 1.66 gal, with its header.
  test('of a drawn row is its laterals and header, which lie above the tower tops', () => {
    const layout = bay('30 x 96 ft')
      .row('A', [100, 60], { header: 'pe-3/4' })
      .main('M', [
        [40, 40],
        [40, 200],
      ])
      .pit('P', { x: [20, 60], y: [10, 40] })
      .layout()
    const { rows } = refill(drawnWater(layout))!
    const [row] = [...rows.values()]
    expect(toGallons(row!.litres)).toBeGreaterThan(1.66 + 96 * 0.00191)
    expect(toGallons(row!.litres)).toBeLessThan(2.3)
  })
})

describe('how long it takes', () => {
  // By hand for one row alone: the front runs through 24 spans of 8.00 in3, each at what is left of the flow. With even towers
  // that is V / q x (1 + 1/2 + ... + 1/24) = 3.776 V / q of one station, and the tube of the last one beside it.
  test('is the harmonic sum of a lateral of even towers', () => {
    const inputs = inputsWith({}, { lateral: 'pe-1', tubeIn: 90 })
    const { rows } = refill(inputs)!
    const { tubeLph } = waterOf(inputs).rows.get('A')!
    const mean = tubeLph.reduce((sum, flow) => sum + flow, 0) / tubeLph.length
    // 15 in of 1.049 in: 12.96 in3, over two towers; a tube of 90 in: 1.105 in3, over one. A gallon is 231 in3.
    const perSecond = (toGpm(mean) * 231) / 60
    const byHand = (3.776 * 12.96) / (2 * perSecond) + 1.105 / perSecond
    expect(Math.abs(rows.get('A')!.lastSeconds / byHand - 1)).toBeLessThan(0.06)
  })

  test('ends at the far end of the furthest row', () => {
    const { rows, seconds, lastRow } = refill(inputsWith())!
    expect(lastRow).toBe('B')
    expect(seconds).toBe(rows.get('B')!.lastSeconds)
    for (const { last, firstSeconds, lastSeconds } of rows.values()) {
      expect(last.station).toBe(24)
      expect(firstSeconds).toBeLessThan(lastSeconds)
    }
  })

  // By hand: what has to be filled first takes as long as its volume at the pump's whole flow, at the least.
  test('is longer without a check valve by the main and pump pipe at the pump’s flow', () => {
    const [held, empty] = [inputsWith(), inputsWith({ hasCheckValve: false })].map((inputs) =>
      refill(inputs)!,
    )
    const { totalLph } = waterOf(inputsWith())
    const least = (1.22 + 3.49 / 2) / toGpm(totalLph)
    expect(empty!.rows.get('A')!.firstSeconds - held!.rows.get('A')!.firstSeconds).toBeGreaterThan(60 * least)
  })

  test('is told of no row without water', () => {
    const shut = refill(inputsWith({}, { valves: { isOpen: false } }))
    expect(shut?.rows.size ?? 0).toBe(0)
    expect(shut?.lastRow).toBeUndefined()
    expect(refill(waterBay().row('A').inputs())).toBeUndefined()
  })
})
