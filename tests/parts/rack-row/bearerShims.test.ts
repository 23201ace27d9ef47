import { describe, expect, test } from 'vitest'
import type { RackRow } from '../../../src/parts/rack-row/schema'
import { toInches } from '../../../src/units/length'
import { inchesPerFoot } from '../../../src/units/slope'
import { build, facts, fromShelf, marked, row } from '../../support/rackRows'

const shimsOf = (part: RackRow, bayTipMm = 0) => facts(part, bayTipMm).bearerShims

describe('the shims of three racks', () => {
  // Every 24 in, but 2-3/4 in downhill of a riser pair that is in the way, uphill of the last one; 1/4 in and
  // 1/16 in a foot to the low end at 360 in. Worked example of the trade notes, hand arithmetic.
  const byHand = [
    [4.875, 2.0996],
    [24, 2],
    [48, 1.875],
    [72, 1.75],
    [96, 1.625],
    [122.75, 1.4857],
    [144, 1.375],
    [168, 1.25],
    [192, 1.125],
    [216, 1],
    [242.75, 0.8607],
    [264, 0.75],
    [288, 0.625],
    [312, 0.5],
    [336, 0.375],
    [355.125, 0.2754],
  ]

  test('16 bearers, from 2-1/8 in of shim at the high end to 1/4 in at the low end', () => {
    const shims = shimsOf(row())
    expect(shims).toHaveLength(16)
    shims.forEach(({ fromHighMm, shimMm }, index) => {
      expect(toInches(fromHighMm)).toBeCloseTo(byHand[index]![0]!, 6)
      expect(toInches(shimMm)).toBeCloseTo(byHand[index]![1]!, 4)
    })
  })

  test('count from the high end whichever way the gutters fall', () => {
    expect(shimsOf(row({ fallsTo: 'start', heading: 0 }))).toEqual(shimsOf(row()))
  })

  test('are the same where the bay hangs its tips higher', () => {
    expect(shimsOf(row(), 400)).toEqual(shimsOf(row()))
  })
})

/** Level of the invert over a place on a row that runs along y, read off its first gutter stick as drawn, mm. */
const drawnInvert = (part: RackRow, y: number): number => {
  const { from, to } = marked(build(part), 'GT')[0]!
  return from.z + ((to.z - from.z) * (y - from.y)) / (to.y - from.y)
}

describe('a shim fills what is drawn between a bearer and the trough', () => {
  test.each([
    ['as it comes', {}],
    ['falling to the start', { fallsTo: 'start' }],
    ['steep and long', { racks: 8, gutterFall: inchesPerFoot(1 / 8) }],
    ['on other racks and other shims', { rackLengthMm: 2500, midPairs: 2, leastShimMm: 12 }],
  ] as const)('%s', (_, values) => {
    const part = row(values)
    const bearers = marked(build(part), 'GB')
    const shims = shimsOf(part)
    expect(shims).toHaveLength(bearers.length)
    bearers.forEach(({ from, heightMm }, index) => {
      const topMm = from.z + heightMm / 2
      expect(topMm + shims[index]!.shimMm).toBeCloseTo(drawnInvert(part, from.y), 6)
    })
  })
})

test('on short runners there is a shim at each riser pair', () => {
  const part = fromShelf('low-rack')
  expect(shimsOf(part)).toHaveLength(build(part).supports.length / 2)
})
