import type { Words } from '../../checks/context'
import type { Judged } from '../../evaluate/evaluation'
import { blank, counted, said, type Row, type Table } from '../../model/table'
import { feet, type Units } from '../../units/length'
import { inTrench } from '../../units/precision'
import { writeCount } from '../../units/writeCount'
import { stockAndMark } from '../../evaluate/takeOff/pieces'
import { cautionsFor } from '../hazards'
import { heading, type Piece, tableOf, words } from '../piece'
import type { PlanOnPaper, Sheet, SheetOptions } from '../sheet'
import { sheetWords } from '../sheetWords'
import { type Bag, bagsOf } from './bags'
import { type Pick, picksOf, picksOfAll, sharesOf, waterLines } from './pickRows'

const COLUMNS: Table['columns'] = [
  { key: 'pick', title: 'Pick', unit: 'text' },
  { key: 'count', title: 'Pieces', unit: 'count', isMain: true },
  { key: 'lengthMm', title: 'Length', unit: 'mm', isMain: true },
  { key: 'barbedEnds', title: 'Barbed ends', unit: 'count' },
]

const pickRow = ({ item, words: what, count, unit, barbedEnds }: Pick, units: Units): Row => {
  const amount = writeCount(count, unit, units)
  const isLength = unit === 'ft'
  return {
    key: item,
    cells: [
      said(what),
      isLength ? blank() : counted(count, amount),
      isLength ? counted(feet(count), amount) : blank(),
      barbedEnds > 0 ? counted(barbedEnds) : blank(),
    ],
  }
}

/** A sum of what clamps go on stands under the picks, since clamps are counted from it. */
const endsRow = (picks: readonly Pick[]): readonly Row[] => {
  const ends = picks.reduce((sum, { barbedEnds }) => sum + barbedEnds, 0)
  return ends === 0
    ? []
    : [{ key: 'ends', isSum: true, cells: [said('Barbed ends in all'), blank(), blank(), counted(ends)] }]
}

const pickTable = (id: string, title: string, picks: readonly Pick[], units: Units): Table => ({
  id,
  title,
  columns: COLUMNS,
  rows: [...picks.map((pick) => pickRow(pick, units)), ...endsRow(picks)],
})

/** Bags with the same in them are packed side by side. */
interface AlikeBags {
  readonly bags: readonly [Bag, ...Bag[]]
  readonly picks: readonly Pick[]
}

/** Pipe that a tape can't tell apart is alike, ft. */
const ALIKE_FT = 1 / 12

const sameness = (picks: readonly Pick[]): string =>
  picks
    .map(({ item, count, unit }) => `${item} ${unit === 'piece' ? count : Math.round(count / ALIKE_FT)}`)
    .join('|')

const alikeBags = (
  filled: readonly { readonly bag: Bag; readonly picks: readonly Pick[] }[],
): AlikeBags[] => {
  const alike = new Map<string, { bags: [Bag, ...Bag[]]; picks: readonly Pick[] }>()
  for (const { bag, picks } of filled) {
    const key = bag.zone === undefined ? 'shared' : sameness(picks)
    const found = alike.get(key)
    if (found) found.bags.push(bag)
    else alike.set(key, { bags: [bag], picks })
  }
  return [...alike.values()]
}

const bagName = ({ zone, parts }: Bag, write: Words): string => {
  if (zone === undefined) return 'Mains, pumps and what the zones share'
  const others = parts.filter((part) => part !== zone)
  return others.length === 0
    ? write.name(zone)
    : `${write.name(zone)} (with ${others.map(write.name).join(', ')} behind its valve)`
}

const bagPieces = ({ bags, picks }: AlikeBags, write: Words, units: Units): readonly Piece[] => {
  const [{ zone }] = bags
  const names = bags.map((bag) => bagName(bag, write)).join(', ')
  const title = bags.length === 1 ? names : `${bags.length} bags alike, in each`
  return [
    heading(bags.length === 1 ? `Bag of ${names}` : `Bags of ${names}`, 1),
    tableOf(pickTable(zone === undefined ? 'shared' : `bag-${zone}`, title, picks, units), true),
  ]
}

/** Coils to take along, of the cut lists of pipe and tube. */
const coilTable = ({ cuts }: Judged, picks: readonly Pick[], units: Units): Table => ({
  id: 'coils',
  title: 'Coils to take along',
  columns: [
    { key: 'stock', title: 'Pipe or tube', unit: 'text' },
    { key: 'lengthMm', title: 'As cut', unit: 'mm' },
    { key: 'coils', title: 'Coils', unit: 'text' },
  ],
  rows: cuts.flatMap(({ stock, title, bought, leftovers }) => {
    const ft = picks
      .filter(({ item }) => item.includes('#') && stockAndMark(item)[0] === stock)
      .reduce((sum, { count }) => sum + count, 0)
    if (ft === 0) return []
    const coils = [...bought, ...leftovers].map(
      ({ stockMm, count }) => `${count} of ${writeCount(stockMm / feet(1), 'ft', units)}`,
    )
    return [
      {
        key: stock,
        cells: [said(title), counted(feet(ft), writeCount(ft, 'ft', units)), said(coils.join(', '))],
      },
    ]
  }),
})

const CLAMPS =
  'Clamps go by barbed ends: 1 an end; 2, screw heads opposite, on pipe of 1-1/4 in and over, on any that is buried, and between pump and filter.'

const ORDER: readonly (readonly [key: string, text: string])[] = [
  ['cut', 'Cut pipe square and slide the clamps on before the fitting.'],
  [
    'thread',
    'Wrap every thread outside in PTFE tape. Plastic male into plastic female, hand tight and 1 to 2 turns.',
  ],
  ['flush-first', 'Flush mains and laterals before a hole is punched for any barb.'],
  [
    'retighten',
    'Go round all worm clamps again at 24 h and after the first hot day: pipe creeps under them.',
  ],
]

const steps: Piece = { as: 'steps', steps: ORDER.map(([key, text]) => ({ key, text })) }

const piecesOf = ({ now }: PlanOnPaper, { units }: SheetOptions): readonly Piece[] => {
  const lines = waterLines(now)
  if (lines.length === 0) return []
  const write = sheetWords(now, units, inTrench)
  const all = picksOfAll(lines)
  const shares = sharesOf(lines)
  const bags = bagsOf(now.bay)
    .map((bag) => ({ bag, picks: picksOf(shares, bag) }))
    .filter(({ picks }) => picks.length > 0)
  return [
    ...cautionsFor('pipes', now, units),
    words(CLAMPS),
    steps,
    ...alikeBags(bags).flatMap((alike) => bagPieces(alike, write, units)),
    heading('The whole bay'),
    tableOf(pickTable('all', 'All bags together', all, units)),
    tableOf(coilTable(now, all, units), true),
  ]
}

/** What the plumber picks, a bag for each zone and one for what they share; the bags together are the take-off. */
export const pipeList: Sheet = {
  id: 'pipes',
  code: 'PL',
  title: 'Pipe pick list',
  reader: 'Plumber',
  size: 'small',
  pieces: piecesOf,
}
