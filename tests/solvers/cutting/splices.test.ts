import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { firstPlan } from '../../../src/solvers/cutting/firstPlan'
import { joinRun, joinRuns } from '../../../src/solvers/cutting/splices'
import { cutFrom, exact, inch, pieces } from './sampleLumber'
import { faultsOf } from './verifier'

const close = { gapTicks: 0, leastTicks: inch(1) }

const runIn = (runIn: number, longestIn: number, gapIn = 0, leastIn = 1) => {
  const run = joinRun(inch(runIn), inch(longestIn), { gapTicks: inch(gapIn), leastTicks: inch(leastIn) })
  return run && [run.joints, ...run.pieces.map(({ lengthTicks, count }) => [lengthTicks / inch(1), count])]
}

// All hand arithmetic, inches: joints first, then lengths and counts.
describe('a run', () => {
  test('no longer than a length of stock has no joint', () => {
    expect(runIn(119, 120)).toEqual([0, [119, 1]])
    expect(runIn(120, 120)).toEqual([0, [120, 1]])
  })

  test('is whole lengths and a rest', () => {
    expect(runIn(121, 120)).toEqual([1, [120, 1], [1, 1]])
    expect(runIn(360, 120)).toEqual([2, [120, 3]])
    expect(runIn(384, 120)).toEqual([3, [120, 3], [24, 1]])
  })

  test('of gutter, 1/4 in left at each joiner as it grows (common practice, no source)', () => {
    // 3 x 120 + 2/4 = 360-1/2: a run of 360 ends half an inch short in its last length.
    expect(runIn(360, 120, 1 / 4)).toEqual([2, [120, 2], [119.5, 1]])
    expect(runIn(360.5, 120, 1 / 4)).toEqual([2, [120, 3]])
  })

  test('of bell pipe, each end 2 in in the bell before it', () => {
    // 3 x 120 - 2 x 2 = 356 is the longest run of three; 357 takes a fourth, 3 in from its bell: 357 - 360 + 3 x 2.
    expect(runIn(356, 120, -2)).toEqual([2, [120, 3]])
    expect(runIn(357, 120, -2)).toEqual([3, [120, 3], [3, 1]])
  })

  test('has no stub that holds no joint: the length before it gives way', () => {
    expect(runIn(242, 120, 0, 6)).toEqual([2, [120, 1], [116, 1], [6, 1]])
  })

  test('that a joint alone would end still has a piece after it', () => {
    // 240-1/8 with a gap of 1/4: two pieces reach 240-1/4, so 239-7/8 in two.
    expect(runIn(240.125, 120, 1 / 4)).toEqual([1, [120, 1], [119.875, 1]])
    // 240-3/8 needs a third, and the three are 240-3/8 - 1/2 = 239-7/8 together.
    expect(runIn(240.375, 120, 1 / 4)).toEqual([2, [120, 1], [118.875, 1], [1, 1]])
  })

  test('is none where its pieces can be neither so long nor so short', () => {
    expect(runIn(121, 120, 0, 61)).toBeUndefined()
    expect(runIn(500, 120, -120)).toBeUndefined()
    expect(runIn(500, 120, 0, 121)).toBeUndefined()
  })

  test('adds up to its length, each piece as long as it may be, and no fewer joints would reach', () => {
    const runs = fc.record({
      run: fc.integer({ min: 1, max: 2000 }),
      longest: fc.integer({ min: 20, max: 120 }),
      gapTicks: fc.integer({ min: -9, max: 9 }),
      leastTicks: fc.integer({ min: 1, max: 12 }),
    })
    fc.assert(
      fc.property(runs, ({ run, longest, gapTicks, leastTicks }) => {
        const joined = joinRun(run, longest, { gapTicks, leastTicks })
        if (joined === undefined) return
        const lengths = joined.pieces.flatMap(({ lengthTicks, count }) =>
          Array<number>(count).fill(lengthTicks),
        )
        const { joints } = joined
        expect(lengths.length).toBe(joints + 1)
        expect(lengths.reduce((sum, length) => sum + length, joints * gapTicks)).toBe(run)
        expect(Math.max(...lengths)).toBeLessThanOrEqual(longest)
        if (joints > 0) expect(Math.min(...lengths)).toBeGreaterThanOrEqual(leastTicks)
        if (joints > 0) expect(joints * longest + (joints - 1) * gapTicks).toBeLessThan(run)
      }),
      { seed: 20261126, numRuns: 3000 },
    )
  })
})

describe('runs among other pieces', () => {
  test('longer than any board are joined of pieces that are cut like others', () => {
    // Four runs of 30 ft 2 in of gutter from 10 and 20 ft: a twenty and 122 in, one joint each. 122 in come of a twenty
    // each; the 10 in that two brackets want come from their rests.
    const wanted = [{ ...pieces(4, 362), mayJoin: close }, pieces(2, 10)]
    const joined = joinRuns(cutFrom([120, 240], wanted, { kerf: 0 }))
    expect(joined.joints).toEqual([4, 0])
    expect(joined.of).toEqual([0, 0, 1])
    expect(joined.problem.pieces.map(({ lengthTicks, count }) => [lengthTicks / inch(1), count])).toEqual([
      [240, 4],
      [122, 4],
      [10, 2],
    ])
    const plan = firstPlan(joined.problem)
    expect(plan.unmade).toEqual([])
    expect(plan.boardCount).toBe(8)
    expect(faultsOf(plan, joined.problem)).toEqual([])
  })

  test('without a joint are told too long, in the plan', () => {
    const { problem, joints } = joinRuns(cutFrom([120], [pieces(2, 130), pieces(1, 50)]))
    expect(joints).toEqual([0, 0])
    expect(firstPlan(problem).unmade).toEqual([{ piece: 0, count: 2, why: 'too-long' }])
  })

  test('that tolerance brings to the length of a board stay in one piece', () => {
    const asked = cutFrom([120], [{ ...pieces(2, 120.125, exact, 1 / 4), mayJoin: close }])
    expect(joinRuns(asked).problem).toEqual(asked)
  })

  test('of which no stock is on offer, or no piece holds a joint, stay as they are', () => {
    const none = cutFrom([], [{ ...pieces(1, 200), mayJoin: close }])
    expect(joinRuns(none).problem).toEqual(none)
    const stubs = cutFrom([120], [{ ...pieces(1, 121), mayJoin: { gapTicks: 0, leastTicks: inch(61) } }])
    expect(firstPlan(joinRuns(stubs).problem).unmade).toEqual([{ piece: 0, count: 1, why: 'too-long' }])
  })
})
