import { bench, describe } from 'vitest'
import { firstPlan } from '../../src/solvers/cutting/firstPlan'
import { fewerPatterns } from '../../src/solvers/cutting/patterns/fewerPatterns'
import type { CuttingPlan } from '../../src/solvers/cutting/plan'
import type { CuttingProblem } from '../../src/solvers/cutting/problem'
import { solveReadings } from '../../src/solvers/cutting/prove/readings'
import { seeded } from '../solvers/cutting/prove/recipes'
import { cutFrom, pieces, sampleLumber } from '../solvers/cutting/sampleLumber'

/** What a proof spends on patterns. */
const BUDGET = 2e7

const stocksIn = [[120], [96, 120, 144], [96, 120, 144, 168, 192]]

/** 6 to 25 lengths, up to 40 of each, from one, three and five stocks in turn. */
const takeOff = (seed: number): CuttingProblem => {
  const chance = seeded(seed * 7919 + 13)
  for (let i = 0; i < 5; i += 1) chance()
  const kinds = 6 + Math.floor(chance() * 20)
  const list = Array.from({ length: kinds }, () =>
    pieces(1 + Math.floor(chance() * 40), 8 + Math.round(chance() * 1600) / 16),
  )
  return cutFrom(stocksIn[seed % 3] ?? [120], list)
}

/** Settings of the stop, each pattern cut for itself. */
const stopsOf = ({ boards }: CuttingPlan): number => boards.reduce((sum, { cuts }) => sum + cuts.length, 0)

const rowOf = async (name: string, problems: readonly CuttingProblem[]) => {
  let before = 0
  let after = 0
  let stopsBefore = 0
  let stopsAfter = 0
  for (const problem of problems) {
    const proof = await solveReadings(firstPlan(problem), problem, [], { left: 3e8 }, {})
    const plan = proof?.plan ?? firstPlan(problem)
    const fewer = fewerPatterns(plan, problem, BUDGET)
    before += plan.boards.length
    after += fewer.boards.length
    stopsBefore += stopsOf(plan)
    stopsAfter += stopsOf(fewer)
  }
  return { lists: name, patterns: before, fewer: after, stops: stopsBefore, 'fewer stops': stopsAfter }
}

// Patterns and settings of the stop, all lists of a row together, before and after.
describe('fewer patterns', () => {
  const fifty = Array.from({ length: 50 }, (_, i) => takeOff(i + 1))
  bench(
    'patterns of proved plans',
    async () => {
      console.table([
        await rowOf('sample bay, two stocks', [cutFrom([120, 144], sampleLumber())]),
        await rowOf('one acre, two stocks', [cutFrom([120, 144], sampleLumber(18))]),
        await rowOf('50 take-offs', fifty),
      ])
    },
    { iterations: 1, time: 0, warmupIterations: 0, warmupTime: 0 },
  )
})
