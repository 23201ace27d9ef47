import { describe, expect, test } from 'vitest'
import { firstPlan } from '../../../../src/solvers/cutting/firstPlan'
import type { CuttingProblem, Piece, Stock } from '../../../../src/solvers/cutting/problem'
import { prove } from '../../../../src/solvers/cutting/prove/prove'
import { cutFrom, exact, inch, pieces, sampleLumber } from '../sampleLumber'
import { faultsOf } from '../verifier'
import { provenBy } from './certificateCheck'

const ALL = { cost: true, boards: true, waste: true }
const feet = (ticks: number): number => ticks / inch(12)

const proofOf = async (problem: CuttingProblem) => {
  const proof = await prove(problem, firstPlan(problem))
  expect(faultsOf(proof.plan, problem)).toEqual([])
  expect(proof.bound).toBeLessThanOrEqual(proof.plan.cost)
  return proof
}

const boughtFeet = ({ plan }: Awaited<ReturnType<typeof prove>>): string =>
  plan.bought.map(({ stockTicks, count }) => `${count} x ${feet(stockTicks)}`).join(' + ')

/** One price a stock, in cents; lengths in inches. */
const priced = (
  stocks: readonly (readonly [lengthIn: number, cost: number, most?: number])[],
  wanted: readonly Piece[],
): CuttingProblem => ({
  ...cutFrom([], wanted),
  stocks: stocks.map(([lengthIn, cost, most]): Stock => ({
    lengthTicks: inch(lengthIn),
    cost,
    ...(most === undefined ? {} : { most }),
  })),
})

/*
 * Lumber of the sample bay, worked example of the trade notes, hand arithmetic: with members held apart 128 x 12 ft and 71 x 10 ft,
 * 2,246 ft, 3.9 % waste.
 */
describe('lumber of the sample bay at prices by the foot', () => {
  test('123 twelves and 75 tens, 2,226 ft, are proven: 20 ft less than with members held apart', async () => {
    // Halving settles 66 twelves and 41 tens, of which one has an odd half over. 54 twelves hold three cross-pieces each, 3 a
    // runner and a plate (118-5/8 + 1/8 + 16); 27 tens hold a runner, 7 two cross-pieces and two plates (119-3/8), the odd half one
    // of each (59-5/8). Cross-pieces 162 + 14 + 1 = 177, plates 3 + 14 + 1 = 18, runners 27 + 3 = 30. That nothing
    // shorter does is what the proof says.
    const proof = await proofOf(cutFrom([120, 144], sampleLumber()))
    expect(boughtFeet(proof)).toBe('123 x 12 + 75 x 10')
    expect(proof.proven).toEqual(ALL)
    expect(feet(proof.bound)).toBe(2226)
    const net = sampleLumber().reduce((sum, piece) => sum + piece.count * piece.lengthTicks, 0)
    expect(100 * (1 - net / proof.plan.boughtTicks)).toBeCloseTo(3.0, 1)
  })

  test('an acre of 18 such bays is proven as well', async () => {
    const proof = await proofOf(cutFrom([120, 144], sampleLumber(18)))
    expect(proof.proven.cost).toBe(true)
    expect(feet(proof.bound)).toBeLessThanOrEqual(18 * 2226)
  })

  test('the same list always gives the same answer', async () => {
    const problem = cutFrom([96, 120, 144], sampleLumber())
    expect(await proofOf(problem)).toEqual(await proofOf(problem))
  })
})

