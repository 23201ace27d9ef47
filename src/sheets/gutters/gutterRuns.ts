import type { Judged } from '../../evaluate/evaluation'
import type { Built } from '../../model/built'
import type { PartId } from '../../model/ids'
import type { BearerShim } from '../../model/rackFacts'
import { toTicks } from '../../units/length'
import { rowAxes } from '../rowAxes'

/** One length of gutter as it is cut, from the high end on. All mm. */
export interface GutterLength {
  readonly lengthMm: number
  /** Where its lower end lies, from the high end of the line. */
  readonly endsMm: number
}

/**
 * Bearers are measured from the high end of the row, gutters from their own: the crew must know how far one is from the other.
 * All mm.
 */
export interface InRow {
  /** From the row's high end to the gutters' own. */
  readonly beginsMm: number
  /** From the row's high end to the middle of its first risers, or of the first straps where the house carries it. */
  readonly riserMm: number
  /** Lips over the foot of a riser, or over the floor. */
  readonly lipHighMm: number
  readonly lipLowMm: number
}

/** The gutters of one row, or one lone trough: all its lines are alike. */
export interface GutterRun {
  readonly part: PartId
  readonly gutter: string
  readonly lines: number
  readonly fallMmPerM: number
  readonly runMm: number
  readonly outletFromHighMm: number
  readonly outletBoreMm: number
  readonly lengths: readonly GutterLength[]
  /** Of a row of racks, where its gutters lie in it; undefined for a lone trough, which stands on its blocks. */
  readonly inRow: InRow | undefined
  /** The house carries the row: it has straps where others have risers. */
  readonly isHung: boolean
  /** Empty for a lone trough. */
  readonly shims: readonly BearerShim[]
  /** Joiners, caps, outlets, straps and blocks of all its lines, by catalogue key. */
  readonly fittings: ReadonlyMap<string, number>
}

const lengthsOf = ({ sticks }: Built, lines: number): readonly GutterLength[] => {
  const all = sticks.filter(({ mark }) => mark === 'GT')
  let endsMm = 0
  return all.slice(0, all.length / Math.max(1, lines)).map(({ lengthMm }) => {
    endsMm += lengthMm
    return { lengthMm, endsMm }
  })
}

const inRowOf = (built: Built): InRow | undefined => {
  const { rack, sticks } = built
  if (!rack) return undefined
  const { placeOf } = rowAxes(built, rack)
  const along = (mark: RegExp): number[] =>
    sticks.filter((stick) => mark.test(stick.mark)).map(({ from }) => placeOf(from).u)
  const footMm = sticks.find(({ mark }) => mark.startsWith('RS'))?.from.z ?? 0
  return {
    beginsMm: Math.min(...along(/^GT$/)),
    riserMm: Math.min(...along(rack.carriedBy === 'house' ? /^GB$/ : /^RS/)),
    lipHighMm: rack.lipHighMm - footMm,
    lipLowMm: rack.lipLowMm - footMm,
  }
}

const FITTINGS = /^(?:gutter-(?:joiner|end-cap|outlet|strap)|trough-block)/

const fittingsOf = ({ fittings }: Built): ReadonlyMap<string, number> => {
  const counts = new Map<string, number>()
  for (const { item } of fittings) if (FITTINGS.test(item)) counts.set(item, (counts.get(item) ?? 0) + 1)
  return counts
}

const runOf = (built: Built): readonly GutterRun[] => {
  const { part, trough, rack } = built
  if (!trough) return []
  return [
    {
      part,
      gutter: trough.gutter,
      lines: trough.lines,
      fallMmPerM: trough.fallMmPerM,
      runMm: trough.runMm,
      outletFromHighMm: trough.outletFromHighMm,
      outletBoreMm: trough.outletBoreMm,
      lengths: lengthsOf(built, trough.lines),
      inRow: inRowOf(built),
      isHung: rack?.carriedBy === 'house',
      shims: rack?.bearerShims ?? [],
      fittings: fittingsOf(built),
    },
  ]
}

/** What the hands that hang a gutter can tell of it: lengths and places on the tick. */
const looksOf = (run: GutterRun): string => {
  const { gutter, lines, outletFromHighMm, outletBoreMm, lengths, shims, inRow, fittings } = run
  return [
    gutter,
    lines,
    toTicks(outletFromHighMm),
    toTicks(outletBoreMm),
    ...lengths.map(({ lengthMm }) => toTicks(lengthMm)),
    ...shims.flatMap(({ fromHighMm, shimMm }) => [toTicks(fromHighMm), toTicks(shimMm)]),
    run.isHung,
    ...(inRow ? Object.values(inRow).map(toTicks) : []),
    ...[...fittings].map(([item, count]) => `${item} ${count}`),
  ].join(' ')
}

/** Runs that are hung alike, in the order of the bay's parts. */
export const gutterKinds = ({
  bay,
}: Pick<Judged, 'bay'>): readonly (readonly [GutterRun, ...GutterRun[]])[] => {
  const kinds = new Map<string, [GutterRun, ...GutterRun[]]>()
  for (const run of bay.built.flatMap(runOf)) {
    const kind = kinds.get(looksOf(run))
    if (kind) kind.push(run)
    else kinds.set(looksOf(run), [run])
  }
  return [...kinds.values()]
}
