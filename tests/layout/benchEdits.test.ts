import { describe, expect, test } from 'vitest'
import type { CutPiece } from '../../src/layout/bench'
import {
  keepOffcuts,
  piecesToLeftovers,
  recutPieces,
  sawBoards,
  tickPieces,
  unsawBoards,
  untickPieces,
  type BoardsSawn,
} from '../../src/layout/benchEdits'
import { setBench } from '../../src/layout/bayEdits'
import type { Edited } from '../../src/layout/edited'
import { emptyBay } from '../../src/layout/empty'
import type { Layout } from '../../src/layout/schema'
import { feet, inches, onTick } from '../../src/units/length'
import { expectEditLaws } from '../support/laws'

const STOCK = 'lumber-2x4'
const mm = (inch: number): number => onTick(inches(inch))

const bay = (): Layout => emptyBay(feet(30), feet(96), 'Test bay')

const layoutOf = (edited: Edited): Layout => {
  if (!edited.ok) throw new Error(edited.sentence)
  return edited.layout
}

/** The edit made, with the laws that hold for every edit. */
const after = (layout: Layout, edit: (layout: Layout) => Edited): Layout =>
  expectEditLaws(layout, (l) => layoutOf(edit(l)))

const piece = (inch: number, count: number, marks = ['BX']): CutPiece => ({
  stock: STOCK,
  lengthMm: mm(inch),
  count,
  marks,
})

/** 12 ft boards of two risers, or of two cross-pieces and an offcut. */
const halves = (count: number): BoardsSawn => ({
  stock: STOCK,
  stockMm: feet(12),
  isLeftover: false,
  count,
  pieces: [
    { lengthMm: mm(71.9375), count: 2, marks: ['RS-p'], holes: [{ mark: 'RS-p', centreMm: mm(69.375) }] },
  ],
  offcutMm: undefined,
})
const crosses = (count: number): BoardsSawn => ({
  ...halves(count),
  pieces: [{ lengthMm: mm(43.5), count: 2, marks: ['BX', 'TT'] }],
  offcutMm: mm(56.75),
})

const counted = ({ bench }: Layout) => ({
  cut: bench.cut.map(({ count }) => count),
  sawn: bench.sawn.map(({ count }) => count),
  leftovers: bench.leftovers.map(({ count }) => count),
})

describe('boards are sawn', () => {
  test('their pieces are cut, with marks and hole heights; like boards are counted together', () => {
    const once = after(bay(), (l) => sawBoards(l, halves(3)))
    const twice = after(once, (l) => sawBoards(l, halves(2)))
    expect(twice.bench.cut).toEqual([{ ...halves(1).pieces[0], stock: STOCK, count: 10 }])
    expect(twice.bench.sawn).toEqual([
      { stock: STOCK, stockMm: feet(12), count: 5, pieces: [{ lengthMm: mm(71.9375), count: 2 }] },
    ])
  })

  test('leftovers are used up, and were never bought', () => {
    const lying = after(bay(), (l) =>
      setBench(l, { leftovers: [{ stock: STOCK, lengthMm: mm(60), count: 3 }] }),
    )
    const from60: BoardsSawn = { ...crosses(2), stockMm: mm(60), isLeftover: true, offcutMm: undefined }
    expect(counted(after(lying, (l) => sawBoards(l, from60)))).toEqual({ cut: [4], sawn: [], leftovers: [1] })
  })

  test('a count that is none is refused', () => {
    expect(sawBoards(bay(), halves(0)).ok).toBe(false)
  })
})

describe('a tick is taken back', () => {
  const sawn = () =>
    after(
      after(bay(), (l) => sawBoards(l, halves(3))),
      (l) => sawBoards(l, crosses(4)),
    )

  test('with its pieces, as many boards as are said', () => {
    const start = sawn()
    const [halved] = start.bench.sawn
    const fewer = after(start, (l) => unsawBoards(l, halved!, 1))
    expect(counted(fewer)).toEqual({ cut: [4, 8], sawn: [2, 4], leftovers: [] })
    const none = after(fewer, (l) => unsawBoards(l, fewer.bench.sawn[0]!, 2))
    expect(counted(none)).toEqual({ cut: [8], sawn: [4], leftovers: [] })
  })

  test('with offcuts that were kept', () => {
    const start = sawn()
    const kept = after(start, (l) => keepOffcuts(l, start.bench.sawn[1]!))
    expect(kept.bench.leftovers).toEqual([{ stock: STOCK, lengthMm: mm(56.75), count: 4 }])
    const board = kept.bench.sawn.find(({ isOffcutKept }) => isOffcutKept === true)
    expect(keepOffcuts(kept, board!)).toEqual({ ok: true, layout: kept })
    expect(counted(after(kept, (l) => unsawBoards(l, board!, 3)))).toEqual({
      cut: [6, 2],
      sawn: [3, 1],
      leftovers: [1],
    })
  })

  test('not where its pieces are something else by now', () => {
    const start = sawn()
    const [risers] = start.bench.cut
    const recut = after(start, (l) =>
      recutPieces(l, { from: risers!, into: [piece(69.875, 6, ['RS-p'])], rests: [] }),
    )
    const back = unsawBoards(recut, recut.bench.sawn[0]!, 1)
    expect(back).toEqual({ ok: false, sentence: expect.stringContaining('cut into others since') })
  })
})

describe('pieces are ticked by themselves', () => {
  test('from another job, and taken off again, in part or whole', () => {
    const twelve = after(bay(), (l) => tickPieces(l, piece(43.5, 12)))
    const more = after(twelve, (l) => tickPieces(l, piece(43.5, 3)))
    expect(counted(more)).toMatchObject({ cut: [15] })
    expect(counted(after(more, (l) => untickPieces(l, [piece(43.5, 5)])))).toMatchObject({ cut: [10] })
    expect(after(more, (l) => untickPieces(l, [piece(43.5, 15)])).bench.cut).toEqual([])
  })

  test('those with other marks are left alone', () => {
    const both = after(
      after(bay(), (l) => tickPieces(l, piece(43.5, 4))),
      (l) => tickPieces(l, piece(43.5, 6, ['TT'])),
    )
    expect(counted(after(both, (l) => untickPieces(l, [piece(43.5, 9, ['TT'])])))).toMatchObject({ cut: [4] })
  })
})

describe('cut pieces become', () => {
  test('other pieces, and a rest that is kept', () => {
    const start = after(bay(), (l) => tickPieces(l, piece(71.9375, 10, ['RS-p'])))
    // 71-15/16 - 43-1/2 - 1/8 = 28-5/16.
    const recut = after(start, (l) =>
      recutPieces(l, {
        from: piece(71.9375, 4, ['RS-p']),
        into: [piece(43.5, 4)],
        rests: [{ stock: STOCK, lengthMm: mm(28.3125), count: 4 }],
      }),
    )
    expect(recut.bench.cut.map(({ lengthMm, count }) => [lengthMm, count])).toEqual([
      [mm(71.9375), 6],
      [mm(43.5), 4],
    ])
    expect(recut.bench.leftovers).toEqual([{ stock: STOCK, lengthMm: mm(28.3125), count: 4 }])
  })

  test('boards on hand', () => {
    const start = after(bay(), (l) => tickPieces(l, piece(71.9375, 10)))
    const lying = after(start, (l) => piecesToLeftovers(l, piece(71.9375, 7)))
    expect(counted(lying)).toEqual({ cut: [3], sawn: [], leftovers: [7] })
  })
})
