import type { FigureChange } from '../../evaluate/compare/figures'
import type { Cell, Table } from '../../model/table'
import { blank, said } from '../../model/table'
import type { Words } from '../../checks/context'
import { gathered } from './gathered'
import { signed, type Told } from './told'

const valueSaid = (value: number, { unit }: FigureChange, write: Words): string => {
  switch (unit) {
    case 'length':
      return write.onTape(value)
    case 'level':
      return write.level(value)
    case 'fall':
      return write.fall(value)
    case 'flow':
      return write.flow(value)
    case 'flow-total':
      return write.flowTotal(value)
    case 'head':
      return write.pumpHead(value)
    case 'share':
      return write.share(value)
    case 'volume':
      return write.volume(value)
    case 'state':
      return String(value)
  }
}

const cellOf = (value: FigureChange['before'], change: FigureChange, write: Words): Cell => {
  if (value === undefined) return blank('none')
  return typeof value === 'number' ? { value, text: valueSaid(value, change, write) } : said(value)
}

/** How far a level or a length went; other figures are read side by side. */
const byCell = (change: FigureChange, write: Words): Cell => {
  const { before, after, unit } = change
  if (typeof before !== 'number' || typeof after !== 'number') return blank()
  const more = after - before
  // Less than the step that it is read in.
  if (write.onTape(Math.abs(more)) === write.onTape(0)) return { value: more, text: '' }
  if (unit === 'level')
    return { value: more, text: `${write.onTape(Math.abs(more))} ${more > 0 ? 'up' : 'down'}` }
  return unit === 'length' ? { value: more, text: signed(more, write.onTape(Math.abs(more))) } : blank()
}

const tableOf = (
  id: string,
  title: string,
  changes: readonly FigureChange[],
  write: Words,
  hasBy: boolean,
): Table => ({
  id,
  title,
  columns: [
    { key: 'name', title: 'Of', unit: 'text', isMain: true },
    { key: 'what', title: 'What', unit: 'text' },
    { key: 'before', title: 'Was', unit: 'text' },
    { key: 'after', title: 'Is', unit: 'text' },
    ...(hasBy ? [{ key: 'byMm', title: 'By', unit: 'mm' as const }] : []),
  ],
  rows: gathered(
    changes.flatMap((change) => {
      const [was, is] = [cellOf(change.before, change, write), cellOf(change.after, change, write)]
      // What reads alike is no change to who reads it.
      if (was.text === is.text) return []
      const by = hasBy ? [byCell(change, write)] : []
      return [{ key: change.key, cells: [said(write.name(change.part)), said(change.what), was, is, ...by] }]
    }),
  ),
})

/** Levels, falls, hole heights and pegs that are others. */
export const levelTable = ({ difference, write }: Told): Table =>
  tableOf('levels', 'Levels, holes and pegs', difference.levels, write, true)

/** What water does otherwise. */
export const flowTable = ({ difference, write }: Told): Table =>
  tableOf('flows', 'Water', difference.flows, write, false)
