import loadHighs from 'highs'
import { expect, test } from 'vitest'
import { firstPlan } from '../../../../src/solvers/cutting/firstPlan'
import type { CuttingProblem, Stock } from '../../../../src/solvers/cutting/problem'
import { prove } from '../../../../src/solvers/cutting/prove/prove'
import { exact } from '../sampleLumber'
import { faultsOf } from '../verifier'
import { bestByArcFlow } from './arcFlow'
import { seeded } from './recipes'

const highs = await loadHighs()

/** Lists that the other formulation solves in a second or so: some forty pieces of five lengths from three priced stocks; one in three has leftovers and a limit. */
const listOf = (seed: number): CuttingProblem => {
  const chance = seeded(seed * 7_919)
  for (let i = 0; i < 5; i += 1) chance()
  const between = (least: number, most: number) => least + Math.floor(chance() * (most - least + 1))
  const stocks: Stock[] = [48, 60, 72].map((lengthTicks) => ({
    lengthTicks,
    cost: lengthTicks * 5 + between(-30, 40),
  }))
  if (seed % 3 === 0)
    stocks.push({ lengthTicks: 26, cost: 0, most: 3 }, { lengthTicks: 64, cost: 235, most: 5 })
  return {
    pieces: Array.from({ length: 6 }, () => ({
      lengthTicks: between(7, 44),
      count: between(4, 16),
      minusTicks: 0,
      rule: exact,
    })),
    stocks,
    saw: { kerfTicks: 1, trimTicks: 0 },
  }
}

test.each([7, 9, 10, 12])(
  'list %d: the same cost, boards and length as by another formulation',
  async (seed) => {
    const problem = listOf(seed)
    const { plan, proven, bound } = await prove(problem, firstPlan(problem))
    expect(faultsOf(plan, problem)).toEqual([])
    expect(proven).toEqual({ cost: true, boards: true, waste: true })
    expect(bound).toBe(plan.cost)
    expect([plan.cost, plan.boardCount, plan.boughtTicks]).toEqual(bestByArcFlow(problem, highs))
  },
)
