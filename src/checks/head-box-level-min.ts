import type { Built } from '../model/built'
import type { Finding } from '../model/finding'
import { siteLevel } from '../model/levels'
import type { HeadBoxFacts } from '../model/supplyFacts'
import { inches } from '../units/length'
import type { Bay, BayRule } from './context'
import { CLOSE_MM, found, lengthOf, levelOf, term } from './found'
import { systemOf } from './waterSystems'

const RULE = 'head-box-level-min'

/** Ten to fourteen inches of head drive a lateral and its tubes. Common practice, no source. */
const OVER_LATERALS_MM = inches(10)

/** Level at which the water comes into the highest lateral of a row. */
const lateralLevels = (built: Built, { levels }: Bay): number[] =>
  (built.feed?.laterals ?? []).flatMap(({ fedAt }) =>
    fedAt.flatMap((index) => {
      const joint = built.feed?.joints[index]
      return joint ? [siteLevel(levels, built, joint)] : []
    }),
  )

const findingOf = (part: string, { at, waterMm }: HeadBoxFacts, bay: Bay): Finding[] => {
  const parts = systemOf(bay, part)?.parts
  const rows = bay.built.filter((built) => built.feed && parts?.has(built.part))
  const levels = rows.flatMap((built) => lateralLevels(built, bay))
  if (levels.length === 0) return []
  const lateralMm = Math.max(...levels)
  const overMm = waterMm - lateralMm
  if (overMm >= OVER_LATERALS_MM - CLOSE_MM) return []
  const value = lateralMm + OVER_LATERALS_MM - bay.site.groundAt(at.x, at.y)
  return [
    found({
      rule: RULE,
      subject: 'flow',
      state: overMm > 0 ? 'Drifting' : 'Starved',
      parts: [part],
      at: { x: at.x, y: at.y },
      measured: lengthOf(overMm),
      limit: lengthOf(OVER_LATERALS_MM),
      terms: [term('Water in the box', levelOf(waterMm)), term('Highest lateral', levelOf(lateralMm))],
      mend: { kind: 'set', part, field: 'waterAboveFloorMm', value },
    }),
  ]
}

/** A head box stands high enough over the laterals that it feeds. */
export const headBoxLevelMin: BayRule = {
  over: 'bay',
  id: RULE,
  title: 'Height of a head box',
  limit:
    'Its water stands 10 in or more over the highest lateral that it feeds; over 14 in is burnt in valves',
  source: 'Common practice, no source',
  mending: 'Set the box higher.',
  check: (bay) => bay.built.flatMap(({ part, headBox }) => (headBox ? findingOf(part, headBox, bay) : [])),
  say: ({ parts, measured, limit }, { onTape, name }) => {
    const where = measured.value >= 0 ? `${onTape(measured.value)} over` : `${onTape(-measured.value)} under`
    return `The water of ${name(parts[0] ?? '')} stands ${where} the highest lateral that it feeds; it wants ${onTape(limit.value)} over it.`
  },
}
