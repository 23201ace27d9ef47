import { type Place, type Point, distance } from '../geometry/point'
import type { Finding, Mend } from '../model/finding'
import type { Join } from '../model/levels'
import type { Bay, BayRule } from './context'
import { found, inFeet, term } from './found'

const RULE = 'zone-main-reach'

/** From a pump along the house to the row, then across to it; straight where the two lie in line. */
const runTo = (pump: Point, inlet: Point): readonly Point[] => {
  const corner = { x: inlet.x, y: pump.y }
  return [pump, corner, inlet].filter(
    (at, index, all) => index === 0 || distance(at, all[index - 1] ?? at) > 1,
  )
}

const nearestPump = (inlet: Point, { built }: Bay): Place | undefined =>
  built
    .flatMap(({ mouths }) => mouths.filter(({ role }) => role === 'pump').map(({ at }) => at))
    .sort((a, b) => distance(a, inlet) - distance(b, inlet))[0]

const mendFor = (join: Join, bay: Bay): Mend | undefined => {
  const pump = nearestPump(join.at, bay)
  if (!pump || distance(pump, join.at) < 1) return undefined
  const points = runTo({ x: pump.x, y: pump.y }, { x: join.at.x, y: join.at.y })
  return { kind: 'lay', what: 'main', points }
}

const findingOf = (join: Join, bay: Bay): Finding => {
  const isAny = Number.isFinite(join.gapMm)
  const mend = mendFor(join, bay)
  return found({
    rule: RULE,
    subject: 'fit',
    state: 'Tight',
    parts: [join.from],
    at: join.at,
    measured: inFeet(isAny ? join.gapMm : 0),
    limit: inFeet(bay.settings.mainReachMm),
    facts: { none: isAny ? '' : 'none' },
    terms: [term('Furthest that a row’s riser pipe runs to a main', inFeet(bay.settings.mainReachMm))],
    ...(mend && { mend }),
  })
}

/** Every row takes its water from a main in reach. */
export const zoneMainReach: BayRule = {
  over: 'bay',
  id: RULE,
  title: 'Main in reach of each row',
  limit: 'A main within 10 ft of where water enters the row; editable in the bay’s settings',
  source: 'Common practice, no source',
  mending: 'Lay a main from the pump to the row, or let the water enter at its other end.',
  check: (bay) =>
    bay.joins
      .filter((join) => join.kind === 'zone-to-main' && join.to === undefined)
      .map((join) => findingOf(join, bay)),
  say: ({ parts, measured, limit, facts }, { length, name }) =>
    facts['none'] === 'none'
      ? `${name(parts[0] ?? '')} has no main to take its water from.`
      : `The nearest main is ${length(measured.value)} from where water enters ${name(parts[0] ?? '')}; ${length(limit.value)} is in reach.`,
}
