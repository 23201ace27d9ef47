import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { firstPlan } from '../../../../src/solvers/cutting/firstPlan'
import { fewerPatterns } from '../../../../src/solvers/cutting/patterns/fewerPatterns'
import { cutBoard, planOf } from '../../../../src/solvers/cutting/plan'
import type { CuttingPlan } from '../../../../src/solvers/cutting/plan'
import type { CuttingProblem, Piece, PieceRule, Stock } from '../../../../src/solvers/cutting/problem'
import { seeded } from '../prove/recipes'
import { cutFrom, exact, pieces } from '../sampleLumber'
import { faultsOf } from '../verifier'

const SEED = 20261126
const BUDGET = 2e7

const problemOf = (lengths: readonly (readonly [length: number, count: number])[], board: number) => ({
  pieces: lengths.map(([lengthTicks, count]): Piece => ({ lengthTicks, count, minusTicks: 0, rule: exact })),
  stocks: [{ lengthTicks: board }],
  saw: { kerfTicks: 0, trimTicks: 0 },
})

/** A plan of boards of the first stock, each as how often it is cut and how many of each piece are on it. */
const planOfCounts = (
  boards: readonly (readonly [times: number, ...counts: number[]])[],
  problem: CuttingProblem,
): CuttingPlan =>
  planOf(
    boards.map(([times, ...counts]) => {
      const cuts = counts.map((count, piece) => ({
        piece,
        lengthTicks: problem.pieces[piece]!.lengthTicks,
        count,
      }))
      return cutBoard(
        0,
        times,
        cuts.filter(({ count }) => count > 0),
        problem,
      )
    }),
    [],
    problem,
  )

const valuesOf = ({ cost, boardCount, boughtTicks }: CuttingPlan) => [cost, boardCount, boughtTicks]

/** On each board, as how often it is cut and the counts of its pieces. */
const shapesOf = ({ boards }: CuttingPlan) =>
  boards.map(
    ({ count, cuts }) => `${count} x ${cuts.map((cut) => `${cut.count} of ${cut.piece}`).join(' + ')}`,
  )

describe('by hand', () => {
  test('two patterns made one: 2 x 50 and 2 x 40 from 100 are twice 50 + 40', () => {
    const problem = problemOf(
      [
        [50, 2],
        [40, 2],
      ],
      100,
    )
    const plan = planOfCounts(
      [
        [1, 2, 0],
        [1, 0, 2],
      ],
      problem,
    )
    expect(shapesOf(fewerPatterns(plan, problem, BUDGET))).toEqual(['2 x 1 of 0 + 1 of 1'])
  })

  test('three patterns made two: 3 x 33, 3 x 32 and 33 + 32 + 31 from 99', () => {
    // 4 of 33, 4 of 32 and 1 of 31 on three boards. One pattern thrice can't be, as the 31 is there but once; so one board has it, and
    // two are alike: 2 p + q = 4 of 33 and of 32 each, so p is 1 or 2 (with q 2 or 0), and 31 with 2 + 2 others does not fit.
    const problem = problemOf(
      [
        [33, 4],
        [32, 4],
        [31, 1],
      ],
      99,
    )
    const plan = planOfCounts(
      [
        [1, 3, 0, 0],
        [1, 0, 3, 0],
        [1, 1, 1, 1],
      ],
      problem,
    )
    const fewer = fewerPatterns(plan, problem, BUDGET)
    expect(faultsOf(fewer, problem)).toEqual([])
    expect(valuesOf(fewer)).toEqual(valuesOf(plan))
    expect(fewer.boards.map(({ count }) => count).sort((a, b) => a - b)).toEqual([1, 2])
  })

  test('nothing simpler: the very plan', () => {
    const problem = problemOf([[60, 4]], 100)
    const plan = planOfCounts([[4, 1]], problem)
    expect(fewerPatterns(plan, problem, BUDGET)).toBe(plan)
  })

  test('no work to spend: the very plan', () => {
    const problem = problemOf(
      [
        [50, 2],
        [40, 2],
      ],
      100,
    )
    const plan = planOfCounts(
      [
        [1, 2, 0],
        [1, 0, 2],
      ],
      problem,
    )
    expect(fewerPatterns(plan, problem, 0)).toBe(plan)
  })
})

