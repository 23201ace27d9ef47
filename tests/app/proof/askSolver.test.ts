import loadHighs from 'highs'
import { describe, expect, test } from 'vitest'
import { solverOver } from '../../../src/app/proof/solverOver'
import { firstPlan } from '../../../src/solvers/cutting/firstPlan'
import type { CuttingProblem, Piece, Stock } from '../../../src/solvers/cutting/problem'
import type { IntegerSolver } from '../../../src/solvers/cutting/proof'
import { askSolver } from '../../../src/solvers/cutting/prove/askSolver'
import type { Packing } from '../../../src/solvers/cutting/prove/packing'
import { prove } from '../../../src/solvers/cutting/prove/prove'
import { exact, inch } from '../../solvers/cutting/sampleLumber'
import { seeded } from '../../solvers/cutting/prove/recipes'
import { faultsOf } from '../../solvers/cutting/verifier'

const highs = solverOver(loadHighs())

/** Three 60s and three 40s on three boards of 100: only 60 + 40 each time, of three patterns. */
const packing: Packing = {
  sizes: [60, 40],
  counts: [3, 3],
  stocks: [{ room: 100, most: 6, adds: [1, 1, 1] }],
}
const undecided = {
  boards: [3],
  patterns: [
    { stock: 0, sizes: [0], times: [1] },
    { stock: 0, sizes: [1], times: [2] },
    { stock: 0, sizes: [0, 1], times: [1, 1] },
  ],
}

describe('numbers of boards put before the package', () => {
  test('come back filled, counted over', async () => {
    expect(await askSolver(undecided, packing, highs)).toEqual([{ pattern: undecided.patterns[2], count: 3 }])
  })

  test('come back with nothing where they are too few', async () => {
    expect(await askSolver({ ...undecided, boards: [2] }, packing, highs)).toBeUndefined()
  })

  test('a solver that says what is not so is not believed', async () => {
    const wrong: IntegerSolver = () => Promise.resolve({ counts: [0, 1, 2], isOptimal: true })
    const tooMany: IntegerSolver = () => Promise.resolve({ counts: [1, 0, 3], isOptimal: true })
    expect(await askSolver(undecided, packing, wrong)).toBeUndefined()
    expect(await askSolver(undecided, packing, tooMany)).toBeUndefined()
  })
})

/** Lengths of any sixteenth from 8 to 118 in, boards from 8 to 16 ft at 38 to 52 cents a foot and up to 60 over. */
const takeOff = (seed: number): CuttingProblem => {
  const chance = seeded(seed)
  for (let i = 0; i < 10; i += 1) chance()
  const between = (least: number, most: number) => least + Math.floor(chance() * (most - least + 1))
  const kinds = between(4, 25)
  const pieces = Array.from({ length: kinds }, (): Piece => ({
    lengthTicks: inch(between(8 * 16, 118 * 16) / 16),
    count: between(1, Math.ceil(600 / kinds)),
    minusTicks: 0,
    rule: exact,
  }))
  const stocks = [8, 10, 12, 14, 16].map((feet): Stock => ({
    lengthTicks: inch(feet * 12),
    cost: (38 + between(0, 14)) * feet + between(0, 60),
  }))
  return { pieces, stocks, saw: { kerfTicks: inch(1 / 8), trimTicks: 0 } }
}

test('a list that the own search leaves open is put before the package: no dearer a plan, and no more is claimed', async () => {
  const problem = takeOff(47 * 7919 + 13)
  const first = firstPlan(problem)
  const budget = 4e8
  let asked = 0
  const counted: IntegerSolver = (program) => {
    asked += 1
    return highs(program)
  }
  const own = await prove(problem, first, { budget })
  const both = await prove(problem, first, { budget, integerSolver: counted })
  expect(own.proven.cost).toBe(false)
  expect(asked).toBeGreaterThan(0)
  expect(faultsOf(both.plan, problem)).toEqual([])
  expect(both.plan.cost).toBeLessThanOrEqual(own.plan.cost)
  // That the package finds nothing is no proof: the bound is the own search's, below every plan that is known (74,153 cents).
  expect(both.proven.cost).toBe(false)
  expect(both.bound).toBeLessThanOrEqual(74_153)
}, 60_000)
