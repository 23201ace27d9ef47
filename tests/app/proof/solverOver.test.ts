import loadHighs from 'highs'
import { expect, test } from 'vitest'
import { isHopeless, programText } from '../../../src/app/proof/integerProgram'
import { solverOver } from '../../../src/app/proof/solverOver'
import type { IntegerProgram } from '../../../src/solvers/cutting/proof'

const solve = solverOver(loadHighs())

/** 7 pieces of 5 ft and 3 of 8 ft from 10 ft boards at 5 and 16 ft boards at 9: 2 x 5 | 8 | 3 x 5 | 8 + 5 | 2 x 8. */
const boards: IntegerProgram = {
  columns: [
    { cost: 5, most: Infinity, gives: [[0, 2]] },
    { cost: 5, most: Infinity, gives: [[1, 1]] },
    { cost: 9, most: 4, gives: [[0, 3]] },
    {
      cost: 9,
      most: 4,
      gives: [
        [0, 1],
        [1, 1],
      ],
    },
    { cost: 9, most: 4, gives: [[1, 2]] },
  ],
  needs: [7, 3],
}

test('the cheapest whole counts, found by hand', async () => {
  // Hand arithmetic. The 8s apart from the 5s: 2 x 8 and 8 are 9 + 5 = 14, and seven 5s are 3 + 2 + 2 for 9 + 5 + 5 = 19 (6 fives
  // cost 15 or more and a seventh no less than 4 on top, and two boards of 3 make but 6): 33. One 8 with a 5: 9 + 9 = 18, and six
  // 5s 15: 33. Two 8s with a 5 each: 9 + 9 + 5 = 23, and five 5s 14: 37.
  const answer = await solve(boards)
  const cost = boards.columns.reduce((sum, column, i) => sum + column.cost * (answer?.counts[i] ?? 0), 0)
  expect([cost, answer?.isOptimal]).toEqual([33, true])
})

test('a program that cannot be met gives nothing', async () => {
  expect(await solve({ columns: [{ cost: 1, most: 2, gives: [[0, 1]] }], needs: [3] })).toBeUndefined()
  const hopeless: IntegerProgram = { columns: [{ cost: 1, most: 2, gives: [[0, 1]] }], needs: [1, 1] }
  expect([isHopeless(hopeless), await solve(hopeless)]).toEqual([true, undefined])
})

test('a program in the text that the package reads', () => {
  expect(programText({ columns: [{ cost: 5, most: 3, gives: [[0, 2]] }], needs: [7] }).split('\n')).toEqual([
    'Minimize',
    ' cost:',
    ' + 5 c0',
    'Subject To',
    ' r0:',
    ' + 2 c0 >= 7',
    'Bounds',
    ' 0 <= c0 <= 3',
    'General',
    ' c0',
    'End',
    '',
  ])
})
