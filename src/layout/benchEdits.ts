import { toTicks } from '../units/length'
import { setBench } from './bayEdits'
import type { Bench, CutPiece, Leftover, SawnBoard } from './bench'
import { done, refusal, type Edited } from './edited'
import type { Layout } from './schema'

/**
 * Edits of what is cut: boards and pieces ticked, ticks taken back, cut pieces made into others. Lists keep like things together
 * under one count; each edit is one entry of the history.
 */

interface Counted {
  readonly count: number
}

/** What makes two entries alike: all but how many there are, in whatever order it was written. */
const likeness = (entry: Counted): string =>
  JSON.stringify(
    Object.entries(entry)
      .filter(([key, value]) => key !== 'count' && value !== undefined)
      .sort(([a], [b]) => (a < b ? -1 : 1)),
  )

const isLike = (a: Counted, b: Counted): boolean => likeness(a) === likeness(b)

/** The list with one entry more, counted in with those alike. */
const withMore = <T extends Counted>(list: readonly T[], more: T): T[] =>
  list.some((each) => isLike(each, more))
    ? list.map((each) => (isLike(each, more) ? { ...each, count: each.count + more.count } : each))
    : [...list, more]

const withAll = <T extends Counted>(list: readonly T[], more: readonly T[]): T[] =>
  more.reduce<T[]>(withMore, [...list])

/** The list with so many fewer of what `is` says, the first ones first; those that are not there are passed over. */
const withLess = <T extends Counted>(list: readonly T[], count: number, is: (each: T) => boolean): T[] => {
  let left = count
  return list.flatMap((each) => {
    if (left === 0 || !is(each)) return [each]
    const taken = Math.min(left, each.count)
    left -= taken
    return each.count > taken ? [{ ...each, count: each.count - taken }] : []
  })
}

const countOf = <T extends Counted>(list: readonly T[], is: (each: T) => boolean): number =>
  list.reduce((sum, each) => sum + (is(each) ? each.count : 0), 0)

interface Length {
  readonly stock: string
  readonly lengthMm: number
}

/** Of one stock and one length, to the tick. */
const isOf =
  (length: Length) =>
  ({ stock, lengthMm }: Length): boolean =>
    stock === length.stock && toTicks(lengthMm) === toTicks(length.lengthMm)

/** Like boards as the saw hand ticks them off. */
export interface BoardsSawn {
  readonly stock: string
  /** What a board is sold by; of leftovers what a tape finds, mm. */
  readonly stockMm: number
  readonly isLeftover: boolean
  readonly count: number
  /** Of one board. */
  readonly pieces: readonly Omit<CutPiece, 'stock'>[]
  /** Only where it is worth keeping, mm. */
  readonly offcutMm: number | undefined
}

const sawnBoard = ({ stock, stockMm, count, pieces, offcutMm }: BoardsSawn): SawnBoard => ({
  stock,
  stockMm,
  count,
  pieces: pieces.map((piece) => ({ lengthMm: piece.lengthMm, count: piece.count })),
  ...(offcutMm === undefined ? {} : { offcutMm }),
})

const piecesOf = ({ stock, count, pieces }: BoardsSawn): CutPiece[] =>
  pieces.map((piece) => ({ ...piece, stock, count: piece.count * count }))

/** Boards are sawn: their pieces are cut; what was bought is used up, and so is what lay about. */
export const sawBoards = (layout: Layout, boards: BoardsSawn): Edited => {
  const { cut, sawn, leftovers } = layout.bench
  const { stock, stockMm, count, isLeftover } = boards
  const pieces = withAll(cut, piecesOf(boards))
  return isLeftover
    ? setBench(layout, {
        cut: pieces,
        leftovers: withLess(leftovers, count, isOf({ stock, lengthMm: stockMm })),
      })
    : setBench(layout, { cut: pieces, sawn: withMore(sawn, sawnBoard(boards)) })
}

const withoutSawn = (layout: Layout, board: SawnBoard, count: number): Partial<Bench> => {
  const { cut, sawn, leftovers } = layout.bench
  const { stock, pieces = [], offcutMm, isOffcutKept = false } = board
  return {
    sawn: withLess(sawn, count, (each) => isLike(each, board)),
    cut: pieces.reduce(
      (left, piece) => withLess(left, piece.count * count, isOf({ ...piece, stock })),
      [...cut],
    ),
    ...(isOffcutKept && offcutMm !== undefined
      ? { leftovers: withLess(leftovers, count, isOf({ stock, lengthMm: offcutMm })) }
      : {}),
  }
}

/** A tick of boards taken back, with their pieces and kept offcuts. Refused where pieces of theirs are cut no longer. */
export const unsawBoards = (layout: Layout, board: SawnBoard, count: number): Edited => {
  const { stock, pieces = [] } = board
  const isThere = pieces.every(
    (piece) => countOf(layout.bench.cut, isOf({ ...piece, stock })) >= piece.count * count,
  )
  return isThere
    ? setBench(layout, withoutSawn(layout, board, count))
    : refusal(
        'pieces of these boards have been taken off the list or cut into others since, so the boards stay sawn',
      )
}

/** Offcuts of sawn boards go to the leftovers, where later boards are planned from. */
export const keepOffcuts = (layout: Layout, board: SawnBoard): Edited => {
  const { sawn, leftovers } = layout.bench
  const { stock, count, offcutMm, isOffcutKept = false } = board
  if (offcutMm === undefined || isOffcutKept) return done(layout)
  return setBench(layout, {
    sawn: withMore(
      sawn.filter((each) => !isLike(each, board)),
      { ...board, isOffcutKept: true },
    ),
    leftovers: withMore(leftovers, { stock, lengthMm: offcutMm, count }),
  })
}

/** Pieces are cut that no board was ticked for: from another job, or ticked by their stop. */
export const tickPieces = (layout: Layout, pieces: CutPiece): Edited =>
  setBench(layout, { cut: withMore(layout.bench.cut, pieces) })

/** Pieces that are not cut after all. */
export const untickPieces = (layout: Layout, pieces: readonly CutPiece[]): Edited =>
  setBench(layout, { cut: pieces.reduce<CutPiece[]>(withoutPieces, [...layout.bench.cut]) })

const withoutPieces = (cut: readonly CutPiece[], pieces: CutPiece): CutPiece[] =>
  withLess(cut, pieces.count, (each) => isLike(each, pieces))

/** Cut pieces made into shorter ones. */
export interface Recutting {
  /** What is cut up, and how many. */
  readonly from: CutPiece
  /** What comes of all of them. */
  readonly into: readonly CutPiece[]
  /** What is worth keeping of all of them. */
  readonly rests: readonly Leftover[]
}

export const recutPieces = (layout: Layout, { from, into, rests }: Recutting): Edited => {
  const { cut, leftovers } = layout.bench
  return setBench(layout, {
    cut: withAll(withoutPieces(cut, from), into),
    ...(rests.length > 0 ? { leftovers: withAll(leftovers, rests) } : {}),
  })
}

/** Cut pieces that are of no use as they are become boards on hand. */
export const piecesToLeftovers = (layout: Layout, pieces: CutPiece): Edited => {
  const { stock, lengthMm, count } = pieces
  return recutPieces(layout, { from: pieces, into: [], rests: [{ stock, lengthMm, count }] })
}
