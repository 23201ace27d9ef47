import type { CutOfStock, LineState } from '../../evaluate/sawn/whatsCut'
import type { CutList } from '../../model/cutList'
import { hasMark, memberName } from '../../model/memberNames'
import { counted, said, type Table } from '../../model/table'
import { canKeepRule } from '../../solvers/cutting/problem'
import { fromTicks, type Units } from '../../units/length'
import { isCoil, lengthWriter } from '../cutWords'
import { lackWords } from './boardSaid'
import { minusWords, sawnHow } from './sawWords'

/** `RS-p riser, plain hole`, or the name alone where no mark is written on the piece. */
const memberSaid = (mark: string): string =>
  hasMark(mark) ? `${mark} ${memberName(mark)}` : memberName(mark)

const howSaid = ({ line }: LineState, { stock, problem }: CutList, units: Units): string => {
  const asked = problem.pieces.find(
    ({ lengthTicks, rule }) => lengthTicks === line.lengthTicks && rule.kind === line.cut.kind,
  )
  const keepsRule = asked === undefined || canKeepRule(asked, problem)
  const shorter = line.cut.kind === 'exact' ? minusWords(line, units) : ''
  return [sawnHow(line, stock, { keepsRule, saw: problem.saw }, units), shorter].filter(Boolean).join(', ')
}

const lackSaid = (state: LineState, list: CutList): string => {
  const lack = lackWords(state, list)
  return lack === '' ? '' : ` No board makes it: ${lack}.`
}

/** The stops of one material, longest first: every piece that the bay wants, cut or not. */
export const stopTable = (list: CutList, { lines }: CutOfStock, units: Units): Table => {
  const write = lengthWriter(list.stock, units)
  return {
    id: `stops-${list.stock}`,
    title: isCoil(list.stock) ? 'Lengths' : 'Stop settings, longest first',
    columns: [
      { key: 'lengthMm', title: isCoil(list.stock) ? 'Length' : 'Stop', unit: 'mm', isMain: true },
      { key: 'wanted', title: 'Pieces', unit: 'count' },
      { key: 'toCut', title: 'To cut', unit: 'count' },
      { key: 'marks', title: 'Mark them', unit: 'text' },
      { key: 'how', title: 'How', unit: 'text' },
    ],
    rows: lines.map((state) => {
      const { line, toCut } = state
      const lengthMm = fromTicks(line.lengthTicks)
      return {
        key: `${line.marks.join(' ')} ${line.cut.kind}`,
        cells: [
          counted(lengthMm, write(lengthMm)),
          counted(line.count),
          counted(toCut),
          said(line.marks.map(memberSaid).join('; ')),
          said(`${howSaid(state, list, units)}.${lackSaid(state, list)}`),
        ],
      }
    }),
  }
}
