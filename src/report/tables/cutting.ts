import { stockOf } from '../../catalogue/stock'
import type { Board, CutLine, CutList } from '../../model/cutList'
import { said } from '../../model/table'
import { standingWords } from '../../sheets/cutWords'
import { writerFor } from '../../units/writer'
import {
  countCell,
  countField,
  type Field,
  numberField,
  quiet,
  sectionOf,
  textField,
  type Section,
} from '../fields'
import type { Told } from '../told'

const piecesIn = (lines: readonly CutLine[]): number => lines.reduce((sum, { count }) => sum + count, 0)

const shareOf = ({ standing }: CutList): number => (standing.kind === 'proven' ? 0 : standing.share)

const boardsIn = ({ boards }: CutList): number => boards.reduce((sum, { count }) => sum + count, 0)

const listFields = ({ words, money }: Told): readonly Field<CutList>[] => [
  textField('title', 'Material', ({ title }) => title),
  quiet(textField('stock', 'Stock', ({ stock }) => stock)),
  countField('boards', 'Boards, sticks, coils', boardsIn),
  countField('pieces', 'Pieces', ({ lines }) => piecesIn(lines)),
  numberField('netMm', 'In pieces', 'mm', words.length, ({ netMm }) => netMm),
  quiet(numberField('boughtMm', 'In boards', 'mm', words.length, ({ boughtMm }) => boughtMm)),
  numberField('priceCents', 'To buy', 'cents', money, ({ cents }) => cents),
  {
    ...textField<CutList>('standing', 'Plan', () => ''),
    cell: (list) => ({ value: list.standing.kind, text: standingWords(list) }),
  },
  quiet(numberField('overBoundShare', 'Over the bound', 'share', words.share, shareOf)),
  quiet(textField('costIs', 'Cost is in', ({ costIs }) => costIs)),
  quiet(countField('cost', 'Cost', ({ cost }) => cost)),
  quiet(countField('bound', 'Bound', ({ bound }) => bound)),
  quiet(countField('cutAlready', 'Cut already', ({ cutAlready }) => piecesIn(cutAlready))),
  countField('tooLong', 'Too long', ({ tooLong }) => piecesIn(tooLong)),
  countField('ranOut', 'Ran out', ({ ranOut }) => piecesIn(ranOut)),
  quiet(countField('joints', 'Joints in runs', ({ joints }) => joints)),
]

/** Every material that is cut: how much of it, what it costs, and how good its plan is known to be. */
export const cutListsSection = (told: Told): Section =>
  sectionOf({
    id: 'cutLists',
    title: 'Cut lists',
    fields: listFields(told),
    items: told.plan.cuts,
    keyOf: ({ stock }) => stock,
  })

type Fate = 'to cut' | 'cut already' | 'too long' | 'ran out'

interface FatedLine {
  readonly list: CutList
  readonly line: CutLine
  readonly fate: Fate
}

const fated = (list: CutList): readonly FatedLine[] => {
  const as = (lines: readonly CutLine[], fate: Fate) => lines.map((line) => ({ list, line, fate }))
  return [
    ...as(list.lines, 'to cut'),
    ...as(list.cutAlready, 'cut already'),
    ...as(list.tooLong, 'too long'),
    ...as(list.ranOut, 'ran out'),
  ]
}

/** Pieces are read along the saw's tape, to its sixteenth; runs off a coil in feet. */
const pieceWriter = ({ units }: Told) => {
  const { length, onTape } = writerFor(units)
  return (mm: number, stock: string): string => (stockOf(stock).form === 'coil' ? length(mm) : onTape(mm))
}

const pieceFields = (told: Told): readonly Field<FatedLine>[] => {
  const write = pieceWriter(told)
  return [
    textField('title', 'Material', ({ list }) => list.title),
    quiet(textField('stock', 'Stock', ({ list }) => list.stock)),
    countField('count', 'Count', ({ line }) => line.count),
    {
      key: 'lengthMm',
      title: 'Length',
      unit: 'mm',
      cell: ({ list, line }) => ({ value: line.lengthMm, text: write(line.lengthMm, list.stock) }),
    },
    textField('marks', 'Marks', ({ line }) => line.marks.join(', ')),
    quiet(textField('cut', 'Cut', ({ line }) => line.cut.kind)),
    textField('fate', 'State', ({ fate }) => fate),
  ]
}

