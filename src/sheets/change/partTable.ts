import type { Words } from '../../checks/context'
import type { BayChange } from '../../evaluate/compare/bayChanges'
import type { PartChange } from '../../evaluate/compare/partChanges'
import type { Point } from '../../geometry/point'
import { counterSchema } from '../../layout/counter'
import { houseSchema } from '../../layout/house'
import type { Part } from '../../layout/schema'
import { settingsSchema } from '../../layout/settings'
import { said, type Row, type Table } from '../../model/table'
import { kindOf } from '../../parts'
import { fieldSaid } from './fieldSaid'
import { gathered } from './gathered'
import type { Told } from './told'

/** A move that no tape finds, mm. */
const UNSEEN_MM = 0.1

/** `8" east, 2" south`. */
export const moveSaid = ({ x, y }: Point, { onTape }: Pick<Words, 'onTape'>): string =>
  [
    ...(Math.abs(x) > UNSEEN_MM ? [`${onTape(Math.abs(x))} ${x > 0 ? 'east' : 'west'}`] : []),
    ...(Math.abs(y) > UNSEEN_MM ? [`${onTape(Math.abs(y))} ${y > 0 ? 'north' : 'south'}`] : []),
  ].join(', ')

/** Where a part lies, from the corner that all of the floor sheet is measured from. */
const placeSaid = ({ x, y }: Point, { length }: Words): string => `${length(x)} east, ${length(y)} north`

const row = (of: string, field: string, cells: readonly string[]): Row => ({
  key: `${of}/${field}`,
  cells: cells.map(said),
})

const partRows = (change: PartChange, parts: ReadonlyMap<string, Part>, write: Words): readonly Row[] => {
  const { part, name } = change
  if (change.what !== 'changed')
    return [row(part, 'part', [name, change.what === 'added' ? 'New' : 'Taken away', '', ''])]
  const { move, fields } = change
  const moved = move && [
    `Moved ${moveSaid(move.by, write)}`,
    placeSaid(move.from, write),
    placeSaid(move.to, write),
  ]
  const is = parts.get(part)
  const others = fields.map(({ field, from, to }) => {
    const told = fieldSaid(is && kindOf(is).schema, field, from, to, write)
    return row(part, field, [name, told.label, told.from, told.to])
  })
  return [...(moved ? [row(part, 'place', [name, ...moved])] : []), ...others]
}

const SCHEMAS = { house: houseSchema, settings: settingsSchema, counter: counterSchema, title: undefined }
const NAMES = { house: 'The house', settings: 'The bay', counter: 'The counter', title: 'The bay' }

const bayRow = ({ of, field, from, to }: BayChange, write: Words): Row => {
  const told = fieldSaid(SCHEMAS[of], field, from, to, write)
  return row(of, field, [NAMES[of], told.label, told.from, told.to])
}

/** What moved, came, went or is another, part by part, and what is another of the bay as a whole. */
export const partTable = ({ difference, now, write }: Told): Table => {
  const parts = new Map(now.layout.parts.map((part) => [part.id, part]))
  return {
    id: 'parts',
    title: 'What moved or is another',
    columns: [
      { key: 'name', title: 'Part', unit: 'text', isMain: true },
      { key: 'what', title: 'What', unit: 'text' },
      { key: 'from', title: 'Was', unit: 'text' },
      { key: 'to', title: 'Is', unit: 'text' },
    ],
    rows: gathered([
      ...difference.bay.map((change) => bayRow(change, write)),
      ...difference.parts.flatMap((change) => partRows(change, parts, write)),
    ]),
  }
}
