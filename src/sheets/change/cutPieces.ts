import type { Judged } from '../../evaluate/evaluation'
import { sawBenchOf } from '../../evaluate/sawn/sawBench'
import type { CutOfStock, Right } from '../../evaluate/sawn/whatsCut'
import type { Units } from '../../units/length'
import { writerFor } from '../../units/writer'
import { heading, type Piece, words } from '../piece'
import { holesWords, kindWords, misfitWords, recutWords } from '../sawnWords'

const isWrong = ({ recut, scrap, right }: CutOfStock): boolean =>
  recut.length + scrap.length > 0 || right.some(({ drilled }) => drilled === 'moved')

/** `12 cut risers of 71-15/16" are right in length. If they are drilled, check them: ...` */
const movedWords = (right: Right, units: Units): string => {
  const { piece, count } = right
  const what = `${count} cut ${kindWords(piece.marks)}${count === 1 ? '' : 's'}`
  const length = writerFor(units).onTape(piece.lengthMm)
  return `${what} of ${length} ${count === 1 ? 'is' : 'are'} right in length. ${holesWords(right, units)}`
}

const ofStock = (cut: CutOfStock, units: Units): readonly Piece[] =>
  [
    ...misfitWords(cut, units),
    ...cut.recut.map((recut) => recutWords(recut, units)),
    ...cut.right.filter(({ drilled }) => drilled === 'moved').map((right) => movedWords(right, units)),
  ].map((text) => words(text))

/** Pieces that are cut and fit no more, what can be made of them, and holes that stand wrong now. */
export const cutPieces = (now: Judged, units: Units): readonly Piece[] => {
  const wrong = sawBenchOf(now).cut.filter(isWrong)
  return wrong.length === 0
    ? []
    : [heading('Cut already, and wrong now'), ...wrong.flatMap((cut) => ofStock(cut, units))]
}
