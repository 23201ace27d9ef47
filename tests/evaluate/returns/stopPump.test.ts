import { describe, expect, test } from 'vitest'
import { beforeChecks } from '../../../src/evaluate/beforeChecks'
import { restart } from '../../../src/evaluate/returns/restart'
import { stopPump } from '../../../src/evaluate/returns/stopPump'
import type { Layout } from '../../../src/layout/schema'
import type { StopRun } from '../../../src/model/stopRun'
import { inches, toInches } from '../../../src/units/length'
import { toSeconds } from '../../../src/units/time'
import { gallons, toGallons } from '../../../src/units/volume'
import { scenarios } from '../../support/scenarios'
import { mirroredBay } from '../../support/wholeBay'

const kestrelBend = (): Layout => scenarios['kestrel-bend-house-2']!()

/** The sample bay with other values at its pit, or in its settings. */
const withPit = (values: object, settings: object = {}): Layout => {
  const layout = kestrelBend()
  return {
    ...layout,
    settings: { ...layout.settings, ...settings },
    parts: layout.parts.map((part) => (part.kind === 'sump' ? { ...part, ...values } : part)),
  }
}

const bayOf = (layout: Layout) => beforeChecks(layout).bay

const stopped = (layout: Layout, hasCheckValve?: boolean): StopRun =>
  stopPump(bayOf(layout), hasCheckValve === undefined ? {} : { hasCheckValve })!

const source = ({ sources }: StopRun, kind: string) => sources.find((each) => each.kind === kind)!

const only = <T>(map: ReadonlyMap<string, T>): T => [...map.values()][0]!

describe('the sample bay stops', () => {
  const bay = bayOf(kestrelBend())
  const run = stopPump(bay)!

  // Worked example of the trade notes: 480 towers x 0.15 gal.
  test('its towers let 72 gal go', () => {
    expect(toGallons(source(run, 'towers').litres)).toBeCloseTo(72, 6)
  })

  // Worked example of the trade notes: 120.5 gal, of which mains and riser pipes, 6.1, stay behind the check valve that is drawn, and
  // with gutters at 21.3 as deep everywhere as at the outlet and drains at 7.7, a quarter full from end to end. What stands along
  // gutters that are fed all along their length is two thirds of that: flow grows from nothing at the high end, and depth as its
  // power 0.6 or so, whose mean is 1 / 1.6.
  test('and brings home less than the rule of the trade, because gutters and drains thin out uphill', () => {
    expect(run.totalL).toBeLessThan(gallons(120.5 - 6.1))
    expect(run.totalL).toBeGreaterThan(gallons(90))
    expect(source(run, 'troughs').litres / gallons(21.3)).toBeGreaterThan(0.55)
    expect(source(run, 'troughs').litres / gallons(21.3)).toBeLessThan(0.75)
    expect(source(run, 'drains').litres).toBeLessThan(gallons(7.7))
  })

  // By hand: 17.77 gal an inch of the pit (36 x 114 in3 over 231).
  test('so that its pit rises by as much as comes home over what an inch holds', () => {
    const pit = only(run.pits)
    expect(toInches(pit.endMm - pit.startMm)).toBeCloseTo(toGallons(pit.homeL) / 17.766, 2)
    expect(pit.endMm).toBeLessThan(inches(-13))
    expect(pit.state).toBe('Holds')
  })

  test('in order: drains, troughs, then what drips through the towers', () => {
    const [drains, troughs, towers] = ['drains', 'troughs', 'towers'].map((kind) => source(run, kind))
    expect(drains!.beginsS).toBe(0)
    expect(drains!.mostHomeS).toBeLessThan(troughs!.mostHomeS)
    expect(troughs!.beginsS).toBeGreaterThanOrEqual(drains!.mostHomeS)
    expect(towers!.beginsS).toBeGreaterThanOrEqual(troughs!.mostHomeS)
  })

  test('and the towers are out in the time that is set for them, and a little for what drains through them', () => {
    const { mostHomeS } = source(run, 'towers')
    expect(mostHomeS).toBeGreaterThan(toSeconds(20))
    expect(mostHomeS).toBeLessThan(toSeconds(24))
  })

  test('in moments whose steps grow, with levels that rise and shares that fall', () => {
    const pit = [...run.pits.keys()][0]!
    expect(run.moments.length).toBeGreaterThanOrEqual(60)
    expect(run.moments.length).toBeLessThanOrEqual(120)
    const steps = run.moments.slice(1).map(({ seconds }, i) => seconds - run.moments[i]!.seconds)
    expect(steps).toEqual(steps.toSorted((a, b) => a - b))
    const levels = run.moments.map(({ pitMm }) => pitMm.get(pit)!)
    expect(levels).toEqual(levels.toSorted((a, b) => a - b))
    for (const shares of ['towerShare', 'drainShare'] as const)
      for (const part of run.moments[0]![shares].keys()) {
        expect(run.moments[0]![shares].get(part)).toBe(1)
        expect(run.moments.at(-1)![shares].get(part)).toBeLessThan(0.1)
      }
  })

  test('without a check valve mains come home too, and laterals back through the pump', () => {
    const without = stopPump(bay, { hasCheckValve: false })!
    expect(source(run, 'mains')).toBeUndefined()
    expect(source(without, 'mains').litres).toBeGreaterThan(gallons(6))
    expect(without.totalL).toBeGreaterThan(run.totalL)
    expect(source(without, 'laterals').beginsS).toBe(0)
    expect(only(without.pits).endMm).toBeGreaterThan(only(run.pits).endMm)
  })
})

