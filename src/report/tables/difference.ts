import { sentence } from '../../checks/words'
import type { BayChange } from '../../evaluate/compare/bayChanges'
import { comparePlans, type PlanDifference } from '../../evaluate/compare/comparePlans'
import type { BoardChange, CountChange, TakeOffChange } from '../../evaluate/compare/counts'
import type { FieldChange } from '../../evaluate/compare/fieldChanges'
import type { FigureChange, FigureUnit } from '../../evaluate/compare/figures'
import type { FindingChange } from '../../evaluate/compare/findings'
import type { PartChange } from '../../evaluate/compare/partChanges'
import type { PieceChange } from '../../evaluate/compare/pieces'
import type { SumChange } from '../../evaluate/compare/sums'
import { blank, counted, said, type Cell, type ValueUnit } from '../../model/table'
import { memberTitle } from '../../model/memberNames'
import { thousands } from '../../units/thousands'
import { writeCount } from '../../units/writeCount'
import {
  clean,
  type Field,
  numberCell,
  numberField,
  quiet,
  sectionOf,
  textField,
  type Section,
} from '../fields'
import type { Told } from '../told'

type Write = (value: number) => string

const signed =
  (write: Write): Write =>
  (value) =>
    value < 0 ? `-${write(-value)}` : `+${write(value)}`

/** Before, after and how much more: what every table of counts ends with. */
const changeFields = <T extends Pick<CountChange, 'before' | 'after'>>(
  writeFor: (of: T) => Write,
): readonly Field<T>[] => {
  const field = (key: string, title: string, of: (item: T) => number, isMore = false): Field<T> => ({
    key,
    title,
    unit: 'count',
    cell: (item) => counted(clean(of(item)), (isMore ? signed(writeFor(item)) : writeFor(item))(of(item))),
  })
  return [
    field('before', 'Before', ({ before }) => before),
    field('after', 'After', ({ after }) => after),
    field('more', 'More', ({ before, after }) => after - before, true),
  ]
}

const moveOf = (change: PartChange) => (change.what === 'changed' ? change.move?.by : undefined)

const whatOf = (change: PartChange): string => {
  if (change.what !== 'changed') return change.what
  if (change.fields.length === 0) return 'moved'
  return change.move ? 'moved and changed' : 'changed'
}

const partsSection = ({ words }: Told, items: readonly PartChange[]): Section =>
  sectionOf<PartChange>({
    id: 'parts',
    title: 'Parts',
    fields: [
      quiet(textField('part', 'Part', ({ part }) => part)),
      textField('name', 'Part', ({ name }) => name),
      textField('kind', 'Kind', ({ kind }) => kind),
      textField('change', 'Change', whatOf),
      numberField('eastMm', 'East', 'mm', words.onTape, (change) => moveOf(change)?.x),
      numberField('northMm', 'North', 'mm', words.onTape, (change) => moveOf(change)?.y),
    ],
    items,
    keyOf: ({ part }) => part,
  })

interface Changed extends FieldChange {
  /** Id of the part, or what of the bay. */
  readonly of: string
  readonly name: string
}

const changedFields = ({ parts, bay }: PlanDifference): readonly Changed[] => [
  ...parts.flatMap((change) =>
    change.what === 'changed'
      ? change.fields.map((field) => ({ of: change.part, name: change.name, ...field }))
      : [],
  ),
  ...bay.map((field: BayChange) => ({ name: field.of, ...field })),
]

/** Longer than this a value is a list of points or of prices: a look at the two files tells more. */
const LONGEST = 60

const valueCell = (value: unknown): Cell => {
  if (value === undefined || value === null) return blank('none')
  const text = typeof value === 'string' ? value : JSON.stringify(value)
  return { value: text, text: text.length > LONGEST ? 'long' : text }
}

const fieldsSection = (difference: PlanDifference): Section =>
  sectionOf<Changed>({
    id: 'fields',
    title: 'Fields, as the layout file has them',
    fields: [
      quiet(textField('of', 'Of', ({ of }) => of)),
      textField('name', 'Of', ({ name }) => name),
      textField('field', 'Field', ({ field }) => field),
      { key: 'from', title: 'Before', unit: 'text', cell: ({ from }) => valueCell(from) },
      { key: 'to', title: 'After', unit: 'text', cell: ({ to }) => valueCell(to) },
    ],
    items: changedFields(difference),
    keyOf: ({ of, field }) => `${of}/${field}`,
  })

const piecesSection = ({ words }: Told, items: readonly PieceChange[]): Section =>
  sectionOf<PieceChange>({
    id: 'pieces',
    title: 'Pieces',
    fields: [
      textField('title', 'Material', ({ title }) => title),
      quiet(textField('stock', 'Stock', ({ stock }) => stock)),
      quiet(textField('mark', 'Mark', ({ mark }) => mark)),
      textField('member', 'Piece', ({ mark }) => memberTitle(mark)),
      numberField('lengthMm', 'Length', 'mm', words.exact().onTape, ({ lengthMm }) => lengthMm),
      ...changeFields<PieceChange>(() => thousands),
    ],
    items,
    keyOf: ({ key }) => key,
  })

