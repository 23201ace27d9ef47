import { DROP_MM } from '../../checks/outlet-drop-min'
import type { Evaluation } from '../../evaluate/evaluation'
import type { Level, LevelKind, Stack } from '../../evaluate/levelStack'
import { type ShortGap, shortGaps } from '../../evaluate/shortGaps'
import { rankOf, type StateWord } from '../../model/finding'
import { DRAIN_BACK_UNDER_OVERFLOW_MM, INLET_OVER_OVERFLOW_MM } from '../../model/pitFacts'

/** A gap between two levels that a rule looks at, mm. */
export interface GapRow {
  readonly from: Level
  readonly to: Level
  readonly gapMm: number
  /** The least that is wanted; undefined where it is not a length, such as room for so much water. */
  readonly leastMm: number | undefined
  readonly state: StateWord
  readonly rank: number
}

/** Gaps that have one least whatever the bay, with what it is called where it is kept. */
const KEPT: readonly {
  readonly from: LevelKind
  readonly to: LevelKind
  readonly leastMm: number
  readonly good: StateWord
}[] = [
  { from: 'tip', to: 'invert-high', leastMm: 0, good: 'Fits' },
  { from: 'invert-outlet', to: 'crown', leastMm: DROP_MM, good: 'Falls' },
  { from: 'inlet', to: 'overflowMm', leastMm: INLET_OVER_OVERFLOW_MM, good: 'Falls' },
  { from: 'overflowMm', to: 'drainBackMm', leastMm: DRAIN_BACK_UNDER_OVERFLOW_MM, good: 'Holds' },
  { from: 'drainBackMm', to: 'runningMm', leastMm: 0, good: 'Holds' },
  { from: 'pumpOffMm', to: 'intakeMm', leastMm: 0, good: 'Holds' },
]

const isBetween = (from: Level, to: Level) => (short: ShortGap) => short.from === from && short.to === to

const shortRow = ({ from, to, finding }: ShortGap): GapRow => ({
  from,
  to,
  gapMm: from.levelMm - to.levelMm,
  leastMm: finding.limit.unit === 'mm' ? finding.limit.value : undefined,
  state: finding.state,
  rank: rankOf(finding),
})

/** The gaps of a stack that rules look at, from the top down: those kept with their least, those too small as the rule found them. */
export const gapRows = (evaluation: Evaluation, stack: Stack): readonly GapRow[] => {
  const short = shortGaps(evaluation, stack)
  const kept = KEPT.flatMap(({ from: above, to: below, leastMm, good }): GapRow[] => {
    const from = stack.levels.find(({ kind }) => kind === above)
    const to = stack.levels.find(({ kind }) => kind === below)
    if (!from || !to || short.some(isBetween(from, to))) return []
    const least = leastMm > 0 ? leastMm : undefined
    return [{ from, to, gapMm: from.levelMm - to.levelMm, leastMm: least, state: good, rank: 0 }]
  })
  return [...kept, ...short.map(shortRow)].toSorted((a, b) => b.from.levelMm - a.from.levelMm)
}
