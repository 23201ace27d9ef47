import type { Words } from '../../checks/context'
import type { Evaluation } from '../../evaluate/evaluation'
import type { DrainRun, Peg } from '../../model/levels'
import { type Column, counted, type Row, said, type Table } from '../../model/table'
import { fromWalls } from '../baseline'
import { endWords, type PegRow, pegRows } from './pegRows'

const columnsFrom = (end: string): readonly Column[] => [
  { key: 'peg', title: 'Peg', unit: 'count' },
  { key: 'alongMm', title: `From ${end}`, unit: 'mm' },
  { key: 'cutMm', title: 'CUT from peg top', unit: 'mm', isMain: true },
  { key: 'hole', title: 'Hole', unit: 'text' },
  { key: 'why', title: 'Why it stands there', unit: 'text' },
  { key: 'digMm', title: 'Dig', unit: 'mm' },
  { key: 'groundMm', title: 'Floor', unit: 'mm' },
  { key: 'pegTopMm', title: 'Peg top', unit: 'mm' },
  { key: 'invertMm', title: 'Invert', unit: 'mm' },
  { key: 'westMm', title: 'From west wall', unit: 'mm' },
  { key: 'southMm', title: 'From south wall', unit: 'mm' },
]

/** Where the bottom lies over the peg's top, nobody should dig by a number with a sign. */
const cutText = ({ cutMm }: Peg, { cut }: PegRow, { onTape }: Words): string =>
  cutMm < 0 ? `up ${onTape(-cutMm)}` : cut

const rowOf = (peg: Peg, text: PegRow, run: DrainRun, { bay }: Evaluation, write: Words): Row => {
  const { length } = write
  const { westMm, southMm } = fromWalls(bay.house, peg.at)
  return {
    key: `${run.part} ${peg.number}`,
    cells: [
      counted(peg.number, text.number),
      counted(peg.fromLowMm, text.fromLow),
      counted(peg.cutMm, cutText(peg, text, write)),
      said(text.hole),
      said(text.why),
      counted(peg.digMm, peg.digMm > 0 ? text.dig : 'none'),
      counted(peg.groundMm, text.floor),
      counted(peg.pegTopMm, text.pegTop),
      counted(peg.invertMm, text.invert),
      counted(westMm, length(westMm)),
      counted(southMm, length(southMm)),
    ],
  }
}

/** Every peg of a drain, from its low end up. Levels and lengths in mm, levels from the file's zero. */
export const pegsOf = (plan: Evaluation, run: DrainRun, write: Words): Table => {
  const texts = pegRows(run, plan.bay, write)
  return {
    id: `pegs-${run.part}`,
    title: `Pegs of ${write.name(run.part)}`,
    columns: columnsFrom(endWords(run, plan.bay)),
    rows: run.pegs.flatMap((peg, i) => {
      const text = texts[i]
      return text ? [rowOf(peg, text, run, plan, write)] : []
    }),
  }
}
