import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { firstPlan } from '../../../src/solvers/cutting/firstPlan'
import { lowerBound } from '../../../src/solvers/cutting/lowerBound'
import { madeBy } from '../../../src/solvers/cutting/plan'
import type { CuttingPlan } from '../../../src/solvers/cutting/plan'
import type { CuttingProblem, Piece, PieceRule, Stock } from '../../../src/solvers/cutting/problem'
import { leastCost } from './bruteForce'
import { faultsOf } from './verifier'

const SEED = 20260418

/** Small whole lengths, so that pieces often just fit, just don't, or leave a sliver; a leftover may be as long as a stock. */
const plainStocks: fc.Arbitrary<Stock[]> = fc
  .uniqueArray(fc.integer({ min: 20, max: 60 }), { minLength: 1, maxLength: 3 })
  .map((lengths) => lengths.map((lengthTicks) => ({ lengthTicks })))

const yardStock: fc.Arbitrary<Stock> = fc.record({
  lengthTicks: fc.constantFrom(20, 30, 37, 42, 60),
  cost: fc.integer({ min: 0, max: 90 }),
})

/** Leftovers that cost nothing, a lot at the yard that has only some, or a stock that is sold out. */
const fewStock: fc.Arbitrary<Stock> = fc.record({
  lengthTicks: fc.constantFrom(1, 8, 15, 20, 30, 42, 70),
  cost: fc.constantFrom(0, 0, 0, 11, 40),
  most: fc.constantFrom(0, 1, 1, 2, 3, 50),
})

const pricedStocks = fc
  .tuple(fc.array(yardStock, { maxLength: 3 }), fc.array(fewStock, { maxLength: 3 }))
  .map(([yard, few]) => [...few, ...yard])

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

const problemsFrom = (
  stocks: fc.Arbitrary<readonly Stock[]>,
  kinds: number,
  most: number,
): fc.Arbitrary<CuttingProblem> =>
  fc.tuple(stocks, saws).chain(([chosen, saw]) => {
    const lengths = chosen.map(({ lengthTicks }) => lengthTicks)
    return fc.record({
      pieces: fc.array(pieceFor(lengths, saw.kerfTicks, most), { maxLength: kinds }),
      stocks: fc.constant(chosen),
      saw: fc.constant(saw),
    })
  })

const problemsOf = (kinds: number, most: number) =>
  problemsFrom(fc.oneof<fc.Arbitrary<Stock[]>[]>(plainStocks, pricedStocks), kinds, most)

describe('any problem', () => {
  test('the plan can be sawn as it stands and makes each piece once', () => {
    fc.assert(
      fc.property(problemsOf(8, 40), (problem) => {
        expect(faultsOf(firstPlan(problem), problem)).toEqual([])
      }),
      { seed: SEED, numRuns: 1500 },
    )
  })

  test('the plan costs no less than the bound of what it makes', () => {
    fc.assert(
      fc.property(problemsOf(8, 40), (problem) => {
        const plan = firstPlan(problem)
        expect(plan.cost).toBeGreaterThanOrEqual(lowerBound(madeBy(plan, problem)))
      }),
      { seed: SEED, numRuns: 1500 },
    )
  })

  test('asking twice, with stocks in another order, gives the same plan', () => {
    fc.assert(
      fc.property(problemsFrom(plainStocks, 8, 40), (problem) => {
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
    fc.assert(
      fc.property(problemsFrom(pricedStocks, 8, 40), (problem) => {
        expect(firstPlan(structuredClone(problem))).toEqual(firstPlan(problem))
      }),
      { seed: SEED, numRuns: 200 },
    )
  })

  test('no board is taken where one that costs less, with no end to them, has room for what is cut from it', () => {
    fc.assert(
      fc.property(problemsFrom(pricedStocks, 8, 40).map(withoutRules), (problem) => {
        const price = (at: number) => problem.stocks[at]!.cost ?? problem.stocks[at]!.lengthTicks
        for (const { stock, stockTicks } of firstPlan(problem).boards)
          for (const [at, other] of problem.stocks.entries())
            expect(
              other.most === undefined && other.lengthTicks >= stockTicks && price(at) < price(stock),
            ).toBe(false)
      }),
      { seed: SEED, numRuns: 500 },
    )
  })

  test('pieces, stock and saw ten times as large are planned and bounded alike', () => {
    fc.assert(
      fc.property(problemsFrom(plainStocks, 6, 20), (problem) => {
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
  const isSmall = ({ pieces }: CuttingProblem): boolean =>
    pieces.reduce((sum, piece) => sum + piece.count, 0) <= 7

  test.each([
    ['stocks without prices', plainStocks],
    ['priced, limited and leftover stocks', pricedStocks],
  ])('%s: bound <= the least cost <= the plan', (_, stocks) => {
    fc.assert(
      fc.property(problemsFrom(stocks, 3, 3).filter(isSmall), (problem) => {
        const plan = firstPlan(problem)
        const made = madeBy(plan, problem)
        const least = leastCost(made)
        expect(lowerBound(made)).toBeLessThanOrEqual(least)
        expect(plan.cost).toBeGreaterThanOrEqual(least)
      }),
      { seed: SEED, numRuns: 3000 },
    )
  })

  test('the first plan is seldom far from the least cost', () => {
    // Not a law but a watch: of these seeded problems at least nine in ten are planned at the least cost.
    const problems = fc.sample(problemsFrom(pricedStocks, 3, 3).filter(isSmall), { seed: SEED, numRuns: 600 })
    const reached = problems.filter((problem) => {
      const plan = firstPlan(problem)
      return plan.cost === leastCost(madeBy(plan, problem))
    })
    expect(reached.length / problems.length).toBeGreaterThan(0.9)
  })
})
