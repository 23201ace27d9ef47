import type { Built } from '../model/built'
import type { Finding } from '../model/finding'
import { DRAIN_BACK_UNDER_OVERFLOW_MM, type PitFacts } from '../model/pitFacts'
import type { PitReturn, Transit } from '../model/returns'
import type { Bay, BayRule } from './context'
import { found, levelOf, term, volumeOf } from './found'
import { sizeMend } from './pitAsks'

const RULE = 'pit-transit-room'

/** What comes home, by where it stands while the pumps run. */
const PARTS: readonly (readonly [string, Exclude<keyof Transit, 'totalL'>])[] = [
  ['Towers let go of', 'towersL'],
  ['Troughs hold', 'troughsL'],
  ['Drains hold', 'drainsL'],
  ['Mains and the pipes to them hold', 'mainsL'],
  ['Riser pipes, laterals and tubes hold', 'lateralsL'],
]

const findingOf = (bay: Bay, { part, mouths }: Built, pit: PitFacts, home: PitReturn): Finding[] => {
  const inlet = mouths.find(({ role }) => role === 'pit-inlet')
  if (!inlet || home.state === 'Holds') return []
  const { transit, designL, roomL, state } = home
  const mend = sizeMend(bay, part)
  return [
    found({
      rule: RULE,
      subject: 'pit',
      state,
      parts: [part],
      at: { x: inlet.at.x, y: inlet.at.y },
      measured: volumeOf(roomL),
      limit: volumeOf(designL),
      facts: { home: transit.totalL },
      terms: [
        ...PARTS.map(([name, key]) => term(name, volumeOf(transit[key]))),
        term('The running level', levelOf(pit.runningMm)),
        term('The overflow', levelOf(pit.overflowMm)),
      ],
      ...(mend && { mend }),
    }),
  ]
}

/** Over its running level a pit has room for what comes home when its pumps stop, and a quarter more. */
export const pitTransitRoom: BayRule = {
  over: 'bay',
  id: RULE,
  title: 'Room in a pit when the pump stops',
  limit:
    'From running to 1 in under the overflow: 1.25 times what comes home. Thin where at least all of it stays under the overflow',
  source:
    'Common practice, no source; what towers let go of is a setting, troughs are reckoned as deep throughout as at their outlets, drains at least a quarter full',
  mending:
    'Let the pit run lower, dig it deeper or wider, or give its pump a check valve, so that the mains stay full.',
  check: (bay) =>
    bay.built.flatMap((built) => {
      const home = bay.returns.pits.get(built.part)
      return built.pit && home ? findingOf(bay, built, built.pit, home) : []
    }),
  say: ({ parts, state, measured, limit, facts }, { volume, onTape, name }) => {
    const home = volume(Number(facts['home']))
    const then = state === 'Spills' ? ': it spills' : ''
    return `${home} come home to ${name(parts[0] ?? '')} when its pumps stop, with a quarter more ${volume(limit.value)}; between its running level and ${onTape(DRAIN_BACK_UNDER_OVERFLOW_MM)} under its overflow there is room for ${volume(Math.max(measured.value, 0))}${then}.`
  },
}
