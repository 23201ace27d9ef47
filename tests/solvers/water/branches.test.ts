import { describe, expect, test } from 'vitest'
import type { Network, Solution } from '../../../src/solvers/water/network'
import { solve } from '../../../src/solvers/water/solve'
import { acre } from './acre'
import { bayOf, chanceFrom } from './bays'
import { missingAtJoints, solved } from './solved'

/*
 * In a large network branches that nothing moves are passed over. So long chains of answers, each from the one before, are
 * held against answers from nothing.
 */

const furthest = (a: Float64Array, b: Float64Array): number =>
  a.reduce((most, value, i) => Math.max(most, Math.abs(value - b[i]!)), 0)

const LISTS = ['pipeM3S', 'valveM3S', 'pumpM3S', 'mouthM3S'] as const

/** A thousandth of what a tower gets. */
const CLOSE_M3S = 2.6e-9

const expectAlike = (warm: Solution, cold: Solution): void => {
  expect([warm.isSettled, cold.isSettled]).toEqual([true, true])
  for (const list of LISTS) expect(furthest(warm[list], cold[list])).toBeLessThan(CLOSE_M3S)
}

/** Changes one thing in place. */
type Change = (network: Network, pick: () => number) => void

const one = (list: { readonly length: number }, pick: () => number): number =>
  Math.floor(pick() * list.length)

const changes: readonly Change[] = [
  ({ valves }, pick) => (valves.lossK[one(valves.lossK, pick)] = 200 * pick() ** 3),
  ({ valves }, pick) => (valves.isOpen[one(valves.isOpen, pick)]! ^= 1),
  ({ mouths }, pick) => (mouths.levelM[one(mouths.levelM, pick)]! += 0.04 * pick() - 0.02),
  ({ mouths }, pick) => mouths.levelM.fill(1.9 + 0.05 * pick(), 0, one(mouths.levelM, pick)),
  ({ mouths }, pick) => (mouths.lengthM[one(mouths.lengthM, pick)] = 0.4 + pick()),
  ({ pipes }, pick) => (pipes.boreM[one(pipes.boreM, pick)] = 0.012 + 0.02 * pick()),
  ({ pumps }, pick) => pumps.speed.fill(0.6 + 0.6 * pick()),
  ({ joints }, pick) => (joints[one(joints, pick)] = 1e-5 * pick()),
  ({ levels }, pick) => (levels[one(levels, pick)]! += 0.1 * pick() - 0.05),
]

const chain = (network: Network, seed: number, steps: number): void => {
  const pick = chanceFrom(seed)
  let last = solved(solve(network))
  for (let step = 0; step < steps; step += 1) {
    changes[Math.floor(pick() * changes.length)]!(network, pick)
    const temperatureC = pick() < 0.1 ? 5 + 30 * pick() : 20
    last = solved(solve(network, { temperatureC }, last))
    expectAlike(last, solved(solve(network, { temperatureC })))
    const most = missingAtJoints(network, last).reduce((sum, flow) => Math.max(sum, Math.abs(flow)), 0)
    expect(most).toBeLessThan(1e-9)
  }
}

describe('answers in a chain are those from nothing', () => {
  test.each([1, 2, 3])('on 1,500 towers, seed %i', (seed) => {
    chain(acre({ towers: 1500, hasRings: seed === 3 }), seed, 25)
  })

  test.each([
    [4, 'pumps-both-ends'],
    [5, 'pump-and-box'],
    [6, 'pumps-abreast'],
  ] as const)('on a bay of many zones, seed %i, fed by %s', (seed, source) => {
    const sketch = { seed, zones: 12, laterals: 2, stations: 20, towers: 2, unlevelM: 0.05 }
    chain(bayOf({ ...sketch, source, hasRingMain: seed === 5 }).network(), seed, 20)
  })
})

test('a solution without the arrays that it was found in is no start, and no harm', () => {
  const network = acre({ towers: 300 })
  const before = solved(solve(network))
  const copy: Solution = { ...before }
  expectAlike(solved(solve(network, {}, copy)), before)
})

test('a solution of another network is no start, and no harm', () => {
  const before = solved(solve(acre({ towers: 600 })))
  const network = acre({ towers: 700 })
  expectAlike(solved(solve(network, {}, before)), solved(solve(network)))
})