describe('no water is lost', () => {
  const home = ({ pits, floorL }: StopRun): number =>
    [...pits.values()].reduce((sum, { homeL }) => sum + homeL, floorL)

  // An acre takes longer than a test is given.
  const slow = { timeout: 60_000 }

  test.each(Object.keys(scenarios))('in %s, with a check valve or without', slow, (name) => {
    const bay = bayOf(scenarios[name]!())
    for (const hasCheckValve of [true, false]) {
      const run = stopPump(bay, { hasCheckValve })!
      expect(Math.abs(home(run) / run.totalL - 1)).toBeLessThan(1e-3)
    }
  })

  test('nor where it runs over: what does not stay in the pit has gone through the overflow', () => {
    const run = stopped(withPit({ runningMm: inches(-15), makeUpMm: inches(-16) }))
    const pit = only(run.pits)
    expect(pit.state).toBe('Spills')
    const stays = gallons(17.766) * toInches(pit.endMm - pit.startMm)
    expect(Math.abs((stays + pit.overflowL + pit.overRimL) / run.totalL - 1)).toBeLessThan(2e-3)
    // It ends at the overflow but for the film that a pipe takes long over.
    expect(toInches(pit.endMm)).toBeGreaterThan(-13)
    expect(toInches(pit.endMm)).toBeLessThan(-12.9)
    expect(pit.overflowS).toBeGreaterThan(0)
    // 35.5 gal fit under the overflow (2 in of 17.77 gal), and about 100 come: nearly 65 must go.
    expect(toGallons(pit.overflowL)).toBeGreaterThan(50)
    expect(pit.overRimL).toBeLessThan(0.01)
  })

  test('nor when the pumps start again: with nothing spilt every pit comes back to its running level', () => {
    for (const name of ['kestrel-bend-house-2', 'lintel-lane-lean-to', 'old-dairy-corner']) {
      const bay = bayOf(scenarios[name]!())
      for (const hasCheckValve of [true, false]) {
        const run = stopPump(bay, { hasCheckValve })!
        for (const { part, settledMm } of restart(bay, run)!.pits.values()) {
          const { startMm, homeL, endMm } = run.pits.get(part)!
          expect(homeL).toBeGreaterThan(0)
          expect(Math.abs(settledMm - startMm) / (endMm - startMm)).toBeLessThan(3e-3)
        }
      }
    }
  })
})

describe('a stop', () => {
  test('is the same of a bay in a mirror', () => {
    const run = stopped(kestrelBend())
    const seen = stopped(mirroredBay(kestrelBend(), { axis: 'x', atMm: 0 }))
    expect(seen.totalL / run.totalL).toBeCloseTo(1, 6)
    expect(only(seen.pits).endMm).toBeCloseTo(only(run.pits).endMm, 3)
  })

  test('of towers that hold twice as much brings that much more', () => {
    const more = stopped(withPit({}, { towerHoldUpL: gallons(0.3) }))
    const run = stopped(kestrelBend())
    expect(toGallons(more.totalL - run.totalL)).toBeCloseTo(72, 6)
  })

  test('is nothing where no water runs', () => {
    expect(stopPump(bayOf(withPit({ pumps: 0 })))).toBeUndefined()
  })
})

describe('a start', () => {
  const bay = bayOf(kestrelBend())
  const run = stopPump(bay)!
  const start = restart(bay, run)!

  test('begins where the stop ended, and is lower once the lines are full, and lowest with all under way', () => {
    const pit = only(start.pits)
    expect(pit.startMm).toBeCloseTo(only(run.pits).endMm, 6)
    expect(pit.filledMm).toBeLessThan(pit.startMm)
    expect(pit.settledMm).toBeLessThan(pit.filledMm)
    expect(pit.lowestMm).toBeCloseTo(pit.settledMm, 1)
  })

  // HI 9.8: S = D (1 + 2.3 F); checks of pump submergence have 7.23 in for 1.61 in at 20 gpm and 5.93 in for 2.067 in at 20, 9.79 at 40. The
  // pump here gives 32 gpm through 2 in: between the two, over an intake at -35 in.
  test('does not suck air, and says from what level down it would', () => {
    const pit = only(start.pits)
    expect(pit.sucksAir).toBe(false)
    expect(toInches(pit.leastMm!)).toBeGreaterThan(-35 + 5.93)
    expect(toInches(pit.leastMm!)).toBeLessThan(-35 + 9.79)
  })

  test('after a spill stands lower than before it, and sucks air where the pit is run too shallow', () => {
    const low = bayOf(
      withPit({
        overflowMm: inches(-30),
        drainBackMm: inches(-31),
        runningMm: inches(-32),
        makeUpMm: inches(-33),
        lowAlarmMm: inches(-34),
        pumpOffMm: inches(-36),
        intakeMm: inches(-36),
      }),
    )
    const spilt = stopPump(low)!
    expect(only(spilt.pits).state).toBe('Spills')
    const again = only(restart(low, spilt)!.pits)
    expect(again.lowestMm).toBeLessThan(inches(-34))
    expect(again.isAlarm).toBe(true)
    expect(again.sucksAir).toBe(true)
    expect(again.lowestMm).toBeGreaterThanOrEqual(inches(-36) - 0.1)
  })

  test('takes as long as its lines take to fill', () => {
    expect(start.lastDripS).toBeGreaterThan(20)
    expect(start.lastDripS).toBeLessThan(toSeconds(5))
  })
})