const stocksOf: fc.Arbitrary<Stock[]> = fc.array(
  fc
    .record({ lengthTicks: fc.constantFrom(30, 42, 60, 77), cost: fc.integer({ min: 0, max: 90 }) })
    .chain((stock) =>
      fc
        .constantFrom(undefined, undefined, 1, 2, 5)
        .map((most): Stock => (most === undefined ? stock : { ...stock, most })),
    ),
  { minLength: 1, maxLength: 3 },
)

const ruleOf: fc.Arbitrary<PieceRule> = fc.constantFrom<PieceRule>(
  exact,
  exact,
  exact,
  { kind: 'equal-parts', parts: 2, stockTicks: 60 },
  { kind: 'uncut', stockTicks: 42 },
)

const pieceOf: fc.Arbitrary<Piece> = fc
  .record({
    lengthTicks: fc.integer({ min: 4, max: 60 }),
    count: fc.integer({ min: 0, max: 12 }),
    minusTicks: fc.constantFrom(0, 0, 1, 3),
    plusTicks: fc.constantFrom(undefined, undefined, 0, 2),
    rule: ruleOf,
  })
  .map(({ plusTicks, ...piece }) => (plusTicks === undefined ? piece : { ...piece, plusTicks }))
  .map((piece) => (piece.rule.kind === 'equal-parts' ? { ...piece, lengthTicks: 29 } : piece))

const problems: fc.Arbitrary<CuttingProblem> = fc.record({
  pieces: fc.array(pieceOf, { maxLength: 7 }),
  stocks: stocksOf,
  saw: fc.record({ kerfTicks: fc.integer({ min: 0, max: 3 }), trimTicks: fc.constantFrom(0, 0, 1, 2) }),
})

describe('any plan', () => {
  test('can be sawn as it stands, costs and buys the same, and has no more patterns', () => {
    fc.assert(
      fc.property(problems, (problem) => {
        const plan = firstPlan(problem)
        // A stick for a piece whose longer boards rules take away is no matter of patterns.
        fc.pre(faultsOf(plan, problem).length === 0)
        const fewer = fewerPatterns(plan, problem, BUDGET)
        expect(faultsOf(fewer, problem)).toEqual([])
        expect(valuesOf(fewer)).toEqual(valuesOf(plan))
        expect(fewer.bought).toEqual(plan.bought)
        expect(fewer.unmade).toBe(plan.unmade)
        expect(fewer.boards.length).toBeLessThanOrEqual(plan.boards.length)
        expect(fewerPatterns(plan, problem, BUDGET)).toEqual(fewer)
      }),
      { seed: SEED, numRuns: 600 },
    )
  })

  test('no piece is cut short that was cut as drawn', () => {
    fc.assert(
      fc.property(problems, (problem) => {
        const isShort = (plan: CuttingPlan, index: number): boolean =>
          plan.boards.some(({ cuts }) =>
            cuts.some(
              ({ piece, lengthTicks }) => piece === index && lengthTicks < problem.pieces[index]!.lengthTicks,
            ),
          )
        const plan = firstPlan(problem)
        const fewer = fewerPatterns(plan, problem, BUDGET)
        for (const index of problem.pieces.keys())
          if (isShort(fewer, index)) expect(isShort(plan, index)).toBe(true)
      }),
      { seed: SEED + 1, numRuns: 400 },
    )
  })
})

test('ten seeded take-offs of forty of each at the most, from three stocks: fewer patterns in all', () => {
  const takeOff = (seed: number): CuttingProblem => {
    const chance = seeded(seed)
    const lines = Array.from({ length: 12 }, () =>
      pieces(1 + Math.floor(chance() * 40), 8 + Math.round(chance() * 1600) / 16),
    )
    return cutFrom([96, 120, 144], lines)
  }
  let before = 0
  let after = 0
  for (let seed = 1; seed <= 10; seed += 1) {
    const problem = takeOff(seed * 7919)
    const plan = firstPlan(problem)
    before += plan.boards.length
    after += fewerPatterns(plan, problem, BUDGET).boards.length
  }
  expect(after).toBeLessThan(before)
})
