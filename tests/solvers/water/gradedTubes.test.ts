import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { Pipe } from '../../../src/solvers/water/friction'
import { gradedCut, type GradedWish, type UncutLateral } from '../../../src/solvers/water/gradedCut'
import { gradedGroups, gradedLengths, type TubeGroup } from '../../../src/solvers/water/gradedTubes'
import { headLineTaking, lateralOf } from '../../../src/solvers/water/lateral'
import { waterAt } from '../../../src/solvers/water/properties'
import { TUBE_LOSS_K, tubeFlowM3S } from '../../../src/solvers/water/tube'
import { evennessOf } from '../../../src/solvers/water/uniformity'
import { gphM3S, inchesM } from '../../support/hydraulics'

const { kinematicM2S } = waterAt(20)
const stock = { boreM: inchesM(0.125), lossK: TUBE_LOSS_K }

/** The worked lateral: 24 stations of 2 towers at 15 in along 3/4 in pipe (0.824), 0.05 m of pipe more for each barb. */
const straight: UncutLateral = {
  pipes: Array.from({ length: 24 }, () => ({
    lengthM: inchesM(15) + 2 * 0.05,
    boreM: inchesM(0.824),
    lossK: 0,
  })),
  towers: Array<number>(24).fill(2),
  outletM: Array<number>(24).fill(0),
}

const wish: GradedWish = {
  flowM3S: gphM3S(4),
  shortestM: inchesM(36),
  stock,
  mostGroups: 4,
  stepM: inchesM(1),
}

const linesWith = (lateral: UncutLateral, lengthsIn: readonly number[]) => {
  const tubes = lengthsIn.map((each): Pipe => ({ ...stock, lengthM: inchesM(each) }))
  return headLineTaking(lateralOf({ ...lateral, tubes }, kinematicM2S), 48 * wish.flowM3S)
}

const spreadWith = (lengthsIn: readonly number[]): number =>
  evennessOf(linesWith(straight, lengthsIn).drawM3S)!.spread

const lengthsIn = (groups: readonly TubeGroup[]): number[] =>
  groups.flatMap(({ count, lengthM }) => Array<number>(count).fill(lengthM / inchesM(1)))

const cut = gradedCut(straight, wish, kinematicM2S)!

describe('the worked lateral of the trade notes, hand arithmetic', () => {
  test('of exact lengths from 58-1/2 to 36 in is even', () => {
    const exactIn = [...cut.exactM].map((each) => each / inchesM(1))
    expect(Math.abs(exactIn[0]! - 58.5)).toBeLessThan(0.2)
    expect(exactIn.at(-1)).toBeCloseTo(36, 9)
    exactIn.slice(1).forEach((each, i) => expect(each).toBeLessThanOrEqual(exactIn[i]! + 1e-9))
    expect(spreadWith(exactIn)).toBeLessThan(1e-6)
  })

  test('of 3, 4, 5 and 12 stations at 56, 49, 42 and 37 in spreads by 9.5 percent, and by 31.6 of one length', () => {
    const theirs = [
      [3, 56],
      [4, 49],
      [5, 42],
      [12, 37],
    ].flatMap(([count, length]) => Array<number>(count!).fill(length!))
    expect(100 * spreadWith(theirs)).toBeCloseTo(9.5, 1)
    expect(100 * spreadWith(Array<number>(24).fill(36))).toBeCloseTo(31.6, 0)
  })

  // The search finds 3, 4, 4 and 13 stations at 53, 46, 40 and 36 in: 9.05 percent, with shorter tubes.
  test('of the groups that are found spreads by less', () => {
    expect(cut.groups).toHaveLength(4)
    expect(100 * cut.spread).toBeLessThan(9.5)
    expect(spreadWith(lengthsIn(cut.groups))).toBeCloseTo(cut.spread, 9)
  })

  test('has nothing better beside what is found: no length an inch, no bound a station off', () => {
    const found = lengthsIn(cut.groups)
    const others = cut.groups.flatMap((group, i) => {
      const changed = (by: number) =>
        lengthsIn(
          cut.groups.map((each, j) => (i === j ? { ...each, lengthM: each.lengthM + inchesM(by) } : each)),
        )
      const { first } = group
      const earlier = found.with(first - 1, found[first]!)
      const later = found.with(first, found[first - 1]!)
      return [changed(-1), changed(1), ...(i === 0 ? [] : [earlier, later])]
    })
    const isNoLonger = (each: readonly number[]) => Math.min(...each) <= Math.min(...found)
    for (const other of others.filter(isNoLonger))
      expect(spreadWith(other)).toBeGreaterThanOrEqual(cut.spread - 1e-9)
  })

  test('is the more even the more colours, from 31.6 percent down', () => {
    const spreads = [1, 2, 3, 4, 5, 6].map(
      (mostGroups) => gradedCut(straight, { ...wish, mostGroups }, kinematicM2S)!.spread,
    )
    spreads.slice(1).forEach((each, i) => expect(each).toBeLessThan(spreads[i]!))
  })
})

