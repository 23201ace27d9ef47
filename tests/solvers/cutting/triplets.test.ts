import { expect, test } from 'vitest'
import { firstPlan } from '../../../src/solvers/cutting/firstPlan'
import { lowerBound } from '../../../src/solvers/cutting/lowerBound'
import type { Piece } from '../../../src/solvers/cutting/problem'
import { exact } from './sampleLumber'

/*
 * Triplets: pieces made three at a time so that they fill a board of 1,000 exactly, which is then the optimum by
 * construction. Recipe: E. Falkenauer, "A Hybrid Grouping Genetic Algorithm for Bin Packing", Journal of Heuristics 2
 * (1996): the first piece 380 to 490, the second from 250 up, the third takes the rest; from memory.
 */

/** Park and Miller's generator (Communications of the ACM 31, 1988): the same numbers on every machine. */
const seeded = (seed: number) => () => (seed = (seed * 16_807) % 2_147_483_647) / 2_147_483_647

const tripletsOf = (boards: number, seed: number): Piece[] => {
  const chance = seeded(seed)
  const between = (least: number, most: number) => least + Math.floor(chance() * (most - least + 1))
  return Array.from({ length: boards }).flatMap(() => {
    const first = between(380, 490)
    const second = between(250, Math.floor((1000 - first) / 2))
    const lengths = [first, second, 1000 - first - second]
    return lengths.map((lengthTicks) => ({ lengthTicks, count: 1, minusTicks: 0, rule: exact }))
  })
}

const classes = [20, 40, 83, 167].flatMap((boards) => [1, 2, 3, 4, 5].map((seed) => [boards, seed] as const))

test.each(classes)('%d full boards of triplets, seed %d', (optimum, seed) => {
  const problem = {
    pieces: tripletsOf(optimum, seed),
    stocks: [{ lengthTicks: 1000 }],
    saw: { kerfTicks: 0, trimTicks: 0 },
  }
  const { boardCount } = firstPlan(problem)
  expect(lowerBound(problem)).toBe(optimum * 1000)
  expect(boardCount).toBeGreaterThanOrEqual(optimum)
  // First-fit decreasing takes at most 11/9 of the optimum and 6/9 of a board: G. Dosa, "The Tight Bound of First Fit
  // Decreasing Bin-Packing Algorithm Is FFD(I) <= 11/9 OPT(I) + 6/9", ESCAPE 2007.
  expect(boardCount).toBeLessThanOrEqual((11 * optimum + 6) / 9)
})
