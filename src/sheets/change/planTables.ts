import type { Words } from '../../checks/context'
import { sentence } from '../../checks/words'
import { partChanges, type PartChange } from '../../evaluate/compare/partChanges'
import type { Judged } from '../../evaluate/evaluation'
import { settingsSchema } from '../../layout/settings'
import type { Part } from '../../layout/schema'
import type { Finding } from '../../model/finding'
import { counted, said, type Row, type Table } from '../../model/table'
import { kindOf } from '../../parts'
import { fieldSaid } from './fieldSaid'

/** `8" east, 2" south`. */
const moveSaid = ({ x, y }: { readonly x: number; readonly y: number }, { onTape }: Words): string =>
  [
    ...(Math.abs(x) > 0.1 ? [`${onTape(Math.abs(x))} ${x > 0 ? 'east' : 'west'}`] : []),
    ...(Math.abs(y) > 0.1 ? [`${onTape(Math.abs(y))} ${y > 0 ? 'north' : 'south'}`] : []),
  ].join(', ')

const row = (part: string, name: string, what: string, from: string, to: string): Row => ({
  key: `${part}/${what}`,
  cells: [said(name), said(what), said(from), said(to)],
})

const partRows = (
  change: PartChange,
  was: Part | undefined,
  is: Part | undefined,
  write: Words,
): readonly Row[] => {
  const { part, name } = change
  if (change.kind !== 'changed')
    return [row(part, name, change.kind === 'added' ? 'New' : 'Taken away', '', '')]
  const moved = change.byMm ? [row(part, name, 'Moved', '', moveSaid(change.byMm, write))] : []
  if (!was || !is) return moved
  const [before, after] = [was, is] as unknown as [Record<string, unknown>, Record<string, unknown>] // read field by field
  return [
    ...moved,
    ...change.fields.map((field) => {
      const { label, from, to } = fieldSaid(kindOf(is).schema, field, before[field], after[field], write)
      return row(part, name, label, from, to)
    }),
  ]
}

const settingRows = (was: Judged, now: Judged, write: Words): readonly Row[] => {
  const [before, after] = [was.layout.settings, now.layout.settings] as unknown as [
    Record<string, unknown>,
    Record<string, unknown>,
  ] // read field by field
  return Object.keys(after)
    .filter((field) => !['issue', 'accepted'].includes(field))
    .filter((field) => JSON.stringify(before[field]) !== JSON.stringify(after[field]))
    .map((field) => {
      const { label, from, to } = fieldSaid(settingsSchema, field, before[field], after[field], write)
      return row('bay', 'The bay', label, from, to)
    })
}

const houseRows = (was: Judged, now: Judged): readonly Row[] =>
  JSON.stringify(was.layout.house) === JSON.stringify(now.layout.house)
    ? []
    : [row('house', 'The house', 'Walls, levels or what lies under the floor', '', 'changed')]

/** What moved, came, went or is another, part by part. */
export const movedTable = (was: Judged, now: Judged, write: Words): Table => {
  const before = new Map(was.layout.parts.map((part) => [part.id, part]))
  const after = new Map(now.layout.parts.map((part) => [part.id, part]))
  return {
    id: 'parts',
    title: 'What moved or is another',
    columns: [
      { key: 'name', title: 'Part', unit: 'text', isMain: true },
      { key: 'what', title: 'What', unit: 'text' },
      { key: 'from', title: 'Was', unit: 'text' },
      { key: 'to', title: 'Is', unit: 'text' },
    ],
    rows: [
      ...houseRows(was, now),
      ...settingRows(was, now, write),
      ...partChanges(was.layout, now.layout).flatMap((change) =>
        partRows(change, before.get(change.part), after.get(change.part), write),
      ),
    ],
  }
}

interface Counted {
  readonly key: string
  readonly title: string
  readonly count: number
}

/** Everything that is bought by the piece, the board or the stick, and how much of it there is. */
const boughtOf = ({ cuts, counts }: Judged, write: Words): readonly Counted[] => [
  ...cuts.flatMap(({ stock, title, bought }) =>
    bought.map(({ stockMm, count }) => ({
      key: `${stock}@${stockMm}`,
      title: `${title}, ${write.length(stockMm)}`,
      count,
    })),
  ),
  ...counts.map(({ item, title, count }) => ({ key: item, title, count })),
]

const signed = (more: number): string => `${more > 0 ? '+' : '−'}${Math.abs(more)}`

/** What there is more or less of to buy. */
export const buyTable = (was: Judged, now: Judged, write: Words): Table => {
  const before = new Map(boughtOf(was, write).map((each) => [each.key, each]))
  const after = new Map(boughtOf(now, write).map((each) => [each.key, each]))
  const keys = [...new Set([...after.keys(), ...before.keys()])]
  return {
    id: 'bought',
    title: 'More or less to buy',
    columns: [
      { key: 'title', title: 'What', unit: 'text' },
      { key: 'before', title: 'Was', unit: 'count' },
      { key: 'after', title: 'Is', unit: 'count' },
      { key: 'more', title: 'More or less', unit: 'count', isMain: true },
    ],
    rows: keys.flatMap((key): readonly Row[] => {
      const [from, to] = [before.get(key)?.count ?? 0, after.get(key)?.count ?? 0]
      if (from === to) return []
      const title = after.get(key)?.title ?? before.get(key)?.title ?? key
      return [
        { key, cells: [said(title), counted(from), counted(to), counted(to - from, signed(to - from))] },
      ]
    }),
  }
}

/** Warnings that one plan has and the other has not, by their keys. */
export const findingTable = (was: Judged, now: Judged, write: Words): Table => {
  const known = new Set(was.findings.map(({ key }) => key))
  const still = new Set(now.findings.map(({ key }) => key))
  const rowOf = (kind: string, finding: Finding): Row => ({
    key: `${kind} ${finding.key}`,
    cells: [said(kind), said(finding.state), said(sentence(finding, write))],
  })
  return {
    id: 'findings',
    title: 'Warnings that came and went',
    columns: [
      { key: 'kind', title: 'Since', unit: 'text' },
      { key: 'state', title: 'State', unit: 'text' },
      { key: 'words', title: 'Warning', unit: 'text' },
    ],
    rows: [
      ...now.findings.filter(({ key }) => !known.has(key)).map((finding) => rowOf('New', finding)),
      ...was.findings.filter(({ key }) => !still.has(key)).map((finding) => rowOf('Gone', finding)),
    ],
  }
}
