import type { Words } from '../../checks/context'
import { stockOf } from '../../catalogue/stock'
import type { Built } from '../../model/built'
import type { FeedTube } from '../../model/feedFacts'
import type { PartId } from '../../model/ids'
import { counted, said, type Table } from '../../model/table'
import { atSaw } from '../../units/precision'
import type { Units } from '../../units/length'
import { cautionsFor } from '../hazards'
import { type Piece, tableOf, words } from '../piece'
import type { PlanOnPaper, Sheet, SheetOptions } from '../sheet'
import { sheetWords } from '../sheetWords'
import { coilOf, runWords, SPARE_WORDS } from './tubeWords'

/** Tubes of one row that are cut alike: one bundle. */
interface Bundle {
  readonly part: PartId
  readonly group: number
  readonly stock: string
  readonly lengthMm: number
  readonly stations: readonly number[]
  readonly count: number
}

const bundleOf = (part: PartId, group: number, tubes: readonly [FeedTube, ...FeedTube[]]): Bundle => ({
  part,
  group,
  stock: tubes[0].stock,
  lengthMm: tubes[0].lengthMm,
  stations: [...new Set(tubes.map(({ station }) => station))].toSorted((a, b) => a - b),
  count: tubes.length,
})

/** Tubes by what they have in common, in the order in which they come. */
const groupedBy = <T, K>(items: readonly T[], keyOf: (item: T) => K): readonly (readonly [T, ...T[]])[] => {
  const groups = new Map<K, [T, ...T[]]>()
  for (const item of items) {
    const group = groups.get(keyOf(item))
    if (group) group.push(item)
    else groups.set(keyOf(item), [item])
  }
  return [...groups.values()]
}

const bundlesOf = ({ part, feed }: Built): readonly Bundle[] =>
  groupedBy(feed?.tubes ?? [], ({ group, lengthMm }) => `${group} ${lengthMm}`)
    .map((tubes) => bundleOf(part, tubes[0].group, tubes))
    .toSorted((a, b) => a.group - b.group)

/** All bundles of one bore that are cut to one length: one setting of the bench's stop. */
interface Cut {
  readonly letter: string
  readonly bundles: readonly [Bundle, ...Bundle[]]
}

const letterOf = (index: number): string =>
  String.fromCodePoint('A'.charCodeAt(0) + (index % 26)).repeat(1 + Math.floor(index / 26))

/** Longest first, as the bench cuts them. */
const cutsOf = (bundles: readonly Bundle[]): readonly Cut[] =>
  groupedBy(bundles, ({ stock, lengthMm }) => `${stock} ${lengthMm}`)
    .toSorted(([a], [b]) => Number(b.stock < a.stock) - Number(a.stock < b.stock) || b.lengthMm - a.lengthMm)
    .map((alike, index) => ({ letter: letterOf(index), bundles: alike }))

/** Stations next to each other as runs: `1 to 6, 19 to 24`. */
const stationWords = (stations: readonly number[]): string => {
  const runs: { from: number; to: number }[] = []
  for (const station of stations) {
    const last = runs.at(-1)
    if (last && station === last.to + 1) last.to = station
    else runs.push({ from: station, to: station })
  }
  return runs.map(runWords).join(', ')
}

const countOf = (bundles: readonly Bundle[]): number => bundles.reduce((sum, { count }) => sum + count, 0)

const stopTable = (cuts: readonly Cut[], write: Words, units: Units): Table => ({
  id: 'cuts',
  title: 'Cut, longest first',
  columns: [
    { key: 'colour', title: 'Colour', unit: 'text' },
    { key: 'stock', title: 'Tube', unit: 'text' },
    { key: 'lengthMm', title: 'Cut to', unit: 'mm', isMain: true },
    { key: 'count', title: 'Tubes', unit: 'count' },
    { key: 'coilMm', title: `Off the coil, ${SPARE_WORDS}`, unit: 'mm' },
    { key: 'rows', title: 'For rows', unit: 'text' },
  ],
  rows: cuts.map(({ letter, bundles }) => {
    const [{ stock, lengthMm }] = bundles
    const count = countOf(bundles)
    const coilMm = coilOf(count * lengthMm, units)
    const rows = [...new Set(bundles.map(({ part }) => write.name(part)))]
    return {
      key: letter,
      cells: [
        said(letter),
        said(stockOf(stock).title),
        counted(lengthMm, write.onTape(lengthMm)),
        counted(count),
        counted(coilMm, write.length(coilMm)),
        said(rows.join(', ')),
      ],
    }
  }),
})

const bundleTable = (cuts: readonly Cut[], parts: readonly PartId[], write: Words): Table => {
  const labelled = cuts.flatMap(({ letter, bundles }) => bundles.map((bundle) => ({ letter, bundle })))
  const inOrder = labelled.toSorted(
    (a, b) => parts.indexOf(a.bundle.part) - parts.indexOf(b.bundle.part) || a.bundle.group - b.bundle.group,
  )
  return {
    id: 'bundles',
    title: 'Tie up and label, row by row',
    columns: [
      { key: 'row', title: 'Row', unit: 'text' },
      { key: 'colour', title: 'Colour', unit: 'text' },
      { key: 'lengthMm', title: 'Cut to', unit: 'mm' },
      { key: 'stations', title: 'Stations', unit: 'text' },
      { key: 'count', title: 'Tubes', unit: 'count', isMain: true },
    ],
    rows: inOrder.map(({ letter, bundle: { part, group, lengthMm, stations, count } }) => ({
      key: `${part}/${group}`,
      cells: [
        said(write.name(part)),
        said(letter),
        counted(lengthMm, write.onTape(lengthMm)),
        said(stationWords(stations)),
        counted(count),
      ],
    })),
  }
}

const sumWords = (bundles: readonly Bundle[], write: Words): string => {
  const netMm = bundles.reduce((sum, { count, lengthMm }) => sum + count * lengthMm, 0)
  return `${countOf(bundles)} tubes, ${write.length(netMm)} of tube in all.`
}

const HOW =
  'The length is the setting: cut square with a sharp blade against one stop, never by eye; ream no end. Wrap tape of one colour round each bundle.'

const piecesOf = ({ now }: PlanOnPaper, { units }: SheetOptions): readonly Piece[] => {
  const bundles = now.bay.built.flatMap(bundlesOf)
  if (bundles.length === 0) return []
  const write = sheetWords(now, units, atSaw)
  const cuts = cutsOf(bundles)
  const parts = now.layout.parts.map(({ id }) => id)
  return [
    words(sumWords(bundles, write), 'big'),
    words(HOW),
    tableOf(stopTable(cuts, write, units), true),
    ...cautionsFor('tubes', now, units),
    tableOf(bundleTable(cuts, parts, write), true),
  ]
}

/** Microtubes by length and colour for the bench, and the bundles of each row. */
export const tubeCard: Sheet = {
  id: 'tubes',
  code: 'TC',
  title: 'Tube card',
  reader: 'Bench hand',
  size: 'small',
  pieces: piecesOf,
}
