import { describe, expect, test } from 'vitest'
import { evaluate } from '../../../src/evaluate/evaluate'
import type { Evaluation } from '../../../src/evaluate/evaluation'
import { fallOnSite, troughLines } from '../../../src/evaluate/returns/troughLines'
import { troughReturns } from '../../../src/evaluate/returns/troughs'
import { troughWater } from '../../../src/evaluate/returns/troughWater'
import type { TroughReturn } from '../../../src/model/returns'
import { toGph, toGpm } from '../../../src/units/flow'
import { toInches } from '../../../src/units/length'
import { toInchesPerFoot } from '../../../src/units/slope'
import { toGallons } from '../../../src/units/volume'
import { bay } from '../../support/bay'
import { fedRow } from '../../support/fedRow'
import { kestrelBend } from '../../support/scenarios/kestrelBend'
import { twoRows, withWater } from '../../support/wetBay'

const ROW = 'rack-row-1'

const troughOf = ({ bay: known }: Evaluation, part = ROW): TroughReturn => {
  const found = troughReturns(known).get(part)
  if (!found) throw new RangeError(`${part} has no trough.`)
  return found
}

const dry = (values = {}): Evaluation => evaluate(bay('40 x 60 ft').row('A', [165, 100], values).layout())

describe('a row without water', () => {
  const trough = troughOf(dry())

  // 24 towers a line at the 4 gph that are wanted: 96 gph or 1.6 gpm, four lines 6.4. Worked example of the trade notes.
  test('carries what is wanted of its towers', () => {
    expect(trough).toMatchObject({ line: 1, towers: 24, isWanted: true })
    expect(toGpm(trough.flowLph)).toBeCloseTo(1.6, 9)
    expect(toGpm(trough.totalLph)).toBeCloseTo(6.4, 9)
  })

  // 18-1/2 in of tail at 1/16 in a foot. Worked example of the trade notes, hand arithmetic.
  test('keeps 0.1 in of film behind its outlets', () => {
    expect(toInches(trough.puddleMm)).toBeCloseTo(0.096, 3)
  })

  // As a weir 1.6 gpm ask for (0.003565 / (3.33 x pi x 2 / 12))^(2/3) = 0.0161 ft or 0.193 in of a 2 in rim; the film that comes to
  // it is a hair deeper. With the tail's fall 0.30 in stand at the low end, 3.375 less that is free.
  test('stands 0.2 in deep at its outlets and 0.3 at the low end', () => {
    expect(trough.outletRegime).toBe('weir')
    expect(toInches(trough.outletDepthMm)).toBeCloseTo(0.2, 1)
    expect(toInches(trough.deepestMm)).toBeCloseTo(0.3, 1)
    expect(toInches(trough.deepestAtMm)).toBeCloseTo(360, 1)
    expect(toInches(trough.freeboardMm)).toBeCloseTo(3.375 - toInches(trough.deepestMm), 9)
  })

  // One minute is 1.6 gal or 369.6 in3. On a dry bottom, 3.25 in wide and 0.2593 in wider a in of depth each side, that is
  // 192 (1.625 d^2 + 0.0864 d^3) = 369.6: d = 1.06 in; with all of the film, 0.78 gal or 181 in3, it would be 1.27.
  test('with an outlet blocked for a minute fills to 1.06 to 1.27 in, and keeps the 2 in', () => {
    const depth = 3.375 - toInches(trough.blockedFreeboardMm)
    expect(depth).toBeGreaterThan(1.06)
    expect(depth).toBeLessThan(1.27)
    expect(toInches(trough.blockedFreeboardMm)).toBeGreaterThan(2)
  })

  // A film thinner than 0.25 in over 341-1/2 by 3-1/4 in is less than 1.2 gal a line, and half of that is more than half there.
  test('has more than 0.6 and less than 1.2 gal standing in each of its four lines', () => {
    expect(toGallons(trough.standingL) / 4).toBeGreaterThan(0.6)
    expect(toGallons(trough.standingL) / 4).toBeLessThan(1.2)
  })

  // The tip hangs 1.125 in over the invert at the rack line, 1/192 of 7.5 in more at the first station, over next to no water.
  test('keeps 1.13 in of air under its first tips', () => {
    expect(toInches(trough.tipAirMm ?? NaN)).toBeGreaterThan(1.125)
    expect(toInches(trough.tipAirMm ?? NaN)).toBeLessThan(1.125 + 7.5 / 192)
  })

  // 360 in x 28e-6 a degree F x 54 degrees F (30 C): 0.544 in, a third of it in each section; 1/4 in is left: common practice.
  // 30 ft by 60 degrees F: 360 x 3.0e-5 x 60 = 0.648 in, a third of it at each ten feet.
  test('grows 0.65 in from frost to noon, 0.22 at each joiner, where 1/4 is left', () => {
    expect(toInches(trough.growthMm)).toBeCloseTo(0.648, 3)
    expect(toInches(trough.joinerGrowthMm)).toBeCloseTo(0.216, 3)
    expect(toInches(trough.joinerRoomMm)).toBeCloseTo(0.25, 9)
  })
})

test('towers that are taken out give nothing, and another line carries most', () => {
  // Stations 1 to 3 of line 1: indices 0, 4 and 8 of four lines.
  const trough = troughOf(dry({ takenOut: [0, 4, 8] }))
  expect(trough).toMatchObject({ line: 2, towers: 24 })
  expect(toGph(trough.totalLph)).toBeCloseTo(4 * (96 - 3), 6)
})

