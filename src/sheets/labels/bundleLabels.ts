import type { Words } from '../../checks/context'
import type { PartId } from '../../model/ids'
import { counted, said, type Table } from '../../model/table'
import { atSaw } from '../../units/precision'
import { namesTogether } from '../hazard'
import { type Piece, tableOf, words } from '../piece'
import type { PlanOnPaper, Sheet, SheetOptions } from '../sheet'
import { sheetWords } from '../sheetWords'
import { alikeBundles, type Bundle, bundlesOf, countOf } from './bundles'
import { labelFigure, LABELS_A_PAGE, pieceWords } from './labelFigure'

/** Racks of each row, by row. */
const racksByRow = (bundles: readonly Bundle[]): ReadonlyMap<PartId, readonly number[]> => {
  const rows = new Map<PartId, number[]>()
  for (const { part, rack } of bundles) {
    const racks = rows.get(part) ?? []
    rows.set(part, racks)
    if (rack !== undefined) racks.push(rack)
  }
  return rows
}

const racksSaid = (racks: readonly number[]): string => {
  if (racks.length === 0) return ''
  return racks.length === 1
    ? `, rack ${racks[0]}`
    : `, racks ${racks.slice(0, -1).join(', ')} and ${racks.at(-1)}`
}

/** Rows of which the same racks are alike together: `N1, S1 and N2, racks 2 and 3`. */
const racksWords = (bundles: readonly Bundle[], write: Words): string => {
  const rowsOf = new Map<string, string[]>()
  for (const [part, racks] of racksByRow(bundles)) {
    const rows = rowsOf.get(racksSaid(racks)) ?? []
    rowsOf.set(racksSaid(racks), rows)
    rows.push(write.name(part))
  }
  return [...rowsOf].map(([racks, rows]) => `${namesTogether(rows)}${racks}`).join('; ')
}

const kindTable = (bundles: readonly Bundle[], write: Words): Table => {
  const kinds = alikeBundles(bundles)
  const all = bundles.reduce((sum, bundle) => sum + countOf(bundle), 0)
  return {
    id: 'bundles',
    title: 'Tie up so many alike',
    columns: [
      { key: 'bundles', title: 'Bundles', unit: 'count', isMain: true },
      { key: 'each', title: 'Pieces in each', unit: 'count' },
      { key: 'contents', title: 'In each', unit: 'text' },
      { key: 'racks', title: 'For', unit: 'text' },
    ],
    rows: [
      ...kinds.map((alike) => ({
        key: alike[0].key,
        cells: [
          counted(alike.length),
          counted(countOf(alike[0])),
          said(alike[0].pieces.map((piece) => pieceWords(piece, write)).join(', ')),
          said(racksWords(alike, write)),
        ],
      })),
      {
        key: 'sum',
        isSum: true,
        cells: [counted(bundles.length), counted(all), said('pieces in all'), said('')],
      },
    ],
  }
}

const pagesOfLabels = (bundles: readonly Bundle[], write: Words): readonly Piece[] =>
  Array.from({ length: Math.ceil(bundles.length / LABELS_A_PAGE) }, (_, page) => {
    const from = page * LABELS_A_PAGE
    const these = bundles.slice(from, from + LABELS_A_PAGE)
    const which = these.length === 1 ? `Label ${from + 1}` : `Labels ${from + 1} to ${from + these.length}`
    return labelFigure(these, `${which} of ${bundles.length}; cut along the lines`, write)
  })

const HOW =
  'As pieces come off the saw, tie up what each rack needs and put its label on: the carpenters then carry one bundle to one place. Gutters and conduit go with their rack.'

const piecesOf = ({ now }: PlanOnPaper, { units }: SheetOptions): readonly Piece[] => {
  const bundles = bundlesOf(now)
  if (bundles.length === 0) return []
  const write = sheetWords(now, units, atSaw)
  return [
    words(HOW),
    tableOf(kindTable(bundles, write), true),
    { as: 'page' },
    ...pagesOfLabels(bundles, write),
  ]
}

/** What is tied together at the saw for each rack, and a label for each bundle. */
export const bundleLabels: Sheet = {
  id: 'labels',
  code: 'BL',
  title: 'Bundle labels',
  reader: 'Saw hand',
  size: 'small',
  pieces: piecesOf,
}
