import { describe, expect, test } from 'vitest'
import { evaluate } from '../../src/evaluate/evaluate'
import type { Board, CutList } from '../../src/model/cutList'
import {
  boardWords,
  boughtWords,
  cutText,
  besideWords,
  costWords,
  howCut,
  standingWords,
  unitOfStock,
  wasteWords,
} from '../../src/sheets/cutWords'
import { hasMark } from '../../src/sidebar/memberNames'
import { inches } from '../../src/units/length'
import { scenarios } from '../support/scenarios'

const UNITS = 'feet-inches'

const line = (cut: CutList['lines'][number]['cut']) => ({
  marks: ['GB'],
  lengthMm: inches(60),
  count: 1,
  cut,
})

const list = (changes: Partial<CutList>): CutList => ({
  key: 'lumber-2x4',
  problem: { pieces: [], stocks: [], saw: { kerfTicks: 0, trimTicks: 0 } },
  stock: 'lumber-2x4',
  title: '2x4 lumber',
  pieces: [],
  stocks: [],
  lines: [],
  boards: [],
  bought: [],
  leftovers: [],
  netMm: 0,
  boughtMm: 0,
  costIs: 'ticks',
  cost: 0,
  bound: 0,
  standing: { kind: 'proven' },
  cents: undefined,
  tooLong: [],
  ranOut: [],
  cutAlready: [],
  sawn: [],
  joints: 0,
  ...changes,
})

const board = (changes: Partial<Board>): Board => ({
  stockMm: 0,
  measuredMm: 0,
  isLeftover: false,
  count: 1,
  pieces: [],
  offcutMm: 0,
  ...changes,
})

describe('how a piece is cut', () => {
  test.each([
    ['lumber-2x4', { kind: 'equal-parts', parts: 2, stockMm: inches(144) }, 'halve a 12 ft board'],
    ['lumber-2x4', { kind: 'equal-parts', parts: 3, stockMm: inches(144) }, '3 equal parts of a 12 ft board'],
    ['conduit-3/4', { kind: 'uncut', stockMm: inches(120) }, 'whole 10 ft stick'],
    ['lumber-2x4', { kind: 'exact' }, 'measure'],
  ] as const)('of %s', (stock, cut, words) => {
    expect(howCut(line(cut), stock, UNITS)).toBe(words)
  })

  test('is said of boards, sticks and coils', () => {
    expect(['lumber-2x4', 'conduit-1', 'pe-1'].map(unitOfStock)).toEqual(['board', 'stick', 'coil'])
  })
})

test('boards cut alike are one line, with the pieces as they lie on the board', () => {
  const half = { lengthMm: inches(71 + 15 / 16), count: 2, marks: ['RS-p'] }
  expect(boardWords(board({ stockMm: inches(144), count: 66, pieces: [half] }), 'lumber-2x4', UNITS)).toBe(
    '66 x 12 ft: 71-15/16" | 71-15/16"',
  )
  const cross = { lengthMm: inches(43.5), count: 3, marks: ['BX'] }
  expect(
    boardWords(
      board({ stockMm: inches(144), count: 53, pieces: [cross], offcutMm: inches(13) }),
      'lumber-2x4',
      UNITS,
    ),
  ).toBe('53 x 12 ft: 43-1/2" | 43-1/2" | 43-1/2", offcut 13"')
  const tube = { lengthMm: inches(36), count: 33, marks: ['microtube'] }
  expect(
    boardWords(
      board({ stockMm: inches(1200), count: 14, pieces: [tube], offcutMm: inches(12) }),
      'tube-1/8',
      UNITS,
    ),
  ).toBe('14 x 100 ft: 33 x 36", left on the coil 12"')
})

test('what is bought and wasted', () => {
  const cuts = list({
    bought: [
      { stockMm: inches(144), count: 119 },
      { stockMm: inches(120), count: 80 },
    ],
    netMm: 969,
    boughtMm: 1000,
  })
  expect(boughtWords(cuts, UNITS)).toBe('119 x 12 ft + 80 x 10 ft')
  expect(wasteWords(cuts)).toBe('Waste 3.1 %')
  expect(wasteWords(list({}))).toBe('Waste 0.0 %')
  expect(wasteWords({ ...cuts, stock: 'pe-1' })).toBe('Left on coils 3.1 %')
})

test('a plan is called proven only where it is, and a share is rounded up', () => {
  const within = (share: number) => standingWords({ standing: { kind: 'within', share } })
  expect(standingWords({ standing: { kind: 'proven' } })).toBe('Proven: no plan costs less.')
  expect(within(0.004)).toBe('Within 0.4 % of a bound that no plan can beat.')
  // 0.41 % is not within 0.4 %.
  expect(within(0.0041)).toBe('Within 0.5 % of a bound that no plan can beat.')
  expect(within(0.00001)).toBe('Within 0.1 % of a bound that no plan can beat.')
  expect(standingWords({ standing: { kind: 'first', share: 0.01 } })).toBe(
    'Within 1.0 % of a bound that no plan can beat.',
  )
  expect(within(Infinity)).toBe('No bound is known that would tell how near this plan is to the cheapest.')
})

test('what boards cost, or a dash where a length has no price', () => {
  expect(costWords(list({ cents: 138_136 }), '$')).toBe('$1,381.36')
  expect(costWords(list({ cents: undefined }), '$')).toBe('—')
})

test('leftovers, boards sawn, pieces cut and joints are told beside what to buy', () => {
  const cuts = list({
    leftovers: [{ stockMm: inches(60), count: 2 }],
    sawn: [{ stockMm: inches(144), count: 3 }],
    cutAlready: [{ ...line({ kind: 'exact' }), count: 1 }],
    joints: 4,
  })
  expect(besideWords(cuts, UNITS)).toEqual([
    'From leftovers: 2 x 5 ft.',
    'Bought and sawn already: 3 x 12 ft.',
    '1 piece is cut already.',
    '4 joints within runs.',
  ])
  expect(besideWords(list({}), UNITS)).toEqual([])
})

test('every member of every sample has a name beside its mark', () => {
  for (const build of Object.values(scenarios))
    for (const { lines } of evaluate(build()).cuts)
      for (const mark of lines.flatMap(({ marks }) => marks))
        if (/[A-Z]/.test(mark)) expect(hasMark(mark), mark).toBe(true)
})

test('the text of a list says what to buy, what to cut, what can not be cut, and how', () => {
  const cuts = list({
    bought: [{ stockMm: inches(120), count: 1 }],
    lines: [{ ...line({ kind: 'exact' }), count: 2 }],
    tooLong: [{ ...line({ kind: 'exact' }), marks: ['BR'], lengthMm: inches(200) }],
    boards: [board({ stockMm: inches(120), pieces: [{ lengthMm: inches(50), count: 2, marks: ['GB'] }] })],
  })
  expect(cutText([cuts], UNITS).split('\n')).toEqual([
    '2x4 lumber: buy 1 x 10 ft',
    '    2          60"  GB  (measure)',
    '    1         200"  BR  (measure) - longer than any board',
    '  1 x 10 ft: 50" | 50"',
  ])
})
