import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  cutOfStock,
  whatsCut,
  type CutOfStock,
  type WantedOfStock,
} from '../../../src/evaluate/sawn/whatsCut'
import type { PieceLine } from '../../../src/evaluate/pieceTally'
import type { CutPiece } from '../../../src/layout/bench'
import { leastOf } from '../../../src/solvers/cutting/problem'
import { fromTicks, inches, onTick, toTicks } from '../../../src/units/length'

const STOCK = 'lumber-2x4'
const ticks = (inch: number): number => toTicks(inches(inch))
const saw = { kerfTicks: ticks(1 / 8), trimTicks: 0 }
const noHoles = () => []

const line = (inch: number, count: number, marks: readonly string[], minusInch = 0): PieceLine => ({
  lengthTicks: ticks(inch),
  count,
  marks,
  minusTicks: ticks(minusInch),
  cut: { kind: 'exact' },
})

const wantedOf = (lines: readonly PieceLine[]): WantedOfStock => ({
  stock: STOCK,
  lines,
  pieces: lines.map(({ lengthTicks, count, minusTicks }) => ({
    lengthTicks,
    count,
    minusTicks,
    rule: { kind: 'exact' },
  })),
  saw,
})

const cut = (inch: number, count: number, marks: string[] = ['BX']): CutPiece => ({
  stock: STOCK,
  lengthMm: inches(inch),
  count,
  marks,
})

const counts = ({ lines }: CutOfStock) => lines.map(({ right, recut, toCut }) => [right, recut, toCut])

describe('what is cut, in three groups', () => {
  test('right, to be re-cut, and of no use', () => {
    const wanted = wantedOf([line(69.875, 26, ['RS-p']), line(43.5, 10, ['BX'])])
    const pieces = [cut(71.9375, 30, ['RS-p']), cut(43.5, 4), cut(40, 2)]
    const state = cutOfStock(wanted, pieces, noHoles)
    // 26 of the 30 long risers come down to 69-7/8; the other four still make cross-pieces of 43-1/2; the two of 40 in nothing.
    expect(state.right.map(({ piece, count }) => [piece.lengthMm, count])).toEqual([[inches(43.5), 4]])
    expect(state.recut.map(({ count, makes }) => [count, makes[0].line.marks])).toEqual([
      [26, ['RS-p']],
      [4, ['BX']],
    ])
    expect(state.scrap.map(({ piece, count }) => [piece.lengthMm, count])).toEqual([[inches(40), 2]])
    expect(counts(state)).toEqual([
      [0, 26, 0],
      [4, 4, 2],
    ])
  })

  test('what comes off is the difference, and what is left is a kerf less', () => {
    const [each] = cutOfStock(wantedOf([line(43.5, 1, ['BX'])]), [cut(71.9375, 1)], noHoles).recut
    // 71-15/16 - 43-1/2 = 28-7/16, less the kerf of 1/8: 28-5/16.
    expect([each?.offMm, each?.restMm]).toEqual([onTick(inches(28.4375)), onTick(inches(28.3125))])
  })

  test('of a stock that the bay wants none of any more all is of no use', () => {
    const gone = { ...cut(119.75, 4, ['RL']), stock: 'conduit-1' }
    const [, conduit] = whatsCut([wantedOf([line(43.5, 1, ['BX'])])], [gone], noHoles)
    expect(conduit).toMatchObject({ stock: 'conduit-1', right: [], recut: [], lines: [] })
    expect(conduit?.scrap).toEqual([{ piece: gone, count: 4 }])
  })
})

describe('holes', () => {
  const holed = {
    ...cut(71.9375, 26, ['RS-p', 'RS-s']),
    holes: [
      { mark: 'RS-p', centreMm: inches(69.375) },
      { mark: 'RS-s', centreMm: inches(69.4375) },
    ],
  }
  const holesAt = (plain: number, sleeve: number) => () => [
    { mark: 'RS-p', centreMm: inches(plain) },
    { mark: 'RS-s', centreMm: inches(sleeve) },
  ]
  const risers = (inch: number, minus = 0) => wantedOf([line(inch, 26, ['RS-p', 'RS-s'], minus)])

  test('a piece whose length still fits is told apart by where its holes belong', () => {
    const drilled = (plain: number, sleeve: number) =>
      cutOfStock(risers(71.9375), [holed], holesAt(plain, sleeve)).right[0]?.drilled
    expect(drilled(69.375, 69.4375)).toBe('same')
    // A thirty-second is drilled over; half an inch is not.
    expect(drilled(69.375 + 1 / 32, 69.4375)).toBe('same')
    expect(drilled(68.875, 68.9375)).toBe('moved')
    const [unnoted] = cutOfStock(risers(71.9375), [{ ...holed, holes: undefined }], holesAt(69, 69)).right
    expect(unnoted?.drilled).toBe('unknown')
    expect(cutOfStock(risers(71.9375), [holed], noHoles).right[0]?.drilled).toBe('no-holes')
  })

  test('a second height beside the first belongs to some of the pieces, so all are to be checked', () => {
    const both = () => [68.875, 69.375].map((inch) => ({ mark: 'RS-p', centreMm: inches(inch) }))
    const noted = [{ mark: 'RS-p', centreMm: inches(69.375) }]
    const drilled = (holes: typeof noted) =>
      cutOfStock(risers(71.9375), [{ ...holed, holes }], both).right[0]?.drilled
    expect(drilled(noted)).toBe('moved')
    expect(drilled(both())).toBe('same')
    // Heights of members that were never noted say nothing of those that were.
    expect(drilled([...both(), { mark: 'RS-s', centreMm: inches(60) }])).toBe('same')
  })

  test('towers 2 in shorter: 2 in off the foot bring both holes where they belong', () => {
    // 69-3/8 - 2 = 67-3/8 and 69-7/16 - 2 = 67-7/16; the riser comes down by 2-1/16, so a sixteenth is left for the top.
    const [each] = cutOfStock(risers(69.875), [holed], holesAt(67.375, 67.4375)).recut
    expect([each?.offMm, each?.offFootMm, each?.drilled]).toEqual([
      onTick(inches(2.0625)),
      inches(2),
      'moved',
    ])
  })

  test('no cut at the foot helps holes that come up, or that move apart', () => {
    const offFoot = (plain: number, sleeve: number) =>
      cutOfStock(risers(69.875), [holed], holesAt(plain, sleeve)).recut[0]?.offFootMm
    expect(offFoot(70, 70.0625)).toBeUndefined()
    expect(offFoot(67.375, 68)).toBeUndefined()
    // Holes 3 in down are more than the 2-1/16 that there is to take off.
    expect(offFoot(66.375, 66.4375)).toBeUndefined()
  })
})

