import { boxOf, middle } from '../geometry/box'
import type { Finding } from '../model/finding'
import type { Bay, BayRule } from './context'
import { CLOSE_MM, found, inFeet, lengthOf, term } from './found'
import { type RunTravel, travelsOf } from './runTravel'

const RULE = 'plastic-travel-max'

const findingOf = ({ part, what, lengthMm, travelMm, at }: RunTravel, bay: Bay): Finding[] => {
  const bodies = bay.builtOf.get(part)?.bodies ?? []
  if (!at || bodies.length === 0 || at.travelMm <= at.roomMm + CLOSE_MM) return []
  return [
    found({
      rule: RULE,
      subject: 'fit',
      state: 'Tight',
      parts: [part],
      at: middle(boxOf(bodies.flatMap(({ outline }) => outline))),
      measured: lengthOf(at.travelMm),
      limit: lengthOf(Math.max(0, at.roomMm)),
      facts: { what, swingC: bay.settings.swingC },
      terms: [term('Run', inFeet(lengthMm)), term('It moves at its far end', lengthOf(travelMm))],
      detail: what,
    }),
  ]
}

/** Plastic grows by what the air swings: gutters into their joiners, laterals away from the towers that their tubes go to. */
export const plasticTravelMax: BayRule = {
  over: 'bay',
  id: RULE,
  title: 'Room for plastic to grow',
  limit:
    'What a section of gutter grows goes into its joiner; what a lateral grows, its microtubes have to spare',
  source:
    'Geometry with published growth of PVC (Bliesner, 1987) and polyethylene (Plastics Pipe Institute); 1/4 in at a joiner and the swing of the air are common practice, no source',
  mending:
    'Hold it at one point and give it slots elsewhere, leave more at the joiners, feed the lateral in its middle, or take longer tubes.',
  isOfRacks: true,
  check: (bay) => travelsOf(bay).flatMap((travel) => findingOf(travel, bay)),
  say: ({ parts, measured, limit, facts }, { name, onTape, warming }) => {
    const swing = warming(Number(facts['swingC']))
    return facts['what'] === 'gutter'
      ? `Where the air swings by ${swing}, each section of gutter in ${name(parts[0] ?? '')} grows ${onTape(measured.value)}; its joiners have ${onTape(limit.value)}.`
      : `Where the air swings by ${swing}, the laterals of ${name(parts[0] ?? '')} move ${onTape(measured.value)} at their far end; the tightest microtube has ${onTape(limit.value)} to spare.`
  },
}
