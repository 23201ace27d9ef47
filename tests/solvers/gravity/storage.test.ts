import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { type Cascade, type Store, storageSteps } from '../../../src/solvers/gravity/storage'
import { emptiesIn, emptyingPower, filling, linear, powerLaw } from '../../../src/solvers/gravity/storageLaws'
import { gpm } from '../../../src/units/flow'
import { inches } from '../../../src/units/length'
import { inchesPerFoot } from '../../../src/units/slope'

const sum = (litres: ArrayLike<number>): number => Array.from(litres).reduce((all, each) => all + each, 0)

const end: Store = { litres: 0, outlets: [] }

const run = (cascade: Cascade, times: readonly number[], close?: number) => [
  ...storageSteps(cascade, times, close === undefined ? {} : { close }),
]

describe('against closed forms', () => {
  // One linear reservoir empties as S = S0 exp(-k t), Maillet (1905): any text on hydrology. 100 L at k = 1/300 s: after 300 s
  // 36.788 L are left, after 600 s 13.534, after 1,200 s 1.832.
  test('one linear store empties exponentially', () => {
    const seen = run(
      { stores: [{ litres: 100, outlets: [{ to: 1, letGo: linear(1 / 300) }] }, end] },
      [300, 600, 1200],
    )
    expect(seen.map(([left]) => left)).toEqual([
      expect.closeTo(36.788, 1),
      expect.closeTo(13.534, 1),
      expect.closeTo(1.832, 1),
    ])
  })

  // Two like linear stores in line, Nash, IASH Publication 45 (1957): the second holds S0 k t exp(-k t), most at t = 1/k, S0 / e.
  test('of two like linear stores the second is fullest after one time constant, with 1/e of the water', () => {
    const k = 1 / 120
    const seen = run(
      {
        stores: [
          { litres: 50, outlets: [{ to: 1, letGo: linear(k) }] },
          { litres: 0, outlets: [{ to: 2, letGo: linear(k) }] },
          end,
        ],
      },
      [60, 120, 240],
      1e-6,
    )
    // 50 x 0.5 exp(-0.5) = 15.163; 50 / e = 18.394; 50 x 2 exp(-2) = 13.534.
    expect(seen.map(([, second]) => second)).toEqual([
      expect.closeTo(15.163, 2),
      expect.closeTo(18.394, 2),
      expect.closeTo(13.534, 2),
    ])
  })

  // A tank of straight sides through a hole in its bottom lets go as the root of what is left, and is empty after twice the time
  // that it would take at its first flow (Torricelli): 40 L at 2 L/s first are gone after 40 s, a quarter of them left after 20.
  test('a tank runs through a hole in twice the time of its first flow', () => {
    const seen = run(
      { stores: [{ litres: 40, outlets: [{ to: 1, letGo: powerLaw(40, 2, 0.5) }] }, end] },
      [20, 41],
      1e-6,
    )
    expect(seen[0]![0]).toBeCloseTo(10, 2)
    expect(seen[1]![0]).toBeLessThan(0.01)
  })

  // What comes in steadily stands, in the end, where as much goes out: 3 L/s at k = 0.1 is 30 L.
  test('a store fed steadily comes to rest where it lets as much go', () => {
    const seen = run(
      { stores: [{ litres: 0, inLps: 3, outlets: [{ to: 1, letGo: linear(0.1) }] }, end] },
      [600],
    )
    expect(seen[0]![0]).toBeCloseTo(30, 3)
  })
})

/** Any cascade of up to six stores, each with up to two ways on, into a last one; with pumps that lift from it to any. */
const anyCascade = fc
  .array(
    fc.record({
      litres: fc.double({ min: 0, max: 400, noNaN: true }),
      flow: fc.double({ min: 0.01, max: 5, noNaN: true }),
      power: fc.double({ min: 0.5, max: 4, noNaN: true }),
      skip: fc.nat(3),
    }),
    { minLength: 1, maxLength: 6 },
  )
  .map((made): Cascade => ({
    stores: [
      ...made.map(({ litres, flow, power, skip }, i): Store => {
        const letGo = powerLaw(Math.max(litres, 1), flow, power)
        const on = [i + 1, Math.min(i + 1 + skip, made.length)]
        return { litres, outlets: on.map((to) => ({ to, letGo })) }
      }),
      end,
    ],
  }))

const withPump = (cascade: Cascade, lps: number, keepsL: number): Cascade => ({
  ...cascade,
  lifts: [{ from: cascade.stores.length - 1, to: 0, lps, keepsL }],
})

const TIMES = [1, 10, 60, 300, 1800, 7200]

