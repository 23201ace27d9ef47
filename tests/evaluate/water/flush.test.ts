import { describe, expect, test } from 'vitest'
import { endsByHand, flushLph, flushPlan } from '../../../src/evaluate/water/flush'
import { gph, gpm, toGpm } from '../../../src/units/flow'
import { inches } from '../../../src/units/length'
import { feetPerSecond } from '../../../src/units/velocity'
import { gallons } from '../../../src/units/volume'
import { type RowSketch, waterBay } from '../../support/waterBay'

// Worked table of the trade notes, hand arithmetic: what an open end of a bore takes, gpm, at 1, 1.5 and 2 ft/s.
test.each([
  [0.824, 1.7, 2.5, 3.3],
  [1.049, 2.7, 4.0, 5.4],
  [1.61, 6.4, 9.5, 12.7],
  [2.067, 10.5, 15.7, 20.9],
])('an end of %d in takes %d, %d and %d gpm', (boreIn, ...flows) => {
  ;[1, 1.5, 2].forEach((velocity, i) =>
    expect(Math.abs(toGpm(flushLph(inches(boreIn), feetPerSecond(velocity))) - flows[i]!)).toBeLessThan(0.06),
  )
})

// The same: (32 - 6.4) / 2.7 = 9.48, so 9 ends of 1 in.
test('by hand a pump of 32 gpm flushes nine 1 in ends beside towers that take 6.4', () => {
  expect(endsByHand(gpm(32), gpm(6.4), gpm(2.7))).toBe(9)
  expect(endsByHand(gpm(32), gpm(6.4), flushLph(inches(1.049)))).toBe(9)
  expect(endsByHand(gpm(5), gpm(6.4), gpm(2.7))).toBe(0)
})

/** A zone of so many laterals, each with a tower at its end, under a head box so high over the lateral ends. */
const zoneUnder = (overIn: number, laterals = 1, sketch: RowSketch = {}) => {
  let bay = waterBay()
    .box('B', 76 + overIn, { main: 'M', along: 0 })
    .main('M', [
      [0, 0],
      [130, 0],
    ])
  for (let i = 0; i < laterals; i += 1)
    bay = bay.row(`R${i}`, {
      stations: 24,
      towers: 1,
      first: 15,
      ...(i > 0 && { behind: 'R0' }),
      ...sketch,
    })
  return flushPlan(bay.inputs())
}

describe('one end', () => {
  // By hand: 30 ft of 0.824 in pipe at 1 ft/s (1.66 gpm), Hazen-Williams with C 150: 4.52 x 1.66^1.852 / (150^1.852 x
  // 0.824^4.8655) psi a foot is 0.65 ft in 100 ft, so 2.3 in; the velocity head at the end 0.19 in; valve and riser pipe of
  // 1 in 0.1 in. A lateral so slow loses up to a third more than that table says, and its 24 towers take half as much again
  // through its first half. From 2.6 to 4.4 in must therefore do.
  test('runs at 1 ft/s under 3 or 4 in of water', () => {
    expect(zoneUnder(2).zone('R0')).toMatchObject({ atOnce: 0, batches: 0, seconds: 0, litres: 0 })
    expect(zoneUnder(2).zone('R0')!.slowestMS).toBeLessThan(feetPerSecond(1))
    expect(zoneUnder(5).zone('R0')).toMatchObject({ atOnce: 1, batches: 1 })
    expect(zoneUnder(2.6).zone('R0')!.slowestMS).toBeLessThan(feetPerSecond(1.05))
    expect(zoneUnder(4.4).zone('R0')!.slowestMS).toBeGreaterThan(feetPerSecond(0.95))
  })

  // By hand: 36 in of 1 in riser pipe (1.049) and 30 ft of 0.824 in: 31.1 + 192.0 in3 are 0.966 gal.
  test('is open until the pipes have changed their water once, and 30 s more', () => {
    const { seconds, litres, endsLph } = zoneUnder(5).zone('R0')!
    const perSecond = endsLph / 3600
    expect(seconds).toBeCloseTo(gallons(0.966) / perSecond + 30, 0)
    expect(litres).toBeCloseTo(seconds * perSecond, 9)
  })

  // A trim valve is set for its towers, and burns what an open end would need; it is opened wide to flush.
  test('runs as if the trim valve stood wide open, wherever it is set', () => {
    expect(zoneUnder(5, 1, { valves: { trimTurns: 0.5 } }).zone('R0')).toEqual(zoneUnder(5).zone('R0'))
  })

  test('takes water from the towers', () => {
    const { towersLph } = zoneUnder(8).zone('R0')!
    expect(towersLph).toBeLessThan(24 * gph(4))
  })
})