describe('tubes cut by station', () => {
  test('stand in whole steps, cover every station once, and meet the target on the average', () => {
    const half = gradedCut(straight, { ...wish, stepM: inchesM(0.5) }, kinematicM2S)!
    expect(half.groups.reduce((next, { first, count }) => (first === next ? next + count : NaN), 0)).toBe(24)
    for (const { lengthM } of half.groups)
      expect(lengthM / inchesM(0.5)).toBeCloseTo(Math.round(lengthM / inchesM(0.5)), 9)
    expect(half.line.inletM3S / (48 * wish.flowM3S)).toBeCloseTo(1, 8)
  })

  test('are a step long at least', () => {
    const coarse = gradedCut(straight, { ...wish, shortestM: 0.01, stepM: 1 }, kinematicM2S)!
    expect(coarse.groups.map(({ lengthM }) => lengthM)).toEqual([1])
  })

  // An outlet an inch lower sees an inch more head. At 4 gph and 20 °C 1 in of head is 1 / (7.06 - 0.85) of 36 in: 5.8 in.
  test('make up for an outlet that hangs low', () => {
    const outletM = straight.outletM.with(23, -inchesM(1))
    const { exactM } = gradedCut({ ...straight, outletM }, wish, kinematicM2S)!
    expect(exactM.at(-1)! / inchesM(1) - exactM.at(-2)! / inchesM(1)).toBeCloseTo(5.8, 1)
  })

  test('of a lateral without stations, or without head at one, are none', () => {
    const none = { pipes: [], towers: [], outletM: [] }
    expect(gradedCut(none, wish, kinematicM2S)).toBeUndefined()
    expect(gradedGroups(Float64Array.of(0.2, -0.1), wish.flowM3S, stock, kinematicM2S, wish)).toBeUndefined()
  })
})

/** Least spread of a few stations' flows and the target, by trying every cut into groups with every length. */
const leastSpread = (headM: Float64Array, mostGroups: number, lengths: readonly number[]): number => {
  const flows = Array.from(headM, (head) =>
    lengths.map((lengthM) => tubeFlowM3S(head, { ...stock, lengthM }, kinematicM2S)),
  )
  let best = Infinity
  const place = (station: number, length: number, groups: number, least: number, most: number): void => {
    if (station === flows.length) {
      best = Math.min(best, (most - least) / most)
      return
    }
    lengths.forEach((_, next) => {
      const used = next === length ? groups : groups + 1
      const flow = flows[station]![next]!
      if (used <= mostGroups) place(station + 1, next, used, Math.min(least, flow), Math.max(most, flow))
    })
  }
  place(0, -1, 0, wish.flowM3S, wish.flowM3S)
  return best
}

test('no cut into groups is better at the heads given: against every possible cut', () => {
  const arbitraryHeads = fc.array(fc.double({ min: 0.15, max: 0.3, noNaN: true }), {
    minLength: 1,
    maxLength: 5,
  })
  fc.assert(
    fc.property(arbitraryHeads, fc.integer({ min: 1, max: 3 }), (heads, mostGroups) => {
      const headM = Float64Array.from(heads)
      const stepM = inchesM(4)
      const exact = gradedLengths(headM, wish.flowM3S, stock, kinematicM2S)
      const [low, high] = [Math.floor(Math.min(...exact) / stepM), Math.ceil(Math.max(...exact) / stepM)]
      const lengths = Array.from({ length: high - low + 1 }, (_, i) => (low + i) * stepM)
      const found = gradedGroups(headM, wish.flowM3S, stock, kinematicM2S, { mostGroups, stepM })!
      expect(found.spread).toBeCloseTo(leastSpread(headM, mostGroups, lengths), 12)
      expect(found.groups.length).toBeLessThanOrEqual(mostGroups)
    }),
    { seed: 51, numRuns: 60 },
  )
})