const boardsSection = ({ words }: Told, items: readonly BoardChange[]): Section =>
  sectionOf<BoardChange>({
    id: 'boards',
    title: 'Boards, sticks and coils to buy',
    fields: [
      textField('title', 'Material', ({ title }) => title),
      quiet(textField('stock', 'Stock', ({ stock }) => stock)),
      numberField('stockMm', 'Length', 'mm', words.length, ({ stockMm }) => stockMm),
      ...changeFields<BoardChange>(() => thousands),
    ],
    items,
    keyOf: ({ key }) => key,
  })

const takeOffSection = ({ units }: Told, items: readonly TakeOffChange[]): Section =>
  sectionOf<TakeOffChange>({
    id: 'takeOff',
    title: 'Take-off',
    fields: [
      textField('title', 'What', ({ title }) => title),
      quiet(textField('item', 'Item', ({ key }) => key)),
      quiet(textField('unit', 'Unit', ({ unit }) => unit)),
      ...changeFields<TakeOffChange>(
        ({ unit }) =>
          (count) =>
            writeCount(count, unit, units),
      ),
    ],
    items,
    keyOf: ({ key }) => key,
  })

/** What each unit of a figure is in a file, and how it is read. */
const inUnit = ({ words }: Told): Readonly<Record<FigureUnit, readonly [ValueUnit, Write]>> => ({
  length: ['mm', words.onTape],
  level: ['mm', words.level],
  fall: ['mm/m', words.fall],
  flow: ['L/h', words.flow],
  'flow-total': ['L/h', words.flowTotal],
  head: ['mm', words.pumpHead],
  share: ['share', words.share],
  volume: ['L', words.volume],
  state: ['text', String],
})

const figuresSection = (id: string, title: string, told: Told, items: readonly FigureChange[]): Section => {
  const units = inUnit(told)
  const cell = ({ unit }: FigureChange, value: FigureChange['before']): Cell =>
    typeof value === 'string' ? said(value) : numberCell(value, units[unit][1])
  return sectionOf<FigureChange>({
    id,
    title,
    fields: [
      quiet(textField('key', 'Key', ({ key }) => key)),
      quiet(textField('part', 'Part', ({ part }) => part)),
      textField('name', 'Of', ({ part }) => told.words.name(part)),
      textField('what', 'What', ({ what }) => what),
      quiet(textField('unit', 'Unit', ({ unit }) => units[unit][0])),
      { key: 'before', title: 'Before', unit: 'text', cell: (change) => cell(change, change.before) },
      { key: 'after', title: 'After', unit: 'text', cell: (change) => cell(change, change.after) },
    ],
    items,
    keyOf: ({ key }) => key,
  })
}

const findingsSection = (before: Told, after: Told, items: readonly FindingChange[]): Section =>
  sectionOf<FindingChange>({
    id: 'findings',
    title: 'Findings',
    fields: [
      textField('change', 'Change', ({ kind }) => kind),
      textField('was', 'Was', (change) => (change.kind === 'changed' ? change.was.state : '')),
      textField('state', 'State', ({ finding }) => finding.state),
      textField('sentence', 'What is wrong', ({ kind, finding }) =>
        sentence(finding, (kind === 'gone' ? before : after).words),
      ),
      quiet(textField('key', 'Key', ({ finding }) => finding.key)),
    ],
    items,
    keyOf: ({ kind, finding }) => `${kind}/${finding.key}`,
  })

const sumNames: Readonly<Record<SumChange['key'], string>> = {
  towers: 'Towers',
  sites: 'Plant sites',
  neededCents: 'Needed, before tax',
  boughtCents: 'Bought, before tax',
  unpriced: 'Things without a price',
  hours: 'Hours',
}

const sumsSection = ({ money }: Told, items: readonly SumChange[]): Section => {
  const writeOf = ({ key }: SumChange): Write => {
    if (key === 'neededCents' || key === 'boughtCents') return money
    return key === 'hours' ? (hours) => thousands(hours.toFixed(1)) : thousands
  }
  return sectionOf<SumChange>({
    id: 'sums',
    title: 'Sums',
    fields: [
      quiet(textField('key', 'Key', ({ key }) => key)),
      textField('what', 'What', ({ key }) => sumNames[key]),
      ...changeFields<SumChange>(writeOf),
    ],
    items,
    keyOf: ({ key }) => key,
  })
}

/** What differs from one plan to another in tables, sums first; those of what is alike have no rows. */
export const differenceOf = (before: Told, after: Told): readonly Section[] => {
  const found = comparePlans(before.plan, after.plan)
  return [
    sumsSection(after, found.sums),
    partsSection(after, found.parts),
    fieldsSection(found),
    findingsSection(before, after, found.findings),
    piecesSection(after, found.pieces),
    boardsSection(after, found.boards),
    takeOffSection(after, found.takeOff),
    figuresSection('levels', 'Levels', after, found.levels),
    figuresSection('flows', 'Flows', after, found.flows),
  ]
}
