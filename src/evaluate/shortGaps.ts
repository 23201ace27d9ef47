import { rankOf, type Finding } from '../model/finding'
import { PIT_RUNGS } from '../model/pitFacts'
import { findingsOf } from './8-checks'
import type { Evaluation } from './evaluation'
import type { Level, LevelKind, Stack } from './levelStack'

/** A gap between two levels that a check found too small. */
export interface ShortGap {
  readonly from: Level
  readonly to: Level
  readonly finding: Finding
}

type Between = readonly [LevelKind, LevelKind]

/** Which levels a rule measures between; where that hangs on what it found, it is read off the finding. */
const measuredBetween: Readonly<Record<string, Between | ((finding: Finding) => Between | undefined)>> = {
  'level-stack-short': ['tip', 'invert-high'],
  'tip-window-min': ({ facts }) => (facts['end'] === 'low' ? ['lip-low', 'tip'] : ['tip', 'invert-high']),
  'outlet-drop-min': ['invert-outlet', 'crown'],
  'drain-cover-min': ['floor', 'crown'],
  'drain-branch-level': ['low-end', 'invert'],
  'pit-inlet-level': ['inlet', 'overflowMm'],
  'pit-overflow-level': ['rimMm', 'overflowMm'],
  'pit-transit-room': ['drainBackMm', 'runningMm'],
  'suction-level-min': ({ facts }) => [
    facts['level'] === 'running level' ? 'runningMm' : 'pumpOffMm',
    'intakeMm',
  ],
  'pit-level-order': ({ facts }) => {
    const rungOf = (title: unknown) => PIT_RUNGS.find((rung) => rung.title === title)?.level
    const [above, below] = [rungOf(facts['above']), rungOf(facts['below'])]
    return above && below && [above, below]
  },
}

const betweenOf = (finding: Finding): Between | undefined => {
  const between = measuredBetween[finding.rule]
  return typeof between === 'function' ? between(finding) : between
}

/** Of levels of one kind, such as the inverts of two drains, the one that belongs to what was found. */
const levelIn = (levels: readonly Level[], kind: LevelKind, parts: Finding['parts']): Level | undefined => {
  const all = levels.filter((level) => level.kind === kind)
  // A branch is told before the line that it joins: the invert that is meant is the line's.
  const [first, second] = parts
  const wanted = kind === 'invert' ? second : undefined
  return (
    all.find(({ part }) => part !== undefined && part === (wanted ?? first)) ??
    all.find(({ part }) => part !== undefined && parts.includes(part)) ??
    all[0]
  )
}

/** The gaps of a stack that are too small, as the checks found them: nothing is judged here. */
export const shortGaps = ({ bay }: Evaluation, { parts, levels }: Stack): ShortGap[] =>
  findingsOf(bay).flatMap((finding) => {
    const between = betweenOf(finding)
    if (!between || rankOf(finding) === 0 || !finding.parts.every((part) => parts.includes(part))) return []
    const [from, to] = between.map((kind) => levelIn(levels, kind, finding.parts))
    return from && to ? [{ from, to, finding }] : []
  })
