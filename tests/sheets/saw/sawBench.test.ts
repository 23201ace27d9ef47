import { describe, expect, test } from 'vitest'
import { boardCut, cutsOf } from '../../../src/sheets/saw/boardCuts'
import { boardPicture } from '../../../src/app/drawer/saw/boardPicture'
import { keptOffcuts, offcutWords } from '../../../src/sheets/saw/offcuts'
import { sawOrder } from '../../../src/sheets/saw/sawOrder'
import { sharedStops } from '../../../src/sheets/saw/sharedStops'
import { piecesWords, sawnHow, sharedWords, workWords } from '../../../src/sheets/saw/sawWords'
import type { PieceLine } from '../../../src/evaluate/pieceTally'
import type { CutRule } from '../../../src/model/built'
import type { Board, CutLine } from '../../../src/model/cutList'
import { mateOf, type CuttingProblem, type Piece, type PieceRule } from '../../../src/solvers/cutting/problem'
import { feet, fromTicks, inches, toInches, toTicks } from '../../../src/units/length'
import { writerFor } from '../../../src/units/writer'

const ticks = (inch: number): number => toTicks(inches(inch))
const KERF = ticks(1 / 8)
const SAW = { kerfTicks: KERF, trimTicks: 0 }
const TRIMMED = { kerfTicks: KERF, trimTicks: ticks(1 / 2) }
const EXACT: PieceRule = { kind: 'exact' }

type Cuts = readonly (readonly [inch: number, count: number, ...marks: string[]])[]

/** A board of so many feet and what it leaves, by hand. */
const board = (stockFt: number, cuts: Cuts, offcutInch: number, count = 1): Board => ({
  stockMm: feet(stockFt),
  measuredMm: feet(stockFt),
  isLeftover: false,
  count,
  pieces: cuts.map(([inch, each, ...marks]) => ({ lengthMm: fromTicks(ticks(inch)), count: each, marks })),
  offcutMm: fromTicks(ticks(offcutInch)),
})

const piece = (inch: number, minusInch = 0, rule: PieceRule = EXACT, count = 4): Piece => ({
  lengthTicks: ticks(inch),
  minusTicks: ticks(minusInch),
  rule,
  count,
})

const listOf = (
  boards: readonly Board[],
  pieces: readonly Piece[] = [],
  cut: CutRule = { kind: 'exact' },
  saw = SAW,
) => {
  const problem: CuttingProblem = {
    pieces,
    stocks: [{ lengthTicks: ticks(144) }, { lengthTicks: ticks(120) }],
    saw,
  }
  const lines = pieces.map(({ lengthTicks, count }): CutLine => ({
    marks: ['X'],
    lengthMm: fromTicks(lengthTicks),
    count,
    cut,
  }))
  return { boards, pieces: lines, problem }
}

const line = (inch: number, cut: CutRule, marks = ['X'], minusInch = 0): PieceLine => ({
  lengthTicks: ticks(inch),
  count: 4,
  marks,
  minusTicks: ticks(minusInch),
  cut,
})

const HALF: CutRule = { kind: 'equal-parts', parts: 2, stockMm: feet(12) }

describe('cuts of a board', () => {
  test('one a piece where something is left', () => {
    // 3 x 43-1/2 = 130-1/2 and three kerfs of 1/8: 13-1/8 of 144 are left.
    expect(cutsOf(board(12, [[43.5, 3]], 13.125), SAW)).toBe(3)
  })

  test('one less where the last piece ends with the board', () => {
    // Two halves of 144 with one kerf: (144 - 1/8) / 2 = 71-15/16.
    expect(cutsOf(board(12, [[71.9375, 2]], 0), SAW)).toBe(1)
  })

  test('a sliver that the saw eats is still a cut', () => {
    // 2 x 71-15/16 less a sixteenth: 1/16 is left beside the kerf between them, less than a kerf.
    expect(cutsOf(board(12, [[71.90625, 2]], 0), SAW)).toBe(2)
  })

  test('one more to square the end; none of a whole board', () => {
    expect(cutsOf(board(12, [[43.5, 3]], 12.5), TRIMMED)).toBe(4)
    expect(cutsOf(board(10, [[120, 1]], 0), TRIMMED)).toBe(0)
  })
})

