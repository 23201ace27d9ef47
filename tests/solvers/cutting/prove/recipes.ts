import type { CuttingProblem, Piece } from '../../../../src/solvers/cutting/problem'
import { exact } from '../sampleLumber'

/*
 * Lists made by the recipes of the published benchmark classes, with seeds of our own; recipes from memory of the papers.
 */

/** Park and Miller's generator (Communications of the ACM 31, 1988): the same numbers on every machine. */
export const seeded = (seed: number) => {
  let state = seed
  return (): number => (state = (state * 16_807) % 2_147_483_647) / 2_147_483_647
}

const between = (chance: () => number, least: number, most: number): number =>
  least + Math.floor(chance() * (most - least + 1))

/** Pieces of one board length, no kerf, like lengths in one line, as the classes have them. */
const oneStock = (lengths: readonly number[], board: number): CuttingProblem => {
  const counts = new Map<number, number>()
  for (const length of lengths) counts.set(length, 1 + (counts.get(length) ?? 0))
  const pieces = [...counts].map(([lengthTicks, count]): Piece => ({
    lengthTicks,
    count,
    minusTicks: 0,
    rule: exact,
  }))
  return { pieces, stocks: [{ lengthTicks: board }], saw: { kerfTicks: 0, trimTicks: 0 } }
}

const uniform = (count: number, least: number, most: number, seed: number): number[] => {
  const chance = seeded(seed)
  return Array.from({ length: count }, () => between(chance, least, most))
}

/** E. Falkenauer, "A Hybrid Grouping Genetic Algorithm for Bin Packing", Journal of Heuristics 2 (1996), class U: 20 to 100 in 150. */
export const falkenauerU = (count: number, seed: number): CuttingProblem =>
  oneStock(uniform(count, 20, 100, seed), 150)

/** The same paper, class T: triplets that fill 1,000, so that a third as many boards as pieces is the optimum. */
export const falkenauerT = (boards: number, seed: number): CuttingProblem => {
  const chance = seeded(seed)
  const triplet = (): number[] => {
    const first = between(chance, 380, 490)
    const second = between(chance, 250, Math.floor((1000 - first) / 2))
    return [first, second, 1000 - first - second]
  }
  return oneStock(Array.from({ length: boards }).flatMap(triplet), 1000)
}

/** A. Scholl, R. Klein, C. Juergens, "BISON", Computers and Operations Research 24 (1997), first set: 1, 20 or 30 to 100 in 100 to 150. */
export const scholl = (count: number, least: number, board: number, seed: number): CuttingProblem =>
  oneStock(uniform(count, least, 100, seed), board)

/** P. Schwerin, G. Waescher, "The Bin-Packing Problem", International Transactions in Operational Research 4 (1997): 150 to 200 in 1,000. */
export const schwerin = (count: number, seed: number): CuttingProblem =>
  oneStock(uniform(count, 150, 200, seed), 1000)
