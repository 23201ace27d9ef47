import { expect } from 'vitest'
import { firstPlan } from '../../../src/solvers/cutting/firstPlan'
import { lowerBound } from '../../../src/solvers/cutting/lowerBound'
import { madeBy } from '../../../src/solvers/cutting/plan'
import type { CuttingPlan } from '../../../src/solvers/cutting/plan'
import type { CuttingProblem, Piece, Stock } from '../../../src/solvers/cutting/problem'
import { cutFrom, inch } from './sampleLumber'
import { faultsOf } from './verifier'

/** Boards bought as [inches, count], longest first. */
export const boughtIn = (plan: CuttingPlan) =>
  plan.bought.map(({ stockTicks, count }) => [stockTicks / inch(1), count])

export const stock = (lengthIn: number, cost: number, most?: number): Stock => ({
  lengthTicks: inch(lengthIn),
  cost,
  ...(most === undefined ? {} : { most }),
})

export const pricedAt = (stocks: readonly Stock[], wanted: readonly Piece[]): CuttingProblem => ({
  ...cutFrom([], wanted),
  stocks,
})

/** What a plan costs and what it takes, [inches, count], once the second opinion has found nothing wrong. */
export const soundly = (problem: CuttingProblem) => {
  const plan = firstPlan(problem)
  expect(faultsOf(plan, problem)).toEqual([])
  expect(lowerBound(madeBy(plan, problem))).toBeLessThanOrEqual(plan.cost)
  return { cost: plan.cost, took: boughtIn(plan), unmade: plan.unmade }
}