describe('the picture of a board', () => {
  const inchesOf = ({ fromMm, toMm }: { fromMm: number; toMm: number }) => [
    Number(toInches(fromMm).toFixed(4)),
    Number(toInches(toMm).toFixed(4)),
  ]

  test('has pieces in cutting order, a kerf after each, and what is left', () => {
    // 16, kerf to 16-1/8, 118-5/8 to 134-3/4, kerf to 134-7/8, and 9-1/8 of 144.
    const { pieces, kerfs, offcut, trim } = boardPicture(
      board(
        12,
        [
          [16, 1, 'SP'],
          [118.625, 1, 'BR'],
        ],
        9.125,
      ),
      SAW,
    )
    expect(pieces.map(inchesOf)).toEqual([
      [0, 16],
      [16.125, 134.75],
    ])
    expect(kerfs.map(inchesOf)).toEqual([
      [16, 16.125],
      [134.75, 134.875],
    ])
    expect([offcut && inchesOf(offcut), trim]).toEqual([[134.875, 144], undefined])
  })

  test('begins after what is squared off and its kerf', () => {
    // 1/2 and 1/8, then 43-1/2.
    const { pieces, trim } = boardPicture(board(12, [[43.5, 3]], 12.5), TRIMMED)
    expect([trim && inchesOf(trim), pieces[0] && inchesOf(pieces[0])]).toEqual([
      [0, 0.5],
      [0.625, 44.125],
    ])
  })
})

describe('how a board is cut', () => {
  test('whole, on the middle mark, or against the stop', () => {
    const half: PieceRule = { kind: 'equal-parts', parts: 2, stockTicks: ticks(144) }
    const list = listOf([], [piece(71.9375, 1 / 16, half)], HALF)
    expect(boardCut(board(10, [[120, 1]], 0), list)).toEqual({ kind: 'whole' })
    expect(boardCut(board(12, [[71.9375, 2]], 0), list)).toMatchObject({ kind: 'equal-parts', parts: 2 })
    // Of a leftover or with another piece beside it a half is measured.
    expect(boardCut({ ...board(12, [[71.9375, 2]], 0), isLeftover: true }, list).kind).toBe('stops')
    expect(
      boardCut(
        board(
          12,
          [
            [71.9375, 1],
            [43.5, 1],
          ],
          28,
        ),
        list,
      ),
    ).toEqual({
      kind: 'stops',
      stopsMm: [fromTicks(ticks(71.9375)), fromTicks(ticks(43.5))],
    })
  })

  test('in the words of the saw hand', () => {
    const how = (of: PieceLine, keepsRule = true) =>
      sawnHow(of, 'lumber-2x4', { keepsRule, saw: SAW }, 'feet-inches')
    // The worked example of the trade notes: a half of a 12 ft board for a riser of at least 71-7/8.
    expect(how(line(71.9375, HALF, ['RS-p'], 1 / 16))).toBe(
      'Halve: mark the middle of a 12 ft board, cut on the mark; each half at least 71-7/8"',
    )
    expect(how(line(71.9375, HALF), false)).toBe('Measure')
    expect(how(line(120, { kind: 'uncut', stockMm: feet(10) }))).toBe('Whole 10 ft board, not cut')
    // (120 - 2 x 1/8) / 3 = 39-11/12, which the tape reads 39-15/16.
    const third = fromTicks(mateOf(ticks(120), 3, SAW))
    expect(
      how(line(toInches(third), { kind: 'equal-parts', parts: 3, stockMm: feet(10) }, ['GB'], 1 / 8)),
    ).toBe('3 equal parts of a 10 ft board, 39-15/16" each; none under 39-13/16"')
  })
})

describe('the order of boards', () => {
  test('ends a board where the next begins', () => {
    // A: 60 then 43; B: 43 alone; C: 43 then 16. Stops: 60, 43 (A), none (B), 16 (C): three settings.
    const boards = [
      board(
        12,
        [
          [60, 1],
          [43, 1],
        ],
        40,
      ),
      board(12, [[43, 3]], 14),
      board(
        10,
        [
          [43, 2],
          [16, 1],
        ],
        17,
      ),
    ]
    const { boards: ordered, cuts, stopSettings } = sawOrder(listOf(boards))
    expect(ordered.map(({ pieces }) => pieces.map(({ lengthMm }) => Math.round(toInches(lengthMm))))).toEqual(
      [[60, 43], [43], [43, 16]],
    )
    // Cuts: 2 + 3 + 3, all with something left.
    expect([cuts, stopSettings]).toEqual([8, 3])
  })

  test('turns the pieces of a board round where that leaves the stop as it is', () => {
    const boards = [
      board(
        12,
        [
          [60, 1],
          [43, 1],
        ],
        40,
      ),
      board(
        12,
        [
          [70, 1],
          [43, 1],
        ],
        30,
      ),
    ]
    const { boards: ordered, stopSettings } = sawOrder(listOf(boards))
    expect(ordered.map(({ pieces }) => pieces.map(({ lengthMm }) => Math.round(toInches(lengthMm))))).toEqual(
      [
        [70, 43],
        [43, 60],
      ],
    )
    expect(stopSettings).toBe(3)
  })

  test('begins with the longest stop, and with boards that ask for it alone', () => {
    const boards = [
      board(
        12,
        [
          [118, 1],
          [16, 1],
        ],
        9,
      ),
      board(10, [[118, 1]], 1),
      board(10, [[119, 1]], 0.5),
    ]
    const { boards: ordered, stopSettings } = sawOrder(listOf(boards))
    expect(ordered.map(({ pieces }) => pieces.map(({ lengthMm }) => Math.round(toInches(lengthMm))))).toEqual(
      [[119], [118], [118, 16]],
    )
    expect(stopSettings).toBe(3)
  })

  test('boards that need no stop come first and are no setting', () => {
    const boards = [board(12, [[43, 3]], 14, 5), board(10, [[120, 1]], 0, 2)]
    const { boards: ordered, cuts, stopSettings } = sawOrder(listOf(boards))
    expect(ordered.map(({ count }) => count)).toEqual([2, 5])
    expect([cuts, stopSettings]).toEqual([15, 1])
    expect(workWords({ boards: ordered, cuts, stopSettings }, 'lumber-2x4')).toBe(
      '15 cuts; the stop is set once.',
    )
    expect(workWords({ boards: ordered, cuts, stopSettings }, 'pe-1')).toBe('15 cuts.')
  })

  test('no boards are no work', () => {
    expect(workWords(sawOrder(listOf([])), 'lumber-2x4')).toBe('Nothing to saw.')
  })
})

