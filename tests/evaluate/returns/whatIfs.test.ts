import { describe, expect, test } from 'vitest'
import type { ZoneFlush } from '../../../src/evaluate/water/flush'
import { beforeChecks } from '../../../src/evaluate/beforeChecks'
import { siphonOf } from '../../../src/evaluate/returns/siphon'
import { atOnce } from '../../../src/evaluate/returns/standings'
import { stopPump } from '../../../src/evaluate/returns/stopPump'
import type { WhatIfKind, WhatIfRow } from '../../../src/evaluate/returns/whatIfRow'
import { whatIfRows, zoneFlushes } from '../../../src/evaluate/returns/whatIfs'
import type { Layout } from '../../../src/layout/schema'
import { gpm, toGpm } from '../../../src/units/flow'
import { inches, toInches } from '../../../src/units/length'
import { gallons, toGallons } from '../../../src/units/volume'
import { scenarios } from '../../support/scenarios'

/** The sample bay, other values at its pit and in its settings. */
const bayWith = (values: object = {}, settings: object = {}) => {
  const layout = scenarios['kestrel-bend-house-2']!()
  const changed: Layout = {
    ...layout,
    settings: { ...layout.settings, ...settings },
    parts: layout.parts.map((part) => (part.kind === 'sump' ? { ...part, ...values } : part)),
  }
  return beforeChecks(changed).bay
}

const rowsOf = (bay: ReturnType<typeof bayWith>, flushes: readonly ZoneFlush[] = []) =>
  [...whatIfRows({ bay, stopped: stopPump(bay)!, flushes }).values()][0]!

const row = <K extends WhatIfKind>(rows: readonly WhatIfRow[], kind: K) =>
  rows.find((each): each is Extract<WhatIfRow, { kind: K }> => each.kind === kind)!

describe('of the sample bay', () => {
  const bay = bayWith()
  const flushes = atOnce(zoneFlushes(bay))
  const rows = rowsOf(bay, flushes)

  // Worked example of the trade notes: the pit runs from its running level to pump off in 3.6 min without any return.
  test('a blocked return takes the pump off after 3.6 min', () => {
    const { pumpOffMin, alarmMin, outL, drainsHoldL, state } = row(rows, 'return-blocked')
    expect(pumpOffMin).toBeCloseTo(3.6, 1)
    expect(alarmMin).toBeLessThan(pumpOffMin)
    // 6.5 in of 17.77 gal.
    expect(toGallons(outL)).toBeCloseTo(115.5, 0)
    // Two lines of 22 ft 10 in; full they would hold 15.4 gal each (0.0899 ft2 x 22.83 ft x 7.48), less what runs.
    expect(toGallons(drainsHoldL)).toBeLessThan(30.7)
    expect(toGallons(drainsHoldL)).toBeGreaterThan(20)
    expect(state).toBe('Thin')
  })

  // Worked example of the trade notes: the north line carries 19.2 gpm, its lowest hole stands 10 in from the pit. 115.5 gal at 19.2 gpm are
  // 6.0 min.
  test('the worst hole is the lowest of the line that carries most', () => {
    const { fromLowMm, cutLph, surchargeMin, pumpOffMin } = row(rows, 'drain-blocked')
    expect(toInches(fromLowMm)).toBeCloseTo(10, 1)
    expect(Math.abs(toGpm(cutLph) / 19.2 - 1)).toBeLessThan(0.01)
    expect(pumpOffMin).toBeCloseTo(6, 1)
    expect(surchargeMin).toBeLessThan(15.4 / 19.2)
  })

  // By hand: 9.5 in of 17.77 gal are 168.8 gal; at 4 gpm 42.2 min. A 2 in pipe takes 4 gpm about an inch deep at its mouth.
  test('a stuck make-up valve comes to the overflow after 42 min, and the overflow takes it', () => {
    const { overflowMin, overMm, rimMin, state } = row(rows, 'make-up-stuck')
    expect(overflowMin).toBeCloseTo(42.2, 1)
    expect(toInches(overMm)).toBeGreaterThan(0.8)
    expect(toInches(overMm)).toBeLessThan(1.4)
    expect(rimMin).toBe(Infinity)
    expect(state).toBe('Holds')
  })

  test('an hour without power ends as a stop does', () => {
    const { levelMm, spiltL, overflowMin, state } = row(rows, 'power-cut')
    expect(toInches(levelMm)).toBeLessThan(-13)
    expect([spiltL, overflowMin, state]).toEqual([expect.closeTo(0, 6), undefined, 'Holds'])
  })

  // By hand: 2 % of 257.6 gal in the pit (14.5 in) and some 100 under way: about 7.15 gal a day; 6.5 in, 115.5 gal, last 16 days.
  test('without make-up the pump goes off after some sixteen days', () => {
    const { perDayL, pumpOffDays, alarmDays, valveDayL } = row(rows, 'no-make-up')
    // 258 gal in the pit, 72 in towers, 18 in troughs and drains, some 23 in pipes, which stay full: 2 % of 371 is 7.42. From running
    // to pump off 6.5 in of 17.766 gal: 115.5 / 7.42 = 15.6 days.
    expect(toGallons(perDayL)).toBeCloseTo(7.42, 1)
    expect(pumpOffDays).toBeCloseTo(15.6, 1)
    expect(alarmDays).toBeLessThan(pumpOffDays)
    // 4 gpm for 1,440 min.
    expect(toGallons(valveDayL)).toBeCloseTo(5760, 3)
  })

  test('the flush that takes most is the one that is told', () => {
    const { zone, litres, levelMm } = row(rows, 'zone-flushed')
    const most = flushes.toSorted((a, b) => b.litres - a.litres)[0]!
    expect(zone).toBe(most.part)
    expect(litres).toBe(most.litres)
    expect(toInches(levelMm)).toBeCloseTo(-22.5 - toGallons(litres) / 17.766, 2)
  })
})

