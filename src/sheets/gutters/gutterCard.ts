import type { Words } from '../../checks/context'
import { stockOf } from '../../catalogue/stock'
import type { Judged } from '../../evaluate/evaluation'
import type { Built } from '../../model/built'
import { gutterEnds } from '../../model/gutterEnds'
import type { PartId } from '../../model/ids'
import { atSaw } from '../../units/precision'
import { dropOver } from '../../units/slope'
import { namesTogether } from '../hazard'
import { cautionsFor } from '../hazards'
import { heading, type Piece, tableOf, words } from '../piece'
import type { PlanOnPaper, Sheet, SheetOptions } from '../sheet'
import { sheetWords } from '../sheetWords'
import { gutterFigure } from './gutterFigure'
import { gutterKinds, type GutterRun, type InRow } from './gutterRuns'
import { gutterSteps } from './gutterSteps'
import { fittingTable, footTable, lengthTable, shimTable } from './gutterTables'

/** The way from the low end of a row's gutters to their high end, as the compass has it; undefined for a lone trough. */
const highWay = (built: Built | undefined): string | undefined => {
  if (!built?.rack) return undefined
  const { high, low } = gutterEnds(built, built.rack)
  const [dx, dy] = [high.x - low.x, high.y - low.y]
  if (Math.abs(dx) > Math.abs(dy)) return dx > 0 ? 'east' : 'west'
  return dy > 0 ? 'north' : 'south'
}

const highWords = (kind: readonly GutterRun[], { bay }: Judged, { name }: Words): readonly string[] => {
  const ways = new Map<string, string[]>()
  for (const { part } of kind) {
    const way = highWay(bay.builtOf.get(part))
    if (way !== undefined) ways.set(way, [...(ways.get(way) ?? []), name(part)])
  }
  return [...ways].map(([way, names]) => `High end to the ${way}: ${namesTogether(names)}.`)
}

const fallWords = ({ fallMmPerM, runMm, inRow, isHung }: GutterRun, write: Words): string => {
  const drop = `falling ${write.fall(fallMmPerM)}, ${write.onTape(dropOver(runMm, fallMmPerM))} in all`
  return inRow
    ? `${drop}: lips ${write.onTape(inRow.lipHighMm)} over ${isHung ? 'the floor' : 'the risers’ feet'} at the row’s high end and ${write.onTape(inRow.lipLowMm)} at its low end`
    : drop
}

const beginsWords = ({ beginsMm, riserMm }: InRow, isHung: boolean, write: Words): string => {
  const pastMm = beginsMm - riserMm
  const way = pastMm < 0 ? 'uphill' : 'downhill'
  return `Each begins ${write.onTape(Math.abs(pastMm))} ${way} of the middle of the row’s first ${isHung ? 'straps' : 'risers'}, ${write.onTape(beginsMm)} from the row’s high end. `
}

const runWords = (run: GutterRun, write: Words): string => {
  const { gutter, lines, runMm, outletFromHighMm, outletBoreMm, inRow, isHung } = run
  return (
    `${stockOf(gutter).title}, ${lines} ${lines === 1 ? 'line' : 'lines'} of ${write.length(runMm)}, ${fallWords(run, write)}. ` +
    (inRow ? beginsWords(inRow, isHung, write) : '') +
    `Middle of the outlet ${write.length(outletFromHighMm)} from the gutter’s high end; its tube is ${write.onTape(outletBoreMm)} inside.`
  )
}

/** A bearer that stands clear of a riser pair may stand clear of the gutter's end too. */
const shortOfBearers = ({ shims, inRow }: GutterRun, write: Words): readonly Piece[] =>
  shims.flatMap(({ fromHighMm }, index) => {
    const shortMm = (inRow?.beginsMm ?? 0) - fromHighMm
    return shortMm <= 0
      ? []
      : [
          words(
            `The middle of bearer ${index + 1} lies ${write.onTape(shortMm)} uphill of the gutter’s end: move it downhill until the gutter rests on it.`,
          ),
        ]
  })

const kindPieces = (
  kind: readonly [GutterRun, ...GutterRun[]],
  now: Judged,
  write: Words,
): readonly Piece[] => {
  const [run] = kind
  const names = kind.map(({ part }) => write.name(part))
  return [
    heading(`${names.join(', ')}${names.length > 1 ? ': alike' : ''}`),
    words(runWords(run, write)),
    ...highWords(kind, now, write).map((text) => words(text)),
    gutterFigure(run, ['high end', 'low end'], write),
    tableOf(lengthTable(run, write), true),
    ...shortOfBearers(run, write),
    ...(run.shims.length > 0 ? [tableOf(shimTable(run, write), true)] : []),
    tableOf(fittingTable(run, kind.length)),
    heading('Order of work', 2),
    { as: 'steps', steps: gutterSteps(run, write) },
  ]
}

const feetOf = ({ bay }: Judged, part: PartId, write: Words): readonly Piece[] => {
  const rack = bay.builtOf.get(part)?.rack
  const [first, ...others] = bay.levels.feet.get(part) ?? []
  return rack && first ? [tableOf(footTable(write.name(part), rack, [first, ...others], write), true)] : []
}

const LEFT =
  'Left and right as one looks along the row from its start. Shims stand between the foot plate and the foot, dry and flat; a stack over 1-1/2 in wants a block.'

const LEFT_METRIC =
  'Left and right as one looks along the row from its start. Shims stand between the foot plate and the foot, dry and flat; a stack over 38 mm wants a block.'

const footPieces = (now: Judged, write: Words, units: SheetOptions['units']): readonly Piece[] => {
  const tables = now.bay.built.flatMap(({ part }) => feetOf(now, part, write))
  return tables.length === 0
    ? []
    : [
        { as: 'page' },
        heading('Shims under the feet'),
        words(units === 'metric' ? LEFT_METRIC : LEFT),
        ...tables,
      ]
}

const piecesOf = ({ now }: PlanOnPaper, { units }: SheetOptions): readonly Piece[] => {
  const kinds = gutterKinds(now)
  const write = sheetWords(now, units, atSaw)
  const gutters = kinds.flatMap((kind, index): readonly Piece[] => [
    ...(index > 0 ? [{ as: 'page' } as const] : []),
    ...kindPieces(kind, now, write),
  ])
  const feet = footPieces(now, write, units)
  if (gutters.length + feet.length === 0) return []
  return [...cautionsFor('gutters', now, units), ...gutters, ...feet]
}

/** Gutters line by line, what goes under them at each bearer, and what goes under the feet of the racks. */
export const gutterCard: Sheet = {
  id: 'gutters',
  code: 'GC',
  title: 'Gutter card',
  reader: 'Gutter crew',
  size: 'small',
  pieces: piecesOf,
}
