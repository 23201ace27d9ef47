import type { Words } from '../../checks/context'
import type { Evaluation } from '../../evaluate/evaluation'
import { longCut } from '../../evaluate/longCut/cut'
import type { Table } from '../../model/table'
import type { Units } from '../../units/length'
import { inTrench } from '../../units/precision'
import { cautionsFor } from '../hazards'
import { pagesOf } from '../pagesOf'
import { heading, type Piece, tableOf, words } from '../piece'
import type { PlanOnPaper, Sheet, SheetOptions } from '../sheet'
import { sheetWords } from '../sheetWords'
import { dropTable, gapTable, pitTable, rackTable } from './levelTables'
import { pitFigure } from './pitFigure'
import { sectionFigure } from './sectionFigure'

const NEXT: Piece = { as: 'page' }

/** One page a drain. */
const drainPieces = (plan: Evaluation, units: Units, write: Words): readonly Piece[] =>
  [...plan.bay.levels.drains.keys()].flatMap((part) => {
    const cut = longCut(plan.bay, part)
    if (!cut) return []
    const way = cut.through.slice(cut.through.indexOf(part)).map(write.name).join(' to ')
    return [heading(way), sectionFigure({ plan, cut, units, write }), NEXT]
  })

const pitPieces = (plan: Evaluation, units: Units, write: Words): readonly Piece[] =>
  plan.bay.built.flatMap((built) =>
    built.pit
      ? [
          heading(write.name(built.part)),
          pitFigure(built, built.pit, units, write),
          tableOf(pitTable(built, write), true),
        ]
      : [],
  )

const tablePieces = (tables: readonly Table[]): readonly Piece[] =>
  tables.flatMap((table) => (table.rows.length === 0 ? [] : [heading(table.title), tableOf(table)]))

/** What zero is on this sheet. */
const zeroWords = ({ bay: { house, settings } }: Evaluation, write: Words): string => {
  const { name, levelMm, valueMm } = house.benchmark
  return settings.levelsFrom === 'benchmark'
    ? `Levels are counted so that the benchmark (${name}) reads ${write.plainLevel(valueMm)}.`
    : `Levels are counted from the bay’s zero; the benchmark (${name}) reads ${write.level(levelMm)}.`
}

const piecesOf = ({ now }: PlanOnPaper, { units }: SheetOptions): readonly Piece[] => {
  const write = sheetWords(now, units, inTrench)
  const drains = drainPieces(now, units, write)
  const pits = pitPieces(now, units, write)
  const tables = tablePieces([gapTable(now, write), dropTable(now, write), rackTable(now, write)])
  if (drains.length + pits.length + tables.length === 0) return []
  return [...drains, words(zeroWords(now, write)), ...cautionsFor('levels', now, units), ...pits, ...tables]
}

const levels: Omit<Sheet, 'pages'> = {
  id: 'levels',
  code: 'LS',
  title: 'Levels sheet',
  reader: 'Drain crew',
  size: 'large',
  pieces: piecesOf,
}

/** Long sections of the drains down to their pits, and every level from the bar to the bottom. A section lies as its trench does. */
export const levelsSheet: Sheet = {
  ...levels,
  pages: (plan, options) =>
    pagesOf(levels, plan, {
      ...options,
      orientation: options.orientation === 'auto' ? 'landscape' : options.orientation,
    }),
}
