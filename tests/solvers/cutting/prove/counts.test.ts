import fc from 'fast-check'
import { expect, test } from 'vitest'
import { leastCounts } from '../../../../src/solvers/cutting/prove/counts'
import type { CountsQuestion } from '../../../../src/solvers/cutting/prove/counts'

const SEED = 20_261_129

const dot = (a: readonly number[], b: readonly number[]): number =>
  a.reduce((sum, each, i) => sum + each * b[i]!, 0)

/** Whether numbers of boards keep every cut and measure, and are not among those that are known not to do. */
const keeps = (numbers: readonly number[], { measures, cuts, most, excluded }: CountsQuestion): boolean =>
  numbers.every((number, stock) => number <= most[stock]!) &&
  cuts.every(({ worths, total }) => dot(worths, numbers) >= total) &&
  measures.every(({ adds, most: top }) => dot(adds, numbers) <= top) &&
  !excluded.some((each) => numbers.every((number, stock) => number <= each[stock]!))

/** Every number of every stock, one after another. */
const allNumbers = (most: readonly number[]): number[][] =>
  most.reduce<number[][]>(
    (before, top) => before.flatMap((each) => Array.from({ length: top + 1 }, (_, n) => [...each, n])),
    [[]],
  )

const leastByTrying = (question: CountsQuestion): number =>
  Math.min(
    ...allNumbers(question.most)
      .filter((numbers) => keeps(numbers, question))
      .map((numbers) => dot(question.measures[0].adds, numbers)),
  )

const questions: fc.Arbitrary<CountsQuestion> = fc.integer({ min: 1, max: 5 }).chain((stocks) => {
  const each = (of: fc.Arbitrary<number>) => fc.array(of, { minLength: stocks, maxLength: stocks })
  const cost = fc.oneof(fc.constant(0), fc.integer({ min: 1, max: 9 }), fc.integer({ min: 1, max: 400 }))
  return fc
    .record({
      costs: each(cost),
      most: each(fc.integer({ min: 0, max: 4 })),
      worths: fc.array(each(fc.integer({ min: 0, max: 500 })), { minLength: 1, maxLength: 4 }),
      shares: fc.array(fc.integer({ min: 0, max: 100 }), { minLength: 5, maxLength: 5 }),
      excluded: fc.array(each(fc.integer({ min: 0, max: 2 })), { maxLength: 2 }),
      isBoards: fc.boolean(),
    })
    .map(({ costs, most, worths, shares, excluded, isBoards }): CountsQuestion => {
      const share = (i: number, of: readonly number[]) => Math.floor((shares[i]! / 100) * dot(of, most))
      const measure = { adds: costs, most: share(4, costs) + 1 }
      const boards = { adds: costs.map(() => 1), most: Infinity }
      return {
        measures: isBoards ? [boards, measure] : [measure],
        cuts: worths.map((of, i) => ({ worths: of, total: share(i, of) })),
        most,
        excluded,
      }
    })
})

test('the least numbers of boards that keep all cuts, as trying all finds them', () => {
  const said = { some: 0, none: 0 }
  fc.assert(
    fc.property(questions, (question) => {
      const found = leastCounts(question, { left: 1e9 })
      const least = leastByTrying(question)
      if (typeof found === 'string') {
        expect([found, least]).toEqual(['none', Infinity])
        said.none += 1
      } else {
        expect(keeps(found, question)).toBe(true)
        expect(dot(question.measures[0].adds, found)).toBe(least)
        said.some += 1
      }
    }),
    { seed: SEED, numRuns: 1000 },
  )
  expect(Math.min(said.some, said.none)).toBeGreaterThan(100)
})
