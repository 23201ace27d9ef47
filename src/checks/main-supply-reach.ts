import type { Point } from '../geometry/point'
import { boxOf, middle } from '../geometry/box'
import { distance, type Place } from '../geometry/point'
import type { Built } from '../model/built'
import type { Finding, Mend } from '../model/finding'
import type { PartId } from '../model/ids'
import type { Bay, BayRule } from './context'
import { found, inFeet } from './found'
import { mainPath, nearestSupply, runTo } from './supplyWays'
import { allSystems, type WaterSystem } from './waterSystems'

const RULE = 'main-supply-reach'

interface End {
  readonly at: Place
  readonly supply: Place
}

const endsOf = ({ mouths }: Built): Place[] =>
  mouths.filter(({ role }) => role === 'main-end').map(({ at }) => at)

/** The end of a system's mains that is nearest to a pump, with that pump. */
const nearestEnd = (mains: readonly Built[], bay: Bay): End | undefined =>
  mains
    .flatMap(endsOf)
    .flatMap((at): End[] => {
      const supply = nearestSupply(at, bay)
      return supply ? [{ at, supply }] : []
    })
    .sort((a, b) => distance(a.at, a.supply) - distance(b.at, b.supply))[0]

/** A main from the pump to that end, as high over the floor as the end is, so that the two meet. */
const layMain = ({ at, supply }: End, { site }: Bay): Mend | undefined => {
  const heightMm = at.z - site.groundAt(at.x, at.y)
  const points = runTo(supply, at).map((point) => ({ ...point, heightMm }))
  return points.length > 1 ? { kind: 'lay', what: 'main', points } : undefined
}

const middleOf = (path: readonly Place[]): Point => middle(boxOf(path))

const findingOf = (mains: readonly Built[], rows: readonly PartId[], bay: Bay): Finding[] => {
  const [first] = mains
  const path = first && mainPath(first)
  if (!first || !path) return []
  const end = nearestEnd(mains, bay)
  const mend = end && layMain(end, bay)
  return [
    found({
      rule: RULE,
      subject: 'flow',
      state: 'Starved',
      parts: mains.map(({ part }) => part),
      at: middleOf(path),
      measured: inFeet(end ? distance(end.at, end.supply) : 0),
      limit: inFeet(bay.settings.mainReachMm),
      facts: { none: end ? '' : 'none', rows: rows.length },
      ...(mend && { mend }),
    }),
  ]
}

const isDrySystem = ({ supplies }: WaterSystem): boolean => supplies.length === 0

const ofSystem = ({ parts }: WaterSystem, bay: Bay): Finding[] => {
  const built = bay.built.filter(({ part }) => parts.has(part))
  const rows = built.filter(({ feed }) => feed !== undefined).map(({ part }) => part)
  const mains = built.filter((each) => mainPath(each) !== undefined)
  return rows.length > 0 ? findingOf(mains, rows, bay) : []
}

/** A main that feeds rows begins at a pump or a head box, or at another main that does. */
export const mainSupplyReach: BayRule = {
  over: 'bay',
  id: RULE,
  title: 'Pump at each main',
  limit:
    'A pump or a head box within 10 ft of a main that rows take their water from, or of one joined to it',
  source: 'Common practice, no source',
  mending: 'Lay a main from the pump to its end.',
  check: (bay) =>
    allSystems(bay)
      .filter(isDrySystem)
      .flatMap((system) => ofSystem(system, bay)),
  say: ({ parts, measured, facts }, { length, name }) => {
    const stay = facts['rows'] === 1 ? '1 row stays' : `${facts['rows']} rows stay`
    const dry = `${name(parts[0] ?? '')} meets neither a pump nor a head box, so that ${stay} dry`
    return facts['none'] === 'none' ? `${dry}.` : `${dry}; the nearest is ${length(measured.value)} off.`
  },
}