describe('of any cascade', () => {
  test('no litre is lost or made, and no store holds less than nothing, with pumps and without', () => {
    fc.assert(
      fc.property(anyCascade, fc.double({ min: 0, max: 3, noNaN: true }), (cascade, lps) => {
        const all = sum(cascade.stores.map(({ litres }) => litres))
        for (const each of [cascade, withPump(cascade, lps, 5)])
          for (const litres of run(each, TIMES.slice(0, 5))) {
            expect(Math.abs(sum(litres) - all)).toBeLessThanOrEqual(1e-9 * Math.max(all, 1))
            expect(Math.min(...litres)).toBeGreaterThanOrEqual(0)
          }
      }),
      { seed: 4101, numRuns: 20 },
    )
  })

  test('the last store only rises', () => {
    fc.assert(
      fc.property(anyCascade, (cascade) => {
        const last = run(cascade, TIMES).map((litres) => litres.at(-1)!)
        expect(last).toEqual(last.toSorted((a, b) => a - b))
      }),
      { seed: 4102, numRuns: 60 },
    )
  })

  test('steps a hundred times closer say the same to a thousandth of the water', () => {
    fc.assert(
      fc.property(anyCascade, (cascade) => {
        const all = Math.max(sum(cascade.stores.map(({ litres }) => litres)), 1)
        const [wide, close] = [run(cascade, TIMES), run(cascade, TIMES, 1e-7)]
        wide.forEach((litres, i) =>
          litres.forEach((each, store) =>
            expect(Math.abs(each - close[i]![store]!)).toBeLessThan(1e-3 * all),
          ),
        )
      }),
      { seed: 4103, numRuns: 25 },
    )
  })

  test('how many times are asked for on the way changes nothing that matters', () => {
    const cascade = withPump(
      {
        stores: [
          { litres: 90, outlets: [{ to: 1, letGo: linear(0.01) }] },
          { litres: 30, outlets: [] },
        ],
      },
      0.2,
      10,
    )
    const many = Array.from({ length: 600 }, (_, i) => i + 1)
    expect(run(cascade, many).at(-1)![0]).toBeCloseTo(run(cascade, [600])[0]![0]!, 1)
  })

  test('that runs back to an earlier store without a pump is refused', () => {
    const backward: Cascade = { stores: [end, { litres: 1, outlets: [{ to: 0, letGo: linear(1) }] }] }
    expect(() => run(backward, [1])).toThrow('Store 1 of 2 runs to 0')
  })
})

describe('laws', () => {
  // 0.15 gal at 4 gph is through in 2.25 min; that 95 % is out after 20 takes a tail that an exponential of the first flow, e-fold
  // in 2.25 min and 95 % out in 6.7, does not have.
  test('a tower lets its running flow go at first, and all but a twentieth in its time', () => {
    const [held, lps] = [0.568, 0.568 / 135]
    const letGo = emptiesIn(held, lps, 0.05, 1200)
    expect(letGo(held)).toBeCloseTo(lps, 8)
    const [left] = run({ stores: [{ litres: held, outlets: [{ to: 1, letGo }] }, end] }, [1200], 1e-7)
    expect(left![0]! / held).toBeCloseTo(0.05, 3)
  })

  test('a tower whose time suits its flow as an exponential does is one', () => {
    // ln 20 = 2.9957 time constants.
    const letGo = emptiesIn(10, 0.1, 0.05, 2.9957 * 100)
    expect(letGo(5)).toBeCloseTo(0.05, 4)
    expect(letGo(1)).toBeCloseTo(0.01, 4)
  })

  test('a tower that could not be out in time at its own flow still is', () => {
    const letGo = emptiesIn(100, 0.01, 0.05, 600)
    const [left] = run({ stores: [{ litres: 100, outlets: [{ to: 1, letGo }] }, end] }, [600], 1e-6)
    expect(left![0]! / 100).toBeCloseTo(0.05, 2)
  })

  // Wide shallow water by Manning: flow as depth, and so as area, to 5/3 (Chow, Open-channel hydraulics (1959), section 18-7).
  test('wide shallow water lets go to the power 5/3', () => {
    const wide = { shape: 'trapezoid', bottomMm: 5000, topMm: 5000, heightMm: 500 } as const
    expect(emptyingPower(wide, gpm(20), inchesPerFoot(1 / 16), 0.01)).toBeCloseTo(5 / 3, 2)
  })

  // Manning's capacities by depth, ASCE Manual 37 (1969), from memory: at 0.2 of the bore 8.8 % of full flow in 14.2 % of full area, at
  // 0.3 19.6 % in 25.2 %: a power of ln(19.6 / 8.8) / ln(25.2 / 14.2) = 1.40.
  test('a pipe a quarter full lets go to a power of 1.4', () => {
    const pipe = { shape: 'circle', diameterMm: inches(4.06) } as const
    expect(Math.abs(emptyingPower(pipe, gpm(16), inchesPerFoot(1 / 8), 0.01) - 1.4)).toBeLessThan(0.05)
  })

  test('a channel that does not fall has the usual power', () => {
    const pipe = { shape: 'circle', diameterMm: inches(4.06) } as const
    expect(emptyingPower(pipe, gpm(16), 0, 0.01)).toBeCloseTo(1.49, 2)
  })

  test('a pipe that fills lets nothing go at first, and in the end all that comes', () => {
    const letGo = filling(6, 10, 2)
    expect([0, 6, 8, 10].map(letGo)).toEqual([0, 0, 1, 2])
  })
})
