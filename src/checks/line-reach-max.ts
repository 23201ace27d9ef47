import type { Finding } from '../model/finding'
import type { Built } from '../model/built'
import type { RackFacts } from '../model/rackFacts'
import type { Bay, BayRule } from './context'
import { CLOSE_MM, found, lengthOf, term } from './found'
import { isWorked } from './rackSides'
import { rowPlace } from './rowPlace'

const RULE = 'line-reach-max'

const reachOf = (distanceMm: number, isOpen: boolean): number => (isOpen ? distanceMm : Infinity)

/** How far each line is from the nearer side where a person can stand, mm; Infinity where both are shut. */
const reachesOf = (
  { lineReachMm }: RackFacts,
  widthMm: number,
  isLeftOpen: boolean,
  isRightOpen: boolean,
): number[] =>
  lineReachMm.map((leftMm) => Math.min(reachOf(leftMm, isLeftOpen), reachOf(widthMm - leftMm, isRightOpen)))

const findingsOf = ({ part, rack }: Built, bay: Bay): Finding[] => {
  if (!rack) return []
  const isLeftOpen = isWorked(part, rack.leftFace, bay)
  const isRightOpen = isWorked(part, rack.rightFace, bay)
  const widthMm = Math.max(...rack.lineReachMm) + Math.min(...rack.lineReachMm)
  const reaches = reachesOf(rack, widthMm, isLeftOpen, isRightOpen)
  const furthest = Math.max(...reaches)
  if (furthest <= bay.settings.reachMm + CLOSE_MM) return []
  const isShut = !isLeftOpen && !isRightOpen
  const measured = lengthOf(isShut ? widthMm : furthest)
  return [
    found({
      rule: RULE,
      subject: 'fit',
      state: isShut ? 'Clash' : 'Tight',
      parts: [part],
      at: rowPlace(rack),
      measured,
      limit: lengthOf(bay.settings.reachMm),
      facts: { line: reaches.indexOf(furthest) + 1, shut: isShut ? 'both' : '' },
      terms: [
        term(
          isShut ? 'Leaf to leaf across the row' : 'Furthest line from a side where a person can stand',
          measured,
        ),
      ],
    }),
  ]
}

/** Every line must be in arm's reach from a side where a person can stand. */
export const lineReachMax: BayRule = {
  over: 'bay',
  id: RULE,
  title: 'Reach to each line',
  limit: 'At most 30 in from an aisle to a line of towers',
  source:
    'Common practice; compare forward grip reach 25.8 in (5th percentile woman) to 33.3 in (95th percentile man), Pheasant, Bodyspace, 1996',
  mending: 'Open an aisle on the other side, or take a line out of the row.',
  check: (bay) => bay.built.flatMap((built) => findingsOf(built, bay)),
  say: ({ parts, measured, limit, facts }, { onTape, name }) =>
    facts['shut'] === 'both'
      ? `${name(parts[0] ?? '')} can be worked from neither side: nobody can stand along it.`
      : `Line ${facts['line']} of ${name(parts[0] ?? '')} is ${onTape(measured.value)} from where a person can stand; an arm reaches ${onTape(limit.value)}.`,
}