describe('several ends', () => {
  const counts = [4, 6, 9, 14, 30].map((overIn) => zoneUnder(overIn, 5).zone('R0')!)

  test('are the more at once the higher the water stands, and never more than there are', () => {
    const atOnce = counts.map((count) => count.atOnce)
    expect(atOnce).toEqual(atOnce.toSorted((a, b) => a - b))
    expect(atOnce[0]).toBeLessThan(5)
    expect(atOnce.at(-1)).toBe(5)
    for (const { ends } of counts) expect(ends).toEqual(['R0', 'R1', 'R2', 'R3', 'R4'])
  })

  test('all run fast enough as long as they are counted', () => {
    for (const { atOnce, slowestMS, batches, endsLph } of counts) {
      if (atOnce === 0) continue
      expect(slowestMS).toBeGreaterThanOrEqual(feetPerSecond(1))
      expect(endsLph).toBeGreaterThanOrEqual(atOnce * flushLph(inches(0.824)) * (1 - 1e-9))
      expect(batches).toBe(Math.ceil(5 / atOnce))
    }
  })
})

test('plugged ends can not be flushed, and a bay without water has nothing to say', () => {
  const inputs = waterBay()
    .box('B', 100, { main: 'M', along: 0 })
    .main('M', [
      [0, 0],
      [130, 0],
    ])
    .row('A')
    .inputs()
  const [built] = inputs.built.filter(({ part }) => part === 'A')
  const feed = {
    ...built!.feed!,
    laterals: built!.feed!.laterals.map((lateral) => ({
      ...lateral,
      ends: lateral.ends.map((end) => ({ ...end, flush: 'none' as const })),
    })),
  }
  const plugged = inputs.built.map((each) => (each.part === 'A' ? { ...each, feed } : each))
  const plan = flushPlan({
    ...inputs,
    built: plugged,
    builtOf: new Map(plugged.map((each) => [each.part, each])),
  })
  expect(plan.zones).toEqual(['A'])
  expect(plan.zone('A')).toBeUndefined()
  const dry = flushPlan(waterBay().row('A').inputs())
  expect(dry.zone('A')).toBeUndefined()
  expect(dry.mains()).toEqual([])
})

describe('a main', () => {
  // The head box stands at its first end; the other is capped, a row's tee or not.
  const mainsOf = (length: number, overIn: number) =>
    flushPlan(
      waterBay()
        .box('B', 84 + overIn, { main: 'M', along: 0 })
        .main('M', [
          [0, 0],
          [length, 0],
        ])
        .row('A', { along: 120 })
        .inputs(),
    ).mains()

  test('is flushed at its free end alone, for a minute', () => {
    for (const length of [120, 400]) {
      const mains = mainsOf(length, 24)
      expect(mains).toHaveLength(1)
      const [{ flowLph, litres, velocityMS, isFastEnough, at }] = mains as [(typeof mains)[0]]
      expect(at.x).toBeCloseTo(inches(length), 6)
      expect(litres).toBeCloseTo(flowLph / 60, 9)
      expect(isFastEnough).toBe(velocityMS >= feetPerSecond(1.5))
    }
  })

  test('too long for its head runs too slow', () => {
    expect(mainsOf(400, 24)[0]!.isFastEnough).toBe(true)
    expect(mainsOf(8000, 1)[0]!.isFastEnough).toBe(false)
  })
})