describe('where it goes wrong', () => {
  test('more make-up than an overflow takes runs over the rim, later than into the overflow', () => {
    const made = row(rowsOf(bayWith({ makeUpLph: gpm(80), overflowBore: '1' })), 'make-up-stuck')
    expect(made.state).toBe('Spills')
    expect(made.overMm).toBe(Infinity)
    // 22.5 in of 17.77 gal at 80 gpm: 5.0 min.
    expect(made.rimMin).toBeCloseTo(5, 1)
    expect(made.rimMin).toBeGreaterThan(made.overflowMin)
  })

  test('a pit that runs too high spills in a power cut, and says from when on', () => {
    const cut = row(rowsOf(bayWith({ runningMm: inches(-15), makeUpMm: inches(-16) })), 'power-cut')
    expect(cut.state).toBe('Spills')
    expect(cut.overflowMin).toBeGreaterThan(0)
    expect(cut.overflowMin).toBeLessThan(20)
  })

  test('someone who comes at once keeps a blocked return from running a pump dry', () => {
    expect(row(rowsOf(bayWith({}, { alarmMin: 1 })), 'return-blocked').state).toBe('Holds')
  })

  test('fish tanks in the same water make each day cost more', () => {
    const fish = row(rowsOf(bayWith({}, { otherWaterL: gallons(1000) })), 'no-make-up')
    expect(toGallons(fish.perDayL)).toBeCloseTo(7.15 + 20, 0)
  })
})

describe('a siphon', () => {
  // Worked example of the trade notes: laterals of the sample bay hold 13.5 gal, main and riser pipes 6.1; mains drawn here are longer.
  test('brings laterals through the tubes behind a check valve, and all pipes back without one', () => {
    const found = siphonOf(bayWith())!
    expect(found.hasCheckValve).toBe(true)
    expect(toGallons(found.throughTubesL)).toBeGreaterThan(8)
    expect(toGallons(found.throughTubesL)).toBeLessThan(13.5)
    expect(found.backL).toBeGreaterThan(found.throughTubesL + gallons(6))
  })

  test('names the lowest and the highest tube end', () => {
    // On grade the rails fall with the floor, an inch from east to west and two from north to south.
    const { lowest, highest } = siphonOf(bayWith({}, { datum: 'grade' }))!
    expect(lowest.levelMm).toBeLessThan(highest.levelMm - inches(1))
  })

  test('is as drawn', () => {
    expect(siphonOf(bayWith({ checkValve: false }))!.hasCheckValve).toBe(false)
    expect(siphonOf(bayWith({ pumps: 0 }))).toBeUndefined()
  })
})
