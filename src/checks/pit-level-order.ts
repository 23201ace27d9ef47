import type { Built } from '../model/built'
import type { Finding } from '../model/finding'
import { PIT_RUNGS, type PitFacts, type PitRung } from '../model/pitFacts'
import type { PartRule } from './context'
import { CLOSE_MM, found, lengthOf, levelOf, stateFor, term } from './found'

const RULE = 'pit-level-order'

const stepOf = (
  { part, mouths }: Built,
  pit: PitFacts,
  above: PitRung,
  below: PitRung | undefined,
): Finding[] => {
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
      terms: [above, below].map(({ title, level }) => term(`The ${title}`, levelOf(pit[level]))),
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
    return pit ? PIT_RUNGS.flatMap((above, index) => stepOf(built, pit, above, PIT_RUNGS[index + 1])) : []
  },
  say: ({ parts, measured, limit, facts }, { onTape, name }) => {
    const isUnder = measured.value >= 0
    const where = `${onTape(Math.abs(measured.value))} ${isUnder ? 'under' : 'over'} its ${facts['above']}`
    const wants = limit.value > 0 ? `it wants ${onTape(limit.value)} under it` : 'it belongs under it'
    return `The ${facts['below']} of ${name(parts[0] ?? '')} is ${where}; ${wants}.`
  },
}