const lineKey = ({ list, line, fate }: FatedLine): string =>
  `${list.stock}/${line.marks.join('+')}/${line.lengthMm}/${line.cut.kind}/${fate}`

/** Every piece that the bay wants, by material and length: what the boards make, and what they do not and why. */
export const piecesSection = (told: Told): Section =>
  sectionOf({
    id: 'pieces',
    title: 'Pieces',
    fields: pieceFields(told),
    items: told.plan.cuts.flatMap(fated),
    keyOf: lineKey,
  })

interface Numbered {
  readonly list: CutList
  readonly board: Board
  /** From 1 within its list. */
  readonly number: number
}

const numbered = (list: CutList): readonly Numbered[] =>
  list.boards.map((board, index) => ({ list, board, number: index + 1 }))

const boardFields = (told: Told): readonly Field<Numbered>[] => {
  const write = pieceWriter(told)
  const inLine = ({ list, board }: Numbered): string =>
    board.pieces.map(({ lengthMm, count }) => `${count} x ${write(lengthMm, list.stock)}`).join(' | ')
  return [
    textField('title', 'Material', ({ list }) => list.title),
    quiet(textField('stock', 'Stock', ({ list }) => list.stock)),
    { key: 'board', title: 'Board', unit: 'count', cell: ({ number }) => countCell(number) },
    countField('count', 'Like it', ({ board }) => board.count),
    numberField('stockMm', 'Sold as', 'mm', told.words.length, ({ board }) => board.stockMm),
    quiet(numberField('measuredMm', 'Measures', 'mm', told.words.length, ({ board }) => board.measuredMm)),
    quiet(textField('from', 'From', ({ board }) => (board.isLeftover ? 'leftover' : 'yard'))),
    { ...textField<Numbered>('cuts', 'Cuts', () => ''), cell: (of) => said(inLine(of)) },
    {
      key: 'offcutMm',
      title: 'Offcut',
      unit: 'mm',
      cell: ({ list, board }) => ({ value: board.offcutMm, text: write(board.offcutMm, list.stock) }),
    },
  ]
}

/** Boards cut alike, each with its pieces in words; `boardPieces` has them in numbers. */
export const boardsSection = (told: Told): Section =>
  sectionOf({
    id: 'boards',
    title: 'Boards',
    fields: boardFields(told),
    items: told.plan.cuts.flatMap(numbered),
    keyOf: ({ list, number }) => `${list.stock}/${number}`,
  })

interface BoardPiece extends Numbered {
  readonly piece: Board['pieces'][number]
}

const boardPieces = (list: CutList): readonly BoardPiece[] =>
  numbered(list).flatMap((of) => of.board.pieces.map((piece) => ({ ...of, piece })))

const boardPieceFields = (told: Told): readonly Field<BoardPiece>[] => {
  const write = pieceWriter(told)
  return [
    textField('stock', 'Stock', ({ list }) => list.stock),
    { key: 'board', title: 'Board', unit: 'count', cell: ({ number }) => countCell(number) },
    countField('count', 'Count', ({ piece }) => piece.count),
    {
      key: 'lengthMm',
      title: 'Length',
      unit: 'mm',
      cell: ({ list, piece }) => ({ value: piece.lengthMm, text: write(piece.lengthMm, list.stock) }),
    },
    textField('marks', 'Marks', ({ piece }) => piece.marks.join(', ')),
  ]
}

/** What each board makes, in the order off the board; `board` is the number of its row in `boards`. */
export const boardPiecesSection = (told: Told): Section =>
  sectionOf({
    id: 'boardPieces',
    title: 'Pieces of each board',
    fields: boardPieceFields(told),
    items: told.plan.cuts.flatMap(boardPieces),
    keyOf: ({ list, number }, index) => `${list.stock}/${number}/${index}`,
    isForPrograms: true,
  })
