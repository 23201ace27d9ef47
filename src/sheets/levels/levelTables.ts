import type { Words } from '../../checks/context'
import type { Evaluation } from '../../evaluate/evaluation'
import { type Level, type LevelKind, levelStack, type Stack } from '../../evaluate/levelStack'
import { namedMarks } from '../../evaluate/returns/pitTable'
import type { Built, Mouth } from '../../model/built'
import { blank, type Cell, type Column, counted, type Row, said, type Table } from '../../model/table'
import { capital } from './capital'
import { type GapRow, gapRows } from './stackRows'

const levelCell = (level: Level | undefined, write: Words): Cell =>
  level ? counted(level.levelMm, write.level(level.levelMm)) : blank()

const kindIn = ({ levels }: Stack, kind: LevelKind): Level | undefined =>
  levels.find((level) => level.kind === kind)

const outletsOf = ({ mouths }: Built): readonly Mouth[] =>
  mouths.filter(({ role }) => role === 'trough-outlet')

/** Levels of a row that are the same for all of its lines, by the names of their columns. */
const RACK_LEVELS: readonly (readonly [kind: LevelKind, title: string])[] = [
  ['bar-top', 'Bar top'],
  ['tip', 'Tower tip'],
  ['lip-high', 'Lip, high end'],
  ['lip-low', 'Lip, low end'],
  ['invert-high', 'Invert, high'],
  ['invert-outlet', 'Invert at outlet'],
  ['bearer-top', 'Bearer top'],
  ['datum', 'Rack datum'],
]

const levelKey = (kind: LevelKind): string =>
  `${kind.replaceAll(/-(\w)/g, (_, letter: string) => letter.toUpperCase())}Mm`

/** From the bar down to the rack datum, a row a line. Levels from the file's zero. */
export const rackTable = (plan: Evaluation, write: Words): Table => ({
  id: 'rack-levels',
  title: 'Levels of the rows',
  columns: [
    { key: 'row', title: 'Row', unit: 'text' },
    ...RACK_LEVELS.map(([kind, title]): Column => ({ key: levelKey(kind), title, unit: 'mm' })),
  ],
  rows: plan.bay.built.flatMap((built): Row[] => {
    const at = (outletsOf(built)[0] ?? built.mouths[0])?.at
    if (!built.rack || !at) return []
    const stack = levelStack(plan, built.part, { at, line: 1 })
    const levels = RACK_LEVELS.map(([kind]) => levelCell(kindIn(stack, kind), write))
    return [{ key: built.part, cells: [said(write.name(built.part)), ...levels] }]
  }),
})

const dropOf = (gaps: readonly GapRow[]): GapRow | undefined =>
  gaps.find(({ from, to }) => from.kind === 'invert-outlet' && to.kind === 'crown')

const gapCells = (gap: GapRow | undefined, { onTape }: Words): readonly Cell[] =>
  gap
    ? [
        counted(gap.gapMm, onTape(gap.gapMm)),
        gap.leastMm === undefined ? blank() : counted(gap.leastMm, onTape(gap.leastMm)),
        said(gap.state),
      ]
    : [blank(), blank(), said('no drain in reach')]

const dropRow = (plan: Evaluation, built: Built, { line, at }: Mouth, write: Words): Row => {
  const stack = levelStack(plan, built.part, { at, line })
  const drain = kindIn(stack, 'crown')?.part
  const levels = (['invert-outlet', 'drop-end', 'crown', 'invert'] as const).map((kind) =>
    levelCell(kindIn(stack, kind), write),
  )
  return {
    key: `${built.part} ${line}`,
    cells: [
      said(line > 0 ? `${write.name(built.part)} line ${line}` : write.name(built.part)),
      said(drain === undefined ? '' : write.name(drain)),
      ...levels,
      ...gapCells(dropOf(gapRows(plan, stack)), write),
    ],
  }
}

/** Every outlet over its drain, with the drop between gutter and crown. */
export const dropTable = (plan: Evaluation, write: Words): Table => ({
  id: 'drops',
  title: 'Drops from the gutters into the drains',
  columns: [
    { key: 'line', title: 'Line', unit: 'text' },
    { key: 'drain', title: 'Into', unit: 'text' },
    { key: 'invertOutletMm', title: 'Invert at outlet', unit: 'mm' },
    { key: 'dropEndMm', title: 'Tube ends', unit: 'mm' },
    { key: 'crownMm', title: 'Crown', unit: 'mm' },
    { key: 'drainInvertMm', title: 'Drain invert', unit: 'mm' },
    { key: 'dropMm', title: 'Drop', unit: 'mm', isMain: true },
    { key: 'leastMm', title: 'Least', unit: 'mm' },
    { key: 'state', title: 'State', unit: 'text' },
  ],
  rows: plan.bay.built.flatMap((built) =>
    outletsOf(built).map((mouth) => dropRow(plan, built, mouth, write)),
  ),
})

/** The gaps of a drain's way home, each told once: those of a pit do not come again with its next drain. */
const homeGaps = (plan: Evaluation): readonly { readonly whose: string; readonly gap: GapRow }[] => {
  const told = new Set<string>()
  return [...plan.bay.levels.drains.values()].flatMap(({ part, high }) =>
    gapRows(plan, levelStack(plan, part, { at: high.at })).flatMap((gap) => {
      const whose = gap.from.part ?? part
      const key = `${whose} ${gap.from.kind} ${gap.to.kind}`
      if (told.has(key)) return []
      told.add(key)
      return [{ whose, gap }]
    }),
  )
}

/** Gaps from the low end of each drain to the bottom of its pit. */
export const gapTable = (plan: Evaluation, write: Words): Table => ({
  id: 'gaps',
  title: 'Gaps on the way home',
  columns: [
    { key: 'what', title: 'Of', unit: 'text' },
    { key: 'from', title: 'From', unit: 'text' },
    { key: 'to', title: 'down to', unit: 'text' },
    { key: 'gapMm', title: 'Gap', unit: 'mm', isMain: true },
    { key: 'leastMm', title: 'Least', unit: 'mm' },
    { key: 'state', title: 'State', unit: 'text' },
  ],
  rows: homeGaps(plan).map(({ whose, gap }) => ({
    key: `${whose} ${gap.from.kind} ${gap.to.kind}`,
    cells: [said(write.name(whose)), said(gap.from.name), said(gap.to.name), ...gapCells(gap, write)],
  })),
})

/** Levels of a pit from its rim down, with what stands under each. Litres for programs, gallons for who reads them. */
export const pitTable = ({ part, pit }: Built, write: Words): Table => ({
  id: `pit-${part}`,
  title: `Levels of ${write.name(part)}`,
  columns: [
    { key: 'level', title: 'Level', unit: 'text' },
    { key: 'levelMm', title: 'At', unit: 'mm' },
    { key: 'downMm', title: 'Down from the rim', unit: 'mm', isMain: true },
    { key: 'depthMm', title: 'Over the bottom', unit: 'mm' },
    { key: 'litres', title: 'Holds under it', unit: 'L' },
  ],
  rows: pit
    ? namedMarks(pit).map(({ titles, levelMm, depthMm, litres }) => ({
        key: `${part} ${titles.join(' ')}`,
        cells: [
          said(capital(titles.join(', '))),
          counted(levelMm, write.level(levelMm)),
          counted(pit.rimMm - levelMm, write.onTape(pit.rimMm - levelMm)),
          counted(depthMm, write.onTape(depthMm)),
          counted(litres, write.volume(litres)),
        ],
      }))
    : [],
})
