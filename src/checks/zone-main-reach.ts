import { distance } from '../geometry/point'
import type { Finding, Mend } from '../model/finding'
import type { Join } from '../model/levels'
import type { Bay, BayRule } from './context'
import { CLOSE_MM, found, inFeet, term } from './found'
import { mainPath, nearestMain, nearestSupply, runTo } from './supplyWays'

const RULE = 'zone-main-reach'

const layMain = (join: Join, bay: Bay): Mend | undefined => {
  const pump = nearestSupply(join.at, bay)
  return pump && distance(pump, join.at) >= 1
    ? { kind: 'lay', what: 'main', points: runTo(pump, join.at) }
    : undefined
}

/** What the builder chose to take the water from, where that is there and gives any. */
const chosenOf = ({ from, kind }: Join, { builtOf }: Bay): string | undefined => {
  const chosen = builtOf.get(from)?.feed?.waterFrom
  const giver = chosen === undefined ? undefined : builtOf.get(chosen)
  const gives = kind === 'zone-to-main' ? giver && mainPath(giver) : giver?.feed?.valves
  return gives ? chosen : undefined
}

const isInReach = (join: Join, bay: Bay, except?: string): boolean =>
  (nearestMain(join.at, bay, except)?.gapMm ?? Infinity) <= bay.settings.mainReachMm + CLOSE_MM

/** Another main in reach mends a choice that is not; valves of its own mend a row with no valve to stand behind. */
const mendFor = (join: Join, chosen: string | undefined, bay: Bay): Mend | undefined => {
  const part = join.from
  if (join.kind === 'zone-to-zone')
    return isInReach(join, bay) ? { kind: 'set', part, field: 'valveSet', value: 'own' } : undefined
  if (chosen === undefined) return layMain(join, bay)
  return isInReach(join, bay, chosen) ? { kind: 'set', part, field: 'waterFrom', value: null } : undefined
}

const findingOf = (join: Join, bay: Bay): Finding => {
  const isAny = Number.isFinite(join.gapMm)
  // A choice that is in reach is joined; one that is gone counts as none.
  const chosen = isAny ? chosenOf(join, bay) : undefined
  const mend = mendFor(join, chosen, bay)
  return found({
    rule: RULE,
    subject: 'flow',
    state: 'Starved',
    parts: chosen === undefined ? [join.from] : [join.from, chosen],
    at: join.at,
    measured: inFeet(isAny ? join.gapMm : 0),
    limit: inFeet(bay.settings.mainReachMm),
    facts: { none: isAny ? '' : 'none', from: join.kind },
    terms: [term('Furthest that a row’s riser pipe runs to a main', inFeet(bay.settings.mainReachMm))],
    ...(mend && { mend }),
  })
}

/** Every row takes its water from a main in reach, or from behind another row's valve. */
export const zoneMainReach: BayRule = {
  over: 'bay',
  id: RULE,
  title: 'Main in reach of each row',
  limit:
    'A main, or another row’s valve, within 10 ft of where water enters the row; editable in the bay’s settings',
  source: 'Common practice, no source',
  mending: 'Lay a main from the pump to the row, or let the water enter at its other end.',
  check: (bay) =>
    bay.joins
      .filter(({ kind, to }) => (kind === 'zone-to-main' || kind === 'zone-to-zone') && to === undefined)
      .map((join) => findingOf(join, bay)),
  say: ({ parts, measured, limit, facts }, { length, name }) => {
    const [row = '', chosen] = parts
    const isBehind = facts['from'] === 'zone-to-zone'
    const isNone = facts['none'] === 'none'
    if (isNone)
      return `${name(row)} has no ${isBehind ? 'other row’s valve' : 'main'} to take its water from.`
    const what = isBehind ? 'The nearest other row’s valve' : 'The nearest main'
    const which = chosen === undefined ? what : `${name(chosen)}, which was chosen,`
    return `${which} is ${length(measured.value)} from where water enters ${name(row)}; ${length(limit.value)} is in reach.`
  },
}
