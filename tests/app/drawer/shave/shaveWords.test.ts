import { expect, test } from 'vitest'
import {
  blockedWords,
  boughtWords,
  howWords,
  memberWords,
  offWords,
  pieceWords,
  type Reader,
  savedWords,
  shaveLabel,
  toleranceWords,
  yieldWords,
} from '../../../../src/app/drawer/shave/shaveWords'
import type { AllowedShave, BlockedShave } from '../../../../src/evaluate/shave/shaves'
import { wordsFor } from '../../../../src/sidebar/words'
import { inches, toTicks } from '../../../../src/units/length'
import { bay } from '../../../support/bay'

const layout = bay('60 x 60 ft')
  .row('A', [165, 100], { bearerEnd: 1 })
  .row('B', [265, 100], { bearerEnd: 1 })
  .layout()

const reader: Reader = { units: 'feet-inches', words: wordsFor(layout.parts, 'feet-inches'), currency: '$' }
const metric: Reader = { units: 'metric', words: wordsFor(layout.parts, 'metric'), currency: '€' }

const near: AllowedShave['near'] = {
  members: {
    stock: 'lumber-2x4',
    lengthTicks: toTicks(inches(61)),
    marks: ['GB'],
    count: 81,
    parts: ['rack-row-1', 'rack-row-2'],
    fields: ['bearerEndMm'],
  },
  stockMm: inches(120),
  targetTicks: toTicks(inches(59.9375)),
  fromABoard: 1,
}

const shave: AllowedShave = {
  near,
  field: 'bearerEndMm',
  changes: near.members.parts.map((part) => ({ part, values: { bearerEndMm: inches(15 / 32) } })),
  saved: { boards: 18, lengthMm: 18 * inches(120), cents: 11160 },
  boughtNow: [{ stockMm: inches(120), count: 243 }],
  boughtThen: [{ stockMm: inches(120), count: 225 }],
}

test('members by their names, several of each and each name once', () => {
  expect(memberWords(['GB'])).toBe('gutter bearers')
  expect(memberWords(['RS-p', 'RS-s'])).toBe('risers')
  expect(memberWords(['BX', 'SB', 'TT'])).toBe('base cross-pieces, side braces and top ties')
})

test('a shave says what to take off, what a board then gives, how, and what that saves', () => {
  expect(pieceWords(near, reader)).toBe('Gutter bearers, 81 of 61"')
  expect(offWords(near, reader)).toBe('1-1/16" off, to 59-15/16"')
  expect(yieldWords(near, reader)).toBe('a 10 ft board gives 2, not 1: alone they take 41, not 81')
  expect(howWords(layout, shave, reader)).toBe('bearer past the trough 15/32", not 1", in A and B')
  expect(savedWords(shave.saved, 'lumber-2x4', reader)).toBe('18 boards, 180 ft, $111.60')
  expect(boughtWords(shave, reader)).toBe('first plans: 225 x 10 ft, not 243 x 10 ft')
  expect(shaveLabel(shave, reader)).toBe('Shave 1-1/16" off gutter bearers')
})

test('the same in metric', () => {
  expect(pieceWords(near, metric)).toBe('Gutter bearers, 81 of 1549 mm')
  expect(savedWords(shave.saved, 'lumber-2x4', metric)).toBe('18 boards, 54.86 m, €111.60')
})

test('a length is told so that what is cut to it comes out', () => {
  // Three from 12 ft: (144 + 1/8) / 3 - 1/8 = 47.9167, of which the sixteenth below is 47-7/8; 1217.08 mm.
  const third = {
    ...near,
    stockMm: inches(144),
    targetTicks: Math.floor(toTicks(inches(144.125)) / 3) - toTicks(inches(0.125)),
  }
  const of = { ...third, members: { ...near.members, lengthTicks: toTicks(inches(48.5)) }, fromABoard: 2 }
  expect(offWords(of, reader)).toBe('5/8" off, to 47-7/8"')
  // 48-1/2 in are 1231.9 mm; 14.8 come off.
  expect(offWords(of, metric)).toBe('15 mm off, to 1217 mm')
})

test('where alone they take as many boards, that is not said', () => {
  // 18 at 7 a board and at 8 a board are 3 boards.
  expect(yieldWords({ ...near, members: { ...near.members, count: 18 }, fromABoard: 7 }, reader)).toBe(
    'a 10 ft board gives 8, not 7',
  )
})

test('of many rows the first are named and the rest counted', () => {
  const rows = Array.from({ length: 12 }, (_, index) => `R${index + 1}`)
  const many = rows
    .reduce((on, name, index) => on.row(name, [100 + 70 * index, 100], { bearerEnd: 1 }), bay('120 x 60 ft'))
    .layout()
  const changes = many.parts.map(({ id }) => ({ part: id, values: { bearerEndMm: inches(15 / 32) } }))
  const wide = { ...reader, words: wordsFor(many.parts, 'feet-inches') }
  expect(howWords(many, { ...shave, changes }, wide)).toMatch(/ in R1, R2, R3 and 9 more$/)
})

test('money that nobody knows is a dash, and one board is one board', () => {
  const saved = { boards: 1, lengthMm: inches(120), cents: undefined }
  expect(savedWords(saved, 'lumber-2x4', reader)).toBe('1 board, 10 ft, —')
  expect(savedWords({ ...saved, boards: 0 }, 'conduit-1', reader)).toBe('10 ft, —')
})

test('pieces longer than the board that they could come from', () => {
  expect(yieldWords({ ...near, fromABoard: 0 }, reader)).toBe(
    'a 10 ft board then gives one; now it is too short',
  )
})

test('what stands in the way is said thing by thing', () => {
  const blocked = (hindrances: BlockedShave['hindrances']) =>
    blockedWords(layout, { near, hindrances }, reader)
  expect(blocked([])).toEqual(['Not possible: nothing in the plan makes them shorter.'])
  expect(
    blocked([
      { kind: 'saves-nothing', field: 'lineSpacingMm' },
      {
        kind: 'bounds',
        field: 'bearerEndMm',
        sentence: 'Bearer past the trough is -1"; it can be 0" to 6".',
      },
    ]),
  ).toEqual([
    'Not possible by line spacing: all in all the bay would buy no less.',
    'Not possible by bearer past the trough: Bearer past the trough is -1"; it can be 0" to 6".',
  ])
})

test('a tolerance that the plan uses is told apart', () => {
  const { stock } = near.members
  const save = {
    stock,
    marks: ['BX'],
    lengthTicks: toTicks(inches(48)),
    offTicks: toTicks(inches(1 / 16)),
    boards: 3,
  }
  expect(toleranceWords(save, reader)).toBe(
    'Base cross-pieces of 48" may come short: cut up to 1/16" under, they save 3 boards. The saw list has them so.',
  )
})
