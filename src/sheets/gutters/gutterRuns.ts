import type { Judged } from '../../evaluate/evaluation'
import type { Built } from '../../model/built'
import type { PartId } from '../../model/ids'
import type { BearerShim } from '../../model/rackFacts'
import { toTicks } from '../../units/length'

/** One length of gutter as it is cut, from the high end on. All mm. */
export interface GutterLength {
  readonly lengthMm: number
  /** Where its lower end lies, from the high end of the line. */
  readonly endsMm: number
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
  /** Empty for a lone trough, which stands on what its builder gives it. */
  readonly shims: readonly BearerShim[]
}

const lengthsOf = ({ sticks }: Built, lines: number): readonly GutterLength[] => {
  const all = sticks.filter(({ mark }) => mark === 'GT')
  let endsMm = 0
  return all.slice(0, all.length / Math.max(1, lines)).map(({ lengthMm }) => {
    endsMm += lengthMm
    return { lengthMm, endsMm }
  })
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
      shims: rack?.bearerShims ?? [],
    },
  ]
}

/** What the hands that hang a gutter can tell of it: lengths and places on the tick. */
const looksOf = ({ gutter, lines, outletFromHighMm, outletBoreMm, lengths, shims }: GutterRun): string =>
  [
    gutter,
    lines,
    toTicks(outletFromHighMm),
    toTicks(outletBoreMm),
    ...lengths.map(({ lengthMm }) => toTicks(lengthMm)),
    ...shims.flatMap(({ fromHighMm, shimMm }) => [toTicks(fromHighMm), toTicks(shimMm)]),
  ].join(' ')

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