describe('two stops that could be one', () => {
  test('within the tolerance of the longer, or a sixteenth apart', () => {
    const shared = sharedStops([piece(43.5, 1 / 8), piece(43.375), piece(57), piece(56.9375), piece(30)])
    expect(shared.map((each) => sharedWords(each, 'feet-inches'))).toEqual([
      '57" and 56-15/16" are 1/16" apart, which a tape hardly tells: drawn alike they would share one stop.',
      'One stop at 43-3/8" would serve 43-1/2" and 43-3/8": the longer pieces may be that much shorter.',
    ])
  })

  test('not where one of them is parted on marks, or is further off', () => {
    const half: PieceRule = { kind: 'equal-parts', parts: 2, stockTicks: ticks(144) }
    expect(sharedStops([piece(71.9375, 1, half), piece(71.875), piece(71.75, 1 / 16)])).toEqual([])
  })
})

describe('offcuts', () => {
  const { onTape } = writerFor('feet-inches')

  test('of 16 in and more are kept, those of one length together', () => {
    const boards = [
      board(12, [], 28.25, 3),
      board(10, [], 28.25, 2),
      board(12, [], 15.9, 9),
      board(12, [], 16, 1),
    ]
    expect(keptOffcuts(boards, onTape).map(({ lengthMm, count }) => [onTape(lengthMm), count])).toEqual([
      ['28-1/4"', 5],
      ['16"', 1],
    ])
  })

  test('are good for what this bay has', () => {
    const state = (of: PieceLine) => ({ line: of, right: 0, recut: 0, toCut: of.count })
    const lines = [line(43.5, { kind: 'exact' }, ['BX']), line(16, { kind: 'exact' }, ['SP'])].map(state)
    const uses = { pegs: 12, shimmedFeet: 88 }
    const words = (inch: number, stock = 'lumber-2x4') =>
      offcutWords(inches(inch), { stock, saw: SAW }, lines, uses, 'feet-inches')
    expect(words(50)).toBe(
      '3 runner splice plates; or a spare base cross-piece (43-1/2"); or stakes for the 12 pegs of the trenches; or packing under the 88 riser feet that are shimmed',
    )
    expect(words(20)).toContain('1 runner splice plate;')
    // Three plates of 16 take two kerfs: 48-1/4 of offcut.
    expect(words(48.125)).toContain('2 runner splice plates;')
    expect(words(48.25)).toContain('3 runner splice plates;')
    // 2 x 43-1/2 and a kerf are 87-1/8.
    expect(words(88)).toContain('; or 2 spares of 43-1/2" (base cross-piece);')
    const none = { stock: 'conduit-3/4', saw: SAW }
    expect(offcutWords(inches(20), none, [], uses, 'feet-inches')).toBe('the next job')
    expect(words(1000, 'pe-1')).toBe('the next job')
  })
})

test('pieces of a board as they are cut', () => {
  const { pieces } = board(
    12,
    [
      [43.5, 2, 'BX', 'TT'],
      [16, 1, 'SP'],
    ],
    40,
  )
  expect(piecesWords(pieces, 'lumber-2x4', 'feet-inches')).toBe('2 x 43-1/2" (BX, TT), 16" (SP)')
  // Of a coil what is longer than a bench is measured off in feet: 387-5/8 is 32 ft 3-5/8.
  const lateral = board(100, [[387.625, 3, 'lateral']], 37).pieces
  expect(piecesWords(lateral, 'pe-3/4', 'feet-inches')).toBe(`3 x 32' 3-5/8" (lateral)`)
  expect(piecesWords(pieces, 'pe-3/4', 'feet-inches')).toContain('43-1/2"')
})