const sixteenths = (least: number, most: number) =>
  fc.integer({ min: least * 16, max: most * 16 }).map((n) => n / 16)

const someLines = fc.array(
  fc.record({
    inch: sixteenths(8, 120),
    count: fc.integer({ min: 1, max: 40 }),
    minus: fc.constantFrom(0, 1 / 16, 1 / 8),
  }),
  { maxLength: 8 },
)
const someCut = fc.array(fc.record({ inch: sixteenths(8, 120), count: fc.integer({ min: 1, max: 40 }) }), {
  maxLength: 8,
})

describe('whatever is wanted and cut', () => {
  const check = (holds: (wanted: WantedOfStock, pieces: readonly CutPiece[], state: CutOfStock) => void) =>
    fc.assert(
      fc.property(someLines, someCut, (lines, pieces) => {
        const wanted = wantedOf(lines.map(({ inch, count, minus }, i) => line(inch, count, [`M${i}`], minus)))
        const all = pieces.map(({ inch, count }) => cut(inch, count))
        holds(wanted, all, cutOfStock(wanted, all, noHoles))
      }),
      { seed: 20_417, numRuns: 400 },
    )

  test('every cut piece is in exactly one group', () => {
    check((_, pieces, { right, recut, scrap }) => {
      for (const piece of pieces) {
        const of = [...right, ...recut, ...scrap].filter((each) => each.piece === piece)
        expect(of.reduce((sum, { count }) => sum + count, 0)).toBe(piece.count)
      }
    })
  })

  test('what is right, re-cut and still to cut is what is wanted, and the re-cuts make what they are counted for', () => {
    check((wanted, _, { right, recut, lines }) => {
      expect(lines.map((each) => each.right + each.recut + each.toCut)).toEqual(
        wanted.lines.map(({ count }) => count),
      )
      for (const each of lines) {
        expect(each.toCut).toBeGreaterThanOrEqual(0)
        expect(
          right.filter(({ line: l }) => l === each.line).reduce((sum, { count }) => sum + count, 0),
        ).toBe(each.right)
        const made = recut.reduce(
          (sum, { makes, count }) => sum + count * makes.filter(({ line: l }) => l === each.line).length,
          0,
        )
        expect(made).toBe(each.recut)
      }
    })
  })

  test('nothing is made longer than it is, shorter than it may be, or without its kerfs', () => {
    check((_, __, { recut }) => {
      for (const { piece, makes, restMm } of recut) {
        const taken =
          makes.reduce((sum, { lengthMm }) => sum + toTicks(lengthMm), 0) + (makes.length - 1) * saw.kerfTicks
        expect(taken + toTicks(restMm)).toBeLessThanOrEqual(toTicks(piece.lengthMm))
        for (const { line: l, lengthMm } of makes)
          expect(toTicks(lengthMm)).toBeGreaterThanOrEqual(leastOf({ ...l, rule: { kind: 'exact' } }))
      }
    })
  })

  test('no piece is given up that could still make something wanted', () => {
    check((_, __, { scrap, lines }) => {
      for (const { line: l } of lines.filter(({ toCut }) => toCut > 0))
        for (const { piece } of scrap)
          expect(toTicks(piece.lengthMm)).toBeLessThan(leastOf({ ...l, rule: { kind: 'exact' } }))
    })
  })

  test('lengths are those of the tick', () => {
    check((_, __, { recut }) => {
      for (const { makes } of recut)
        for (const { lengthMm } of makes) expect(fromTicks(toTicks(lengthMm))).toBe(lengthMm)
    })
  })
})
