import type { Built } from '../model/built'
import type { Finding } from '../model/finding'
import { DRAIN_BACK_UNDER_OVERFLOW_MM, type PitFacts, type PitLevel } from '../model/pitFacts'
import type { PartRule } from './context'
import { CLOSE_MM, found, inFeet, lengthOf, stateFor, term } from './found'

const RULE = 'pit-level-order'

/** A level of a pit, its name in words, and how far the next one must stand under it, mm. */
interface Rung {
  readonly level: PitLevel
  readonly title: string
  readonly nextUnderMm: number
}

/** From the top down. */
const RUNGS: readonly Rung[] = [
  { level: 'rimMm', title: 'rim', nextUnderMm: 0 },
  { level: 'overflowMm', title: 'overflow', nextUnderMm: DRAIN_BACK_UNDER_OVERFLOW_MM },
  { level: 'drainBackMm', title: 'drain-back level', nextUnderMm: 0 },
  { level: 'runningMm', title: 'running level', nextUnderMm: 0 },
  { level: 'makeUpMm', title: 'level at which make-up opens', nextUnderMm: 0 },
  { level: 'lowAlarmMm', title: 'low alarm', nextUnderMm: 0 },
  { level: 'pumpOffMm', title: 'pump-off level', nextUnderMm: 0 },
  { level: 'intakeMm', title: 'pump intake', nextUnderMm: 0 },
  { level: 'bottomMm', title: 'bottom', nextUnderMm: 0 },
]

const stepOf = ({ part, mouths }: Built, pit: PitFacts, above: Rung, below: Rung | undefined): Finding[] => {
  const inlet = mouths.find(({ role }) => role === 'pit-inlet')
  if (!below || !inlet) return []
  const underMm = pit[above.level] - pit[below.level]
  if (underMm >= above.nextUnderMm - CLOSE_MM) return []
  return [
    found({
      rule: RULE,
      subject: 'drain',
      state: stateFor('drain', underMm, above.nextUnderMm, 0),
      parts: [part],
      detail: below.level,
      at: { x: inlet.at.x, y: inlet.at.y },
      measured: lengthOf(underMm),
      limit: lengthOf(above.nextUnderMm),
      facts: { above: above.title, below: below.title },
      terms: [above, below].map(({ title, level }) => term(`The ${title}`, inFeet(pit[level]))),
    }),
  ]
}

/** From the rim to the bottom each level of a pit stands under the one before it. */
export const pitLevelOrder: PartRule = {
  over: 'part',
  id: RULE,
  title: 'Levels of a pit',
  limit:
    'Rim, overflow, drain-back 1 in lower, running, make-up, low alarm, pump off, pump intake, bottom: each under the last',
  source: 'Geometry; 1 in under the overflow is common practice, no source',
  mending: 'Set the lower of the two levels lower.',
  check: (built) => {
    const { pit } = built
    return pit ? RUNGS.flatMap((above, index) => stepOf(built, pit, above, RUNGS[index + 1])) : []
  },
  say: ({ parts, measured, limit, facts }, { onTape, name }) => {
    const isUnder = measured.value >= 0
    const where = `${onTape(Math.abs(measured.value))} ${isUnder ? 'under' : 'over'} its ${facts['above']}`
    const wants = limit.value > 0 ? `it wants ${onTape(limit.value)} under it` : 'it belongs under it'
    return `The ${facts['below']} of ${name(parts[0] ?? '')} is ${where}; ${wants}.`
  },
}
