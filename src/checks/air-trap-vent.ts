import type { Built } from '../model/built'
import type { Finding } from '../model/finding'
import type { Bay, BayRule } from './context'
import { found, lengthOf, levelOf, term } from './found'
import { type AirTrap, lateralTraps } from './lateralAir'
import { humpOf } from './mainHump'

const RULE = 'air-trap-vent'

const ofMain = (built: Built, bay: Bay): Finding[] => {
  const hump = humpOf(built, bay)
  return hump
    ? [
        found({
          rule: RULE,
          subject: 'flow',
          state: 'Drifting',
          parts: [built.part],
          at: { x: hump.at.x, y: hump.at.y },
          measured: lengthOf(hump.riseMm),
          limit: lengthOf(hump.mayMm),
          facts: { how: 'hump' },
          terms: [term('Level of the high place', levelOf(hump.at.z))],
        }),
      ]
    : []
}

const ofRow = (built: Built, { how, at, byMm, mayMm, mend }: AirTrap): Finding =>
  found({
    rule: RULE,
    subject: 'flow',
    state: 'Drifting',
    parts: [built.part],
    detail: how,
    at,
    measured: lengthOf(byMm),
    limit: lengthOf(mayMm),
    facts: { how },
    ...(mend && { mend }),
  })

const findingsOf = (built: Built, bay: Bay): Finding[] => [
  ...ofMain(built, bay),
  ...lateralTraps(built, bay.levels).map((trap) => ofRow(built, trap)),
]

type How = AirTrap['how'] | 'hump'

const SAYS: Readonly<Record<How, (name: string, by: string, may: string) => string>> = {
  hump: (name, by, may) =>
    `${name} rises ${by} and comes down again: more than ${may} holds air. Vent it at its high place by a standpipe or an air valve.`,
  'no-sight-tube': (name) =>
    `No end of a lateral of ${name} has a sight tube: nothing lets the air out when it fills, nor in when it empties.`,
  falls: (name, by, may) =>
    `A lateral of ${name} lies ${by} higher than its sight tube: more than ${may} holds air where no vent stands.`,
  sags: (name, by, may) =>
    `The laterals of ${name} sag ${by} between ties: more than ${may} holds air at each tie.`,
  droops: (name, by, may) =>
    `The spare length of the tubes of ${name} can hang ${by} below their barbs and rise again: more than ${may} traps air, and takes from the flow.`,
}

const isHow = (how: string): how is How => how in SAYS

/** Air has a way out, up and out, from every place in mains, laterals and tubes. */
export const airTrapVent: BayRule = {
  over: 'bay',
  id: RULE,
  title: 'Air that stands in pipes',
  limit:
    'No high place without a vent: mains by their bore, laterals by half of theirs, tubes 2 in below their barb',
  source:
    'Pipeline practice of air valves at inlet, high points and line end (NRCS Washington Engineering Technical Note 16, from memory); the tolerances are common practice, no source',
  mending: 'Lay the pipe level or rising to a sight tube, or stand a vent at its high place.',
  check: (bay) => bay.built.flatMap((built) => findingsOf(built, bay)),
  say: ({ parts, measured, limit, facts }, { onTape, name }) => {
    const how = String(facts['how'])
    const says = SAYS[isHow(how) ? how : 'hump']
    return says(name(parts[0] ?? ''), onTape(measured.value), onTape(limit.value))
  },
}