describe('prices', () => {
  test('a longer board that is cheaper by the foot, a shorter that is cheaper by the piece', async () => {
    // 8 ft for 400, 16 ft for 700. Seven pieces of 47 in, two to an 8 ft (94-1/8), four to a 16 ft (188-3/8): one of each makes six
    // for 1,100, two 16 ft make eight for 1,400, 16 + 8 + 8 eight for 1,500, four 8 ft for 1,600. Seven: 1,400.
    const seven = await proofOf(
      priced(
        [
          [96, 400],
          [192, 700],
        ],
        [pieces(7, 47)],
      ),
    )
    expect([seven.plan.cost, seven.bound, boughtFeet(seven)]).toEqual([1400, 1400, '2 x 16'])
    // Six: 1,100.
    const six = await proofOf(
      priced(
        [
          [96, 400],
          [192, 700],
        ],
        [pieces(6, 47)],
      ),
    )
    expect([six.plan.cost, six.bound, boughtFeet(six)]).toEqual([1100, 1100, '1 x 16 + 1 x 8'])
  })

  test('of plans that cost the same the one with fewer boards', async () => {
    // Two 5 ft for 500 each or one 10 ft with a tick over for 1,000 make two of 59 in.
    const proof = await proofOf(
      priced(
        [
          [60, 500],
          [120, 1000],
        ],
        [pieces(2, 59)],
      ),
    )
    expect([boughtFeet(proof), proof.proven]).toEqual(['1 x 10', ALL])
  })

  test('prices of pieces prove it where the boards are full', async () => {
    // 4 x 30 in with three kerfs is 120-3/8, so three go on 10 ft; 60 of them on 20 boards at 650.
    const problem = priced([[120, 650]], [pieces(60, 30)])
    const { plan, certificate } = await proofOf(problem)
    expect(plan.cost).toBe(13_000)
    expect(certificate && provenBy(certificate, problem)).toBe(13_000)
  })
})

describe('limits and tolerance', () => {
  test('leftovers on hand are used first, and only what they lack is bought', async () => {
    // Three of 40 in: a leftover of 81 in holds two (80-1/8), the third takes an 8 ft.
    const proof = await proofOf(
      priced(
        [
          [96, 400],
          [81, 0, 1],
        ],
        [pieces(3, 40)],
      ),
    )
    expect([proof.plan.cost, proof.bound, proof.proven]).toEqual([400, 400, ALL])
  })

  test('tolerance is used where it saves a board, and given back where it does not', async () => {
    // 2 x 48 with a kerf is 96-1/8: as drawn one goes on 8 ft, an eighth shorter two do.
    const save = await proofOf(priced([[96, 400]], [pieces(2, 48, exact, 1 / 8)]))
    expect([save.plan.cost, save.bound]).toEqual([400, 400])
    // 2 x 47-1/2 fit as drawn: nothing is cut short.
    const none = await proofOf(priced([[96, 400]], [pieces(2, 47.5, exact, 1 / 8)]))
    expect(none.plan.boards[0]?.cuts[0]?.lengthTicks).toBe(inch(47.5))
  })

  test('boards that can not make all: as few as possible stand aside', async () => {
    // Two 8 ft hold four of 40 in (80-1/8 a pair); the fifth stands aside.
    const { plan } = await proofOf(priced([[96, 400, 2]], [pieces(5, 40)]))
    expect(plan.unmade).toEqual([{ piece: 0, count: 1, why: 'no-stock-left' }])
    expect(plan.cost).toBe(800)
  })
})

describe('traps', () => {
  test.each([
    ['nothing', [], 0],
    ['two 5 ft from 10 ft: the kerf asks for a second board', [pieces(2, 60)], 2],
    ['66 and 30 from 8 ft: 96-1/8', [pieces(1, 66), pieces(1, 30)], 2],
    ['10,000 alike, two to a board', [pieces(10_000, 47)], 5000],
  ])('%s', async (name, wanted, boards) => {
    const proof = await proofOf(cutFrom([name.startsWith('two') ? 120 : 96], wanted))
    expect([proof.plan.boardCount, proof.proven]).toEqual([boards, ALL])
  })

  test('pieces longer than any board stand aside, the rest is proven', async () => {
    const { plan, proven } = await proofOf(cutFrom([96], [pieces(2, 100), pieces(2, 47)]))
    expect(plan.unmade).toEqual([{ piece: 0, count: 2, why: 'too-long' }])
    expect([plan.boardCount, proven]).toEqual([1, ALL])
  })

  test('lengths of any tick are proven as well', async () => {
    // A step of one tick: no table of rooms is kept, but a list of those that matter.
    const odd = [pieces(9, 43.5), pieces(7, 29.3125), pieces(11, 17)].map((piece, i) => ({
      ...piece,
      lengthTicks: piece.lengthTicks + i * 7 + 1,
    }))
    expect((await proofOf(cutFrom([96, 120], odd))).proven).toEqual(ALL)
  })
})

test('without work to spend nothing is claimed beyond what is shown', async () => {
  const problem = cutFrom([96, 120, 144], sampleLumber())
  const { plan, bound, proven } = await prove(problem, firstPlan(problem), { budget: 1 })
  expect(proven.cost && bound < plan.cost).toBe(false)
  expect(bound).toBeLessThanOrEqual(2226 * inch(12))
})
