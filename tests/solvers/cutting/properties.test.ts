import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { firstPlan } from '../../../src/solvers/cutting/firstPlan'
import { lowerBound } from '../../../src/solvers/cutting/lowerBound'
import type { CuttingPlan } from '../../../src/solvers/cutting/plan'
import type { CuttingProblem, Piece, PieceRule } from '../../../src/solvers/cutting/problem'
import { leastBought } from './bruteForce'
import { faultsOf } from './verifier'

const SEED = 20260418

/** Small whole lengths, so that pieces often just fit, just don't, or leave a sliver. */
const stocksOf = fc.uniqueArray(fc.integer({ min: 20, max: 60 }), { minLength: 1, maxLength: 3 })
const saws = fc.record({
  kerfTicks: fc.integer({ min: 0, max: 3 }),
  trimTicks: fc.constantFrom(0, 0, 0, 1, 2),
})

const ruleFor = (stocks: readonly number[]): fc.Arbitrary<PieceRule> => {
  const stockTicks = fc.constantFrom(...stocks, 77)
  return fc.oneof(
    { weight: 4, arbitrary: fc.constant<PieceRule>({ kind: 'exact' }) },
    {
      weight: 2,
      arbitrary: fc.record({
        kind: fc.constant('equal-parts' as const),
        parts: fc.integer({ min: 2, max: 4 }),
        stockTicks,
      }),
    },
    { weight: 1, arbitrary: fc.record({ kind: fc.constant('uncut' as const), stockTicks }) },
  )
}

/** A piece with a rule is as long as the rule makes it, give or take, else anything up to a little over the stock. */
const pieceFor = (stocks: readonly number[], kerfTicks: number, most: number): fc.Arbitrary<Piece> =>
  fc
    .record({
      any: fc.integer({ min: 1, max: 64 }),
      give: fc.integer({ min: -1, max: 1 }),
      count: fc.integer({ min: 0, max: most }),
      minusTicks: fc.constantFrom(0, 0, 1, 3),
      rule: ruleFor(stocks),
    })
    .map(({ any, give, count, minusTicks, rule }) => {
      if (rule.kind === 'exact') return { lengthTicks: any, count, minusTicks, rule }
      const parts = rule.kind === 'uncut' ? 1 : rule.parts
      const mate = Math.round((rule.stockTicks - (parts - 1) * kerfTicks) / parts)
      return { lengthTicks: Math.max(1, mate + give), count, minusTicks, rule }
    })

const problemsOf = (kinds: number, most: number): fc.Arbitrary<CuttingProblem> =>
  fc.tuple(stocksOf, saws).chain(([stocks, saw]) =>
    fc.record({
      pieces: fc.array(pieceFor(stocks, saw.kerfTicks, most), { maxLength: kinds }),
      stocks: fc.constant(stocks.map((lengthTicks) => ({ lengthTicks }))),
      saw: fc.constant(saw),
    }),
  )

describe('any problem', () => {
  test('the plan can be sawn as it stands and makes each piece once', () => {
    fc.assert(
      fc.property(problemsOf(8, 40), (problem) => {
        expect(faultsOf(firstPlan(problem), problem)).toEqual([])
      }),
      { seed: SEED, numRuns: 1500 },
    )
  })

  test('the plan buys no less than the bound', () => {
    fc.assert(
      fc.property(problemsOf(8, 40), (problem) => {
        expect(firstPlan(problem).boughtTicks).toBeGreaterThanOrEqual(lowerBound(problem))
      }),
      { seed: SEED, numRuns: 1500 },
    )
  })

  test('asking twice, with stocks in another order, gives the same plan', () => {
    fc.assert(
      fc.property(problemsOf(8, 40), (problem) => {
        const turned = { ...problem, stocks: problem.stocks.toReversed() }
        const last = problem.stocks.length - 1
        const turnedBack = (plan: CuttingPlan): CuttingPlan => ({
          ...plan,
          boards: plan.boards.map((board) => ({ ...board, stock: last - board.stock })),
          bought: plan.bought.map((line) => ({ ...line, stock: last - line.stock })),
        })
        expect(turnedBack(firstPlan(turned))).toEqual(firstPlan(problem))
      }),
      { seed: SEED, numRuns: 200 },
    )
  })

  test('pieces, stock and saw ten times as large are planned and bounded alike', () => {
    fc.assert(
      fc.property(problemsOf(6, 20), (problem) => {
        const small = withoutRules(problem)
        const large = tenfold(small)
        expect(firstPlan(large).bought).toEqual(
          firstPlan(small).bought.map((line) => ({ ...line, stockTicks: 10 * line.stockTicks })),
        )
        expect(lowerBound(large)).toBe(10 * lowerBound(small))
      }),
      { seed: SEED, numRuns: 300 },
    )
  })
})

/** The same pieces, all cut exactly: mates and tolerances round to the tick, which does not grow with the problem. */
const withoutRules = (problem: CuttingProblem): CuttingProblem => ({
  ...problem,
  pieces: problem.pieces.map((piece) => ({ ...piece, minusTicks: 0, rule: { kind: 'exact' } })),
})

const tenfold = ({ pieces, stocks, saw }: CuttingProblem): CuttingProblem => ({
  pieces: pieces.map((piece) => ({ ...piece, lengthTicks: 10 * piece.lengthTicks })),
  stocks: stocks.map(({ lengthTicks }) => ({ lengthTicks: 10 * lengthTicks })),
  saw: { kerfTicks: 10 * saw.kerfTicks, trimTicks: 10 * saw.trimTicks },
})

describe('small problems, against every way of cutting them', () => {
  const small = problemsOf(3, 3).filter(
    (problem) => problem.pieces.reduce((sum, piece) => sum + piece.count, 0) <= 7,
  )

  test('bound <= the least that can be bought <= the plan', () => {
    fc.assert(
      fc.property(small, (problem) => {
        const least = leastBought(problem)
        expect(lowerBound(problem)).toBeLessThanOrEqual(least)
        expect(firstPlan(problem).boughtTicks).toBeGreaterThanOrEqual(least)
      }),
      { seed: SEED, numRuns: 4000 },
    )
  })
})
