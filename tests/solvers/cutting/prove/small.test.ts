import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { firstPlan } from '../../../../src/solvers/cutting/firstPlan'
import type { CuttingProblem } from '../../../../src/solvers/cutting/problem'
import { prove } from '../../../../src/solvers/cutting/prove/prove'
import { faultsOf } from '../verifier'
import { provenBy } from './certificateCheck'
import { bestOfAll } from './everyPlan'

const SEED = 20261126

const pieceOf = fc.record({
  lengthTicks: fc.integer({ min: 3, max: 40 }),
  count: fc.integer({ min: 1, max: 4 }),
  minusTicks: fc.constantFrom(0, 0, 0, 0, 1, 2),
  rule: fc.constant({ kind: 'exact' as const }),
})

const stockOf = (limits: boolean) =>
  fc
    .record({
      lengthTicks: fc.integer({ min: 20, max: 60 }),
      cost: fc.oneof(
        fc.integer({ min: 1, max: 60 }),
        fc.constant(undefined),
        ...(limits ? [fc.constant(0)] : []),
      ),
      most: limits ? fc.constantFrom(undefined, 1, 2, 3) : fc.constant(undefined),
    })
    .map(({ lengthTicks, cost, most }) => ({
      lengthTicks,
      ...(cost === undefined ? {} : { cost }),
      // What costs nothing has a limit, as leftovers on hand have.
      ...(most !== undefined || cost === 0 ? { most: most ?? 1 } : {}),
    }))

const problemsOf = (limits: boolean): fc.Arbitrary<CuttingProblem> =>
  fc
    .record({
      pieces: fc.array(pieceOf, { minLength: 1, maxLength: 4 }),
      stocks: fc.array(stockOf(limits), { minLength: 1, maxLength: 4 }),
      saw: fc.record({ kerfTicks: fc.integer({ min: 0, max: 2 }), trimTicks: fc.constantFrom(0, 0, 1) }),
    })
    .filter(({ pieces }) => pieces.reduce((sum, { count }) => sum + count, 0) <= 8)
    // A board as it comes against a board with its end squared is another question.
    .filter(
      ({ pieces, stocks, saw }) =>
        saw.trimTicks === 0 ||
        !pieces.some((piece) => stocks.some((stock) => Math.abs(stock.lengthTicks - piece.lengthTicks) < 6)),
    )

const check = async (problem: CuttingProblem): Promise<void> => {
  const first = firstPlan(problem)
  const proof = await prove(problem, first)
  expect(faultsOf(proof.plan, problem)).toEqual([])
  const longest = Math.max(
    ...first.unmade.filter(({ why }) => why === 'too-long').map(({ piece }) => piece),
    -1,
  )
  fc.pre(longest < 0)
  const best = bestOfAll(problem)
  if (best === undefined) {
    expect(proof.plan.unmade).not.toEqual([])
    return
  }
  expect(proof.plan.unmade).toEqual([])
  const { cost, boardCount, boughtTicks } = proof.plan
  expect([cost, boardCount, boughtTicks]).toEqual(best)
  expect(proof.proven).toEqual({ cost: true, boards: true, waste: true })
  expect(proof.bound).toBe(best[0])
  if (proof.certificate !== undefined && problem.stocks.every(({ most }) => most === undefined))
    expect(provenBy(proof.certificate, problem)).toBe(best[0])
}

describe('small problems, against every way of cutting them', () => {
  test('as many boards as wanted: cost, boards and length are the least', async () => {
    await fc.assert(fc.asyncProperty(problemsOf(false), check), { seed: SEED, numRuns: 400 })
  })

  test('limited stock and leftovers: cost, boards and length are the least, or pieces stand aside', async () => {
    await fc.assert(fc.asyncProperty(problemsOf(true), check), { seed: SEED, numRuns: 400 })
  })
})
