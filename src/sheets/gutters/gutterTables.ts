import type { Words } from '../../checks/context'
import { fittingOf } from '../../catalogue/fittings'
import { shimStack } from '../../catalogue/shims'
import type { Foot } from '../../model/levels'
import type { RackFacts } from '../../model/rackFacts'
import { type Cell, counted, said, type Table } from '../../model/table'
import { footPairs } from '../shims'
import type { GutterRun } from './gutterRuns'

/** Pieces of a stack, thickest first: `1" + 2 x 1/8"`; `none`. */
const piecesSaid = (heightMm: number, { onTape }: Words): string =>
  shimStack(heightMm)
    .map(({ thickMm, count }) => (count > 1 ? `${count} x ${onTape(thickMm)}` : onTape(thickMm)))
    .join(' + ') || 'none'

/** What goes under every line at each bearer, from the high end down. */
export const shimTable = ({ part, shims, inRow }: GutterRun, write: Words): Table => ({
  id: `shims-${part}`,
  title: 'Shims under the gutters, the same under every line',
  columns: [
    { key: 'bearer', title: 'Bearer', unit: 'count' },
    { key: 'fromHighMm', title: 'From the row’s high end', unit: 'mm' },
    { key: 'fromGutterMm', title: 'From the gutter’s', unit: 'mm' },
    { key: 'shimMm', title: 'Shim', unit: 'mm', isMain: true },
    { key: 'pieces', title: 'Pieces, thickest below', unit: 'text' },
  ],
  rows: shims.map(({ fromHighMm, shimMm }, index) => ({
    key: `${index + 1}`,
    cells: [
      counted(index + 1),
      counted(fromHighMm, write.length(fromHighMm)),
      counted(fromHighMm - (inRow?.beginsMm ?? 0), write.length(fromHighMm - (inRow?.beginsMm ?? 0))),
      counted(shimMm, write.onTape(shimMm)),
      said(piecesSaid(shimMm, write)),
    ],
  })),
})

/** The lengths of gutter of one line in order, each with where it is joined. */
export const lengthTable = ({ part, lengths, lines }: GutterRun, write: Words): Table => ({
  id: `gutters-${part}`,
  title: 'Lengths, from the high end on',
  columns: [
    { key: 'place', title: 'No.', unit: 'count' },
    { key: 'lengthMm', title: 'Cut to', unit: 'mm', isMain: true },
    { key: 'lines', title: 'One for each of', unit: 'count' },
    { key: 'endsMm', title: 'Ends, from the gutter’s high end', unit: 'mm' },
    { key: 'then', title: 'Then', unit: 'text' },
  ],
  rows: lengths.map(({ lengthMm, endsMm }, index) => ({
    key: `${index + 1}`,
    cells: [
      counted(index + 1),
      counted(lengthMm, write.onTape(lengthMm)),
      counted(lines, lines === 1 ? '1 line' : `${lines} lines`),
      counted(endsMm, write.length(endsMm)),
      said(index + 1 < lengths.length ? 'joiner, sealed' : 'end cap, sealed'),
    ],
  })),
})

/** What is put on the gutters of each row, or lone trough, and of all that are alike. */
export const fittingTable = ({ part, lines, fittings }: GutterRun, alike: number): Table => ({
  id: `gutter-fittings-${part}`,
  title: 'What goes on them',
  columns: [
    { key: 'fitting', title: 'What', unit: 'text' },
    { key: 'aLine', title: 'A line', unit: 'count', isMain: true },
    { key: 'aRow', title: 'A row', unit: 'count' },
    { key: 'count', title: alike === 1 ? 'In all' : `In all ${alike} rows`, unit: 'count' },
  ],
  rows: [...fittings].map(([item, count]) => ({
    key: item,
    cells: [said(fittingOf(item).title), counted(count / lines), counted(count), counted(count * alike)],
  })),
})

const footCell = (foot: Foot | undefined, write: Words): Cell => {
  const shimMm = foot?.shimMm ?? 0
  const pieces = piecesSaid(shimMm, write)
  const height = write.onTape(shimMm)
  return counted(shimMm, pieces === 'none' ? 'none' : pieces === height ? height : `${height} = ${pieces}`)
}

/** What goes under the feet of a row, pair by pair from its start. */
export const footTable = (
  name: string,
  rack: RackFacts,
  feet: readonly [Foot, ...Foot[]],
  write: Words,
): Table => ({
  id: `feet-${feet[0].part}`,
  title: `Feet of ${name}, pairs from the start of the row`,
  columns: [
    { key: 'pair', title: 'Pair', unit: 'count' },
    { key: 'leftMm', title: 'Left foot', unit: 'mm' },
    { key: 'rightMm', title: 'Right foot', unit: 'mm' },
  ],
  rows: footPairs(rack, feet).map(({ pair, left, right }) => ({
    key: `${pair}`,
    cells: [counted(pair), footCell(left, write), footCell(right, write)],
  })),
})
