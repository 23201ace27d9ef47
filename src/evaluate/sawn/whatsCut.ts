import type { CutPiece, HoleAt } from '../../layout/bench'
import type { Piece, Saw } from '../../solvers/cutting/problem'
import { fromTicks, onTick, toTicks } from '../../units/length'
import type { PieceLine } from '../pieceTally'
import { drilledAs, offFoot, type Drilled } from './drilled'
import type { HolesOf } from './holeHeights'
import { recut, type Recut } from './recut'
import { rightPieces } from './rightPieces'

/** All that the bay wants of one stock, cut already or not. `pieces` are the same as the cutter knows them, in the same order. */
export interface WantedOfStock {
  readonly stock: string
  readonly lines: readonly PieceLine[]
  readonly pieces: readonly Piece[]
  readonly saw: Saw
}

/** Cut pieces that are right as they are. */
export interface Right {
  readonly piece: CutPiece
  readonly line: PieceLine
  readonly count: number
  readonly drilled: Drilled
  /** Where the holes of these members stand now. */
  readonly holes: readonly HoleAt[]
}

/** A piece that comes of a cut piece. */
export interface Made {
  readonly line: PieceLine
  readonly lengthMm: number
  readonly holes: readonly HoleAt[]
}

/** Cut pieces that are right for nothing, and what can be made of each. */
export interface CanRecut {
  readonly piece: CutPiece
  readonly count: number
  readonly makes: readonly [Made, ...Made[]]
  /** How much longer it is than the first that comes of it, mm. */
  readonly offMm: number
  /** What is left of each after the last cut, mm. */
  readonly restMm: number
  readonly drilled: Drilled
  /** Where one piece comes of it: what to take off its foot so that holes that are drilled stand right, mm. */
  readonly offFootMm: number | undefined
}

export interface Scrap {
  readonly piece: CutPiece
  readonly count: number
}

/** How many of a wanted line are cut, can be made of what is cut, and have to be cut of boards. The three make up its count. */
export interface LineState {
  readonly line: PieceLine
  readonly right: number
  readonly recut: number
  readonly toCut: number
}

/** What is cut of one stock, held against what the bay wants now. Every cut piece is in one of the three groups. */
export interface CutOfStock {
  readonly stock: string
  readonly right: readonly Right[]
  readonly recut: readonly CanRecut[]
  readonly scrap: readonly Scrap[]
  /** Longest first. */
  readonly lines: readonly LineState[]
}

interface Counted {
  readonly count: number
}

const total = (counted: readonly Counted[]): number => counted.reduce((sum, { count }) => sum + count, 0)

/** The counts of a list less those that went elsewhere, by their index. */
const lessCounts = <T extends Counted>(list: readonly T[], gone: (index: number) => number): T[] =>
  list.map((each, index) => ({ ...each, count: each.count - gone(index) }))

const rightOf = (piece: CutPiece, line: PieceLine, count: number, holesOf: HolesOf): Right => {
  const holes = holesOf(piece.stock, line.marks, fromTicks(line.lengthTicks))
  return { piece, line, count, drilled: drilledAs(piece.holes, holes), holes }
}

const canRecut = (
  piece: CutPiece,
  { makes, count, restTicks }: Recut,
  lines: readonly PieceLine[],
  holesOf: HolesOf,
): CanRecut[] => {
  const [first, ...others] = makes.flatMap(({ line: index, lengthTicks }): Made[] => {
    const line = lines[index]
    if (!line) return []
    const holes = holesOf(piece.stock, line.marks, fromTicks(line.lengthTicks))
    return [{ line, lengthMm: fromTicks(lengthTicks), holes }]
  })
  if (!first) return []
  const offMm = onTick(piece.lengthMm - first.lengthMm)
  const offFootMm = others.length === 0 ? offFoot(piece.holes, first.holes, offMm) : undefined
  const restMm = fromTicks(restTicks)
  const drilled = drilledAs(piece.holes, first.holes)
  return [{ piece, count, makes: [first, ...others], offMm, restMm, drilled, offFootMm }]
}

/** What is cut of one stock against what is wanted of it; `cut` are pieces of that stock. */
export const cutOfStock = (
  { stock, lines, pieces, saw }: WantedOfStock,
  cut: readonly CutPiece[],
  holesOf: HolesOf,
): CutOfStock => {
  const lengths = cut.map(({ lengthMm, count }) => ({ ticks: toTicks(lengthMm), count }))
  const pairs = rightPieces(pieces, lengths, saw)
  const ofCut = (index: number): number => total(pairs.filter((pair) => pair.cut === index))
  const ofLine = (index: number): number => total(pairs.filter((pair) => pair.line === index))
  const open = lessCounts(pieces, ofLine)
  const recuts = recut(open, lessCounts(lengths, ofCut), saw.kerfTicks)
  const madeOf = (index: number): number =>
    recuts.reduce(
      (sum, { makes, count }) => sum + count * makes.filter(({ line }) => line === index).length,
      0,
    )
  const scrapOf = (index: number, count: number): number =>
    count - ofCut(index) - total(recuts.filter((each) => each.cut === index))
  return {
    stock,
    right: pairs.flatMap(({ cut: c, line: l, count }) => {
      const [piece, line] = [cut[c], lines[l]]
      return piece && line ? [rightOf(piece, line, count, holesOf)] : []
    }),
    recut: recuts.flatMap((each) => {
      const piece = cut[each.cut]
      return piece ? canRecut(piece, each, lines, holesOf) : []
    }),
    scrap: cut
      .map((piece, index) => ({ piece, count: scrapOf(index, piece.count) }))
      .filter(({ count }) => count > 0),
    lines: lines.map((line, index) => {
      const [right, made] = [ofLine(index), madeOf(index)]
      return { line, right, recut: made, toCut: line.count - right - made }
    }),
  }
}

const nothingWanted = (stock: string): WantedOfStock => ({
  stock,
  lines: [],
  pieces: [],
  saw: { kerfTicks: 0, trimTicks: 0 },
})

/**
 * What is cut against what the bay wants, stock by stock: those that the bay wants in their order, then those that only cut pieces
 * are left of.
 */
export const whatsCut = (
  wanted: readonly WantedOfStock[],
  cut: readonly CutPiece[],
  holesOf: HolesOf,
): readonly CutOfStock[] => {
  const known = new Set(wanted.map(({ stock }) => stock))
  const gone = new Set(cut.map(({ stock }) => stock).filter((stock) => !known.has(stock)))
  return [...wanted, ...[...gone].map(nothingWanted)].map((each) =>
    cutOfStock(
      each,
      cut.filter(({ stock }) => stock === each.stock),
      holesOf,
    ),
  )
}
