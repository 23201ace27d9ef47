import { bench, describe } from 'vitest'
import { firstPlan } from '../../src/solvers/cutting/firstPlan'
import type { CuttingProblem } from '../../src/solvers/cutting/problem'
import { prove } from '../../src/solvers/cutting/prove/prove'
import { cutFrom, pieces, sampleLumber } from '../solvers/cutting/sampleLumber'
import { readSets, tableOf } from './cuttingSets'

const proofBench = (name: string, problem: CuttingProblem): void => {
  const first = firstPlan(problem)
  bench(
    name,
    async () => {
      await prove(problem, first)
    },
    { iterations: 5, time: 0, warmupIterations: 1, warmupTime: 0 },
  )
}

// Goal: the sample bay's lumber within a second.
describe('proof of a cutting plan', () => {
  proofBench('proof, sample bay, 438 pieces from two stocks', cutFrom([120, 144], sampleLumber()))
  proofBench(
    'proof, sample bay, 438 pieces from five stocks',
    cutFrom([96, 120, 144, 168, 192], sampleLumber()),
  )
  proofBench('proof, one acre, 7,884 pieces from two stocks', cutFrom([120, 144], sampleLumber(18)))
  const framing = Array.from({ length: 30 }, (_, i) => pieces(1 + ((i * 7) % 13), 9 + i * 3.4375))
  proofBench('proof, 30 lengths from five stocks', cutFrom([96, 120, 144, 168, 192], framing))
})

/*
 * Published sets of one-stock lists with known optima, which their licence does not let stand here. CUTTING_SETS names a folder with
 * optima.json ([{ set, file, name, optimum }]) and the files: number of lengths, board, then a line for each length with its count.
 * CUTTING_SAMPLE is how many of each class are solved, spread over it; 5 unless told.
 */
describe('published sets', () => {
  const folder = process.env['CUTTING_SETS']
  const name =
    folder === undefined ? 'no published sets: CUTTING_SETS names no folder' : `published sets in ${folder}`
  bench(
    name,
    async () => {
      if (folder !== undefined)
        console.table(await tableOf(readSets(folder, Number(process.env['CUTTING_SAMPLE'] ?? 5))))
    },
    { iterations: 1, time: 0, warmupIterations: 0, warmupTime: 0 },
  )
})
