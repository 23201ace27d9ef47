import { stature, STEP_MM } from '../catalogue/stature'
import type { Built } from '../model/built'
import type { Finding } from '../model/finding'
import type { Bay, BayRule } from './context'
import { CLOSE_MM, found, lengthOf, term } from './found'
import { rowPlace } from './rowPlace'

const RULE = 'tower-step-max'

/** A small woman on a step platform grips a bar so high; a tall man, so high. */
const EVERYBODY_MM = stature.gripUp.woman5Mm + STEP_MM
const ANYBODY_MM = stature.gripUp.man95Mm + STEP_MM

const findingsOf = ({ part, rack }: Built, { levels }: Bay): Finding[] => {
  if (!rack || rack.towers === 0) return []
  const shimMm = (levels.feet.get(part) ?? []).reduce((most, foot) => Math.max(most, foot.shimMm), 0)
  const heightMm = rack.barTopMm + shimMm
  if (heightMm <= EVERYBODY_MM + CLOSE_MM) return []
  return [
    found({
      rule: RULE,
      subject: 'fit',
      state: heightMm > ANYBODY_MM + CLOSE_MM ? 'Clash' : 'Tight',
      parts: [part],
      at: rowPlace(rack),
      measured: lengthOf(heightMm),
      limit: lengthOf(EVERYBODY_MM),
      terms: [
        term('Bars over the rack datum', lengthOf(rack.barTopMm)),
        term('Floor under the datum, where it is lowest', lengthOf(shimMm)),
        term('Grip reach upward, 5th percentile woman', lengthOf(stature.gripUp.woman5Mm)),
        term('Step platform', lengthOf(STEP_MM)),
      ],
    }),
  ]
}

/** Over 66 in towers are hung from a step platform, which the papers say; over this, one step is not enough. */
export const towerStepMax: BayRule = {
  over: 'bay',
  id: RULE,
  title: 'Bars in reach from a step',
  limit:
    'At most 81.1 in from the floor to the bars: a small woman grips 71.1 in high, and stands on a 10 in step',
  source:
    'Grip reach upward, 5th percentile woman: Pheasant, Bodyspace, 1996; the step is common practice, no source',
  mending:
    'Take shorter towers, let the bars down, or lay a platform along the row that is wide enough to work from.',
  isOfRacks: true,
  check: (bay) => bay.built.flatMap((built) => findingsOf(built, bay)),
  say: ({ parts, measured, limit }, { onTape, name }) =>
    `The bars of ${name(parts[0] ?? '')} are ${onTape(measured.value)} over the floor where it is lowest; from a step platform everybody grips ${onTape(limit.value)}.`,
}
