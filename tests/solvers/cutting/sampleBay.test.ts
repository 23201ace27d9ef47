import { describe, expect, test } from 'vitest'
import { firstPlan } from '../../../src/solvers/cutting/firstPlan'
import { lowerBound } from '../../../src/solvers/cutting/lowerBound'
import type { CuttingProblem } from '../../../src/solvers/cutting/problem'
import {
  bearers,
  crossPieces,
  cutFrom,
  endRunners,
  equalParts,
  exact,
  inch,
  risers,
  runners,
  sampleLumber,
  splices,
} from './sampleLumber'
import { faultsOf } from './verifier'

/*
 * Lumber of the sample bay, worked example of the trade notes, hand arithmetic, kerf 1/8 in, no end trim: net
 * 2,158.7 ft; 128 twelve-foot and 71 ten-foot boards, 2,246 ft, 3.9 % waste; all from 12 ft 196 boards, 8.2 %; all
 * from 16 ft 140 boards, 3.6 %.
 */

const feetOf = (ticks: number): number => ticks / inch(12)

const planned = (problem: CuttingProblem) => {
  const plan = firstPlan(problem)
  expect(faultsOf(plan, problem)).toEqual([])
  expect(lowerBound(problem)).toBeLessThanOrEqual(plan.boughtTicks)
  return plan
}

describe('each member held to one stock', () => {
  test('risers, cross-pieces and splice plates: 127 twelve-foot boards, one less than the 128 of the trade notes', () => {
    // 132/2 = 66 boards of risers. The notes hold plates apart: 177/3 = 59 of cross-pieces, 18 plates at 8 a board = 3. Together a
    // board gives 1 cross-piece and 6 plates, 43-1/2 + 6 x 16 + 6/8 = 140-1/4: 3 such boards, and 174/3 = 58 of cross-pieces.
    const plan = planned(cutFrom([144], [risers(equalParts(2, 144)), crossPieces(), splices()]))
    expect(plan.bought).toMatchObject([{ stockTicks: inch(144), count: 127 }])
  })

  test('runners and bearers: 71 ten-foot boards', () => {
    // 18 + 12 runners, one a board, and 81/2 = 41 boards of bearers.
    const plan = planned(cutFrom([120], [endRunners(), runners(), bearers(equalParts(2, 120))]))
    expect(plan.bought).toMatchObject([{ stockTicks: inch(120), count: 71 }])
  })

  test('that is 2,246 ft for 2,158.7 ft of pieces, 3.9 % waste', () => {
    const net = sampleLumber().reduce((sum, piece) => sum + piece.count * piece.lengthTicks, 0)
    expect(feetOf(net)).toBeCloseTo(2158.7, 1)
    const bought = 128 * 12 + 71 * 10
    expect(bought).toBe(2246)
    expect(100 * (1 - feetOf(net) / bought)).toBeCloseTo(3.9, 1)
  })
})

describe('one stock for everything', () => {
  const free = [risers(exact), crossPieces(), endRunners(), runners(), splices(), bearers(exact)]
  test('all from 12 ft: 196 boards', () => {
    expect(planned(cutFrom([144], free)).boardCount).toBe(196)
  })

  test('all from 16 ft: 137 boards, 3 less than the 140 of the trade notes', () => {
    // Hand arithmetic, each with its kerfs of 1/8: 18 x (119-1/16 + 71-15/16) = 191-1/8; 12 x (118-5/8 + 71-15/16) = 190-11/16;
    // 18 x (71-15/16 + 59-15/16 + 43-1/2 + 16) = 191-3/4; 42 x (2 of 71-15/16 + 43-1/2) = 187-5/8; 39 x (59-15/16 + 3 of 43-1/2)
    // = 190-13/16; 8 x (3 of 59-15/16) = 180-1/16. That is 18 + 12 + 18 + 84 = 132 risers, 18 + 42 + 117 = 177 cross-pieces,
    // 18 + 39 + 24 = 81 bearers, 30 runners and 18 plates, on 18 + 12 + 18 + 42 + 39 + 8 = 137 boards.
    expect(planned(cutFrom([192], free)).boardCount).toBe(137)
  })
})

describe('both stocks for everything', () => {
  const plan = () => planned(cutFrom([120, 144], sampleLumber()))

  test('119 twelve-foot and 80 ten-foot boards: 18 ft less than with members held apart', () => {
    // Halving settles 66 twelves (132 risers) and 41 tens (81 bearers), and the 30 runners take a ten each, whatever
    // else is done. Held apart, 59 twelves of cross-pieces waste 13 in each and the plates take 3 twelves more.
    // Mixed, a ten gives 2 cross-pieces and 2 plates: 2 x 43-1/2 + 2 x 16 + 3/8 = 119-3/8. The odd half of a bearer
    // gives 1 and 1: 43-1/2 + 16 + 1/8 = 59-5/8 of 59-15/16. So 8 tens and the half take 17 of each, 53 twelves take
    // 159 cross-pieces and a last ten takes 1 and 1: 9 tens more, 9 twelves less, 9 x 2 ft = 18 ft.
    expect(plan().bought).toMatchObject([
      { stockTicks: inch(144), count: 119 },
      { stockTicks: inch(120), count: 80 },
    ])
    expect(feetOf(plan().boughtTicks)).toBe(2246 - 18)
  })

  test('no plan buys less than 2,206 ft', () => {
    // With the plates left out: 66 twelves, 41 tens and 30 tens as above are 1,502 ft. The half holds one of the 177
    // cross-pieces; the others cost 4 ft each, three to a twelve (5 ft, two to a ten): 1,502 + 176 x 4 = 2,206.
    expect(feetOf(lowerBound(cutFrom([120, 144], sampleLumber())))).toBe(2206)
  })

  test('an acre of 18 such bays is planned alike', () => {
    const acre = planned(cutFrom([120, 144], sampleLumber(18)))
    expect(acre.boughtTicks).toBeLessThanOrEqual(18 * plan().boughtTicks)
    expect(acre.boards.length).toBeLessThan(20)
  })
})