describe('a row with water', () => {
  const wet = withWater(twoRows(), [
    { part: ROW, state: 'Even', flow: (station, line) => (line === 3 ? 5 : 4) + (station === 8 ? 1 : 0) },
  ])

  test('carries what its tubes give, told by the line that carries most', () => {
    const trough = troughOf(wet)
    expect(trough).toMatchObject({ line: 3, towers: 8, isWanted: false })
    expect(toGph(trough.flowLph)).toBeCloseTo(8 * 5 + 1, 6)
    expect(toGph(trough.totalLph)).toBeCloseTo(3 * 33 + 41, 6)
  })

  test('and its neighbour without water what is wanted', () => {
    expect(troughOf(wet, 'rack-row-2')).toMatchObject({ line: 1, isWanted: true })
  })

  test('brings home what the solved network pours out', () => {
    const { bay: known } = evaluate(fedRow().layout())
    expect(known.returns.troughs.get(ROW)?.totalLph).toBeCloseTo(
      known.water.rows.get(ROW)?.totalLph ?? NaN,
      6,
    )
  })
})

describe('a lone trough', () => {
  const lone = evaluate(bay('40 x 60 ft').trough('T', [100, 100], {}).layout())

  test('carries nothing, and keeps its film', () => {
    const trough = troughOf(lone, 'trough-1')
    expect(trough).toMatchObject({ towers: 0, flowLph: 0, isWanted: false, tipAirMm: undefined })
    expect(toInches(trough.puddleMm)).toBeCloseTo(15 / 192, 3)
    expect(trough.deepestMm).toBeCloseTo(trough.puddleMm, 3)
    expect(trough.blockedFreeboardMm).toBeCloseTo(trough.freeboardMm, 9)
  })
})

describe('on grade', () => {
  // The floor falls 2 in over 60 ft to the north: 1/30 in a foot more for a row that falls north, as much less for one that falls south.
  const onGrade = (fallsTo: 'start' | 'end'): Evaluation =>
    evaluate(
      bay('40 x 60 ft')
        .level([0, 0], 0)
        .level([480, 0], 0)
        .level([0, 720], -2)
        .level([480, 720], -2)
        .settings({ datum: 'grade' })
        .row('A', [165, 100], { fallsTo })
        .layout(),
    )
  const fallOf = ({ bay: { builtOf, levels } }: Evaluation): number =>
    toInchesPerFoot(fallOnSite(builtOf.get(ROW)!, levels))

  test('the floor’s fall counts in', () => {
    expect(fallOf(onGrade('end'))).toBeCloseTo(1 / 16 + 2 / 60, 4)
    expect(fallOf(onGrade('start'))).toBeCloseTo(1 / 16 - 2 / 60, 4)
  })

  test('and a gutter that falls less stands deeper', () => {
    expect(troughOf(onGrade('start')).standingL).toBeGreaterThan(troughOf(onGrade('end')).standingL)
  })
})

describe('what is reckoned once', () => {
  const known = evaluate(kestrelBend().layout()).bay
  const row = known.builtOf.get(ROW)!

  test('lines and rows that are alike share one sum', () => {
    const water = troughWater(row, 1, 363, known)
    expect(troughWater(row, 2, 363, known)).toBe(water)
    expect(troughWater(row, 1, 363.2, known)).toBe(water)
    expect(troughWater(row, 1, 390, known)).not.toBe(water)
  })

  test('and a line that is not there has none', () => {
    expect(troughWater(row, 5, 363, known)).toBeUndefined()
    expect(troughWater(row, 0, 363, known)).toBeUndefined()
  })

  test('steps of flow move no depth by half a per cent', () => {
    const depths = [360, 360.4, 360.9, 361.3, 361.8].map(
      (lph) => troughWater(row, 1, lph, known)!.profile.outletDepthMm,
    )
    expect(Math.max(...depths) / Math.min(...depths)).toBeLessThan(1.005)
  })

  test('drips are told from the high end, whichever way the row is numbered', () => {
    const lines = troughLines(row, row.trough!)
    for (const { dripsMm, towers } of lines) {
      expect(dripsMm).toEqual([...dripsMm].sort((a, b) => a - b))
      expect(towers).toHaveLength(dripsMm.length)
    }
    expect(new Set(lines.flatMap(({ towers }) => towers)).size).toBe(96)
  })
})

// Every water comes home: what leaves the tubes of the sample bay, 32 gpm (worked example of the trade notes), runs in its troughs.
test('the sample bay’s troughs carry all that its towers give', () => {
  const { returns, water } = evaluate(kestrelBend().layout()).bay
  const all = [...returns.troughs.values()].reduce((sum, { totalLph }) => sum + totalLph, 0)
  expect(all / water.totalLph).toBeCloseTo(1, 6)
  expect(Math.abs(toGpm(all) / 32 - 1)).toBeLessThan(0.02)
})

// A third more here and a third less there, one tower after the other: the surface at the outlet does not know it.
test('which tower gives more hardly moves the water', () => {
  const sloped = withWater(twoRows(), [
    { part: ROW, state: 'Drifting', flow: (station) => 4 * (1 + 0.3 * ((station - 4.5) / 3.5)) },
  ])
  const even = withWater(twoRows(), [{ part: ROW, state: 'Even', flow: () => 4 }])
  expect(troughOf(sloped).deepestMm / troughOf(even).deepestMm).toBeCloseTo(1, 2)
})
