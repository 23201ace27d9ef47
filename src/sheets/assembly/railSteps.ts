import type { Writer } from '../../units/writer'
import type { StepsPiece } from '../piece'
import type { Member } from './members'
import type { RackBuilt } from './rowBuilt'

export type Step = StepsPiece['steps'][number]

/** Words of caution that stand beside a step, by the hazard's key; undefined where the plan does not have it. */
export type Mind = (hazard: string) => string | undefined

/** A rack whose rails and bars go in, whatever carries them. */
export interface WorkOnRack {
  readonly rack: RackBuilt
  readonly write: Writer
  readonly mind: Mind
  /** What the crew measures from along the rack, mm from its high line. */
  readonly from: { readonly u: number; readonly words: string }
}

export const stepOf = (key: string, text: string, caution?: string): Step =>
  caution === undefined ? { key, text } : { key, text, caution }

export const marked = ({ members }: RackBuilt, ...marks: readonly string[]): readonly Member[] =>
  members.filter(({ stick }) => marks.includes(stick.mark))

/** How far a rail runs past the line between its rack and the next, or the one before, mm. */
const pastLine = ({ isLowEnd, rackMm }: RackBuilt, rail: Member): number =>
  isLowEnd ? -rail.from.u : rail.to.u - rackMm

const SCREWS = 'Two self-drilling screws a joint, from underneath, before any gutter hangs.'

/** How the rails of a rack meet those of the next. */
const chainWords = ({ rack, write }: WorkOnRack): string => {
  const [rail] = marked(rack, 'RL', 'RL-b')
  if (!rail || (rack.isHighEnd && rack.isLowEnd)) return ''
  const { joint, railJoint, carriedBy } = rack.facts
  const holder = carriedBy === 'house' ? 'strap' : 'riser'
  const shared = `shared ${holder}s`
  const into = write.onTape(railJoint?.insertionMm ?? 0)
  switch (joint) {
    case 'J1':
      return ` Slide SV home in the ${shared}; each rail goes ${into} into it from its side. ${SCREWS}`
    case 'J2':
      return ` Push SV wholly on to one rail, bring the next rack up, and slide it home in the gap between them, ${into} over each rail. ${SCREWS} With these out${rack.runners.length > 0 ? ', and the splices of the runners off,' : ''} the racks come apart.`
    case 'J3':
      return ` The small rail goes ${into} into the big one, which runs through the ${shared}. ${SCREWS}`
    case 'J4':
      return ` Wind shim tape on DW until it binds, and push it ${into} into each rail: they meet in the ${shared}. ${SCREWS} This is how a broken rail is mended, not how a rack is built.`
    case 'J5':
      return ` The rails pass each other in the ${shared}, side by side, lapped by ${write.onTape(2 * pastLine(rack, rail))}. A clamp around both on either side of the ${holder}; cap all ends.`
  }
}

export const slideRails = (work: WorkOnRack): Step => {
  const { rack, write, mind, from } = work
  const [rail] = marked(rack, 'RL', 'RL-b')
  const start =
    rail && rack.isHighEnd
      ? ` The rail stands ${write.onTape(from.u - rail.from.u)} past ${from.words}: stop it there, and cap it.`
      : ''
  const when =
    rack.facts.carriedBy === 'house'
      ? 'Lay the rails in their straps.'
      : 'Slide the rails through before any brace is on.'
  return stepOf(
    'chain',
    `Deburr all conduit inside and out. ${when}${start}${chainWords(work)}`,
    mind('conduit'),
  )
}

/** Middle of one rail to middle of the other, mm. */
export const railsApart = (rack: RackBuilt): number => {
  const vs = marked(rack, 'RL', 'RL-b').map(({ from }) => from.v)
  return vs.length === 0 ? 0 : Math.max(...vs) - Math.min(...vs)
}

export const hangBars = ({ rack, write, mind, from }: WorkOnRack): Step => {
  const bars = marked(rack, 'HB').toSorted((a, b) => a.from.u - b.from.u)
  const [bar] = bars
  const past = bar ? (bar.stick.lengthMm - railsApart(rack)) / 2 : 0
  const caution = [mind('ladders'), mind('bar-ends')].filter((words) => words !== undefined).join(' ')
  return stepOf(
    'bars',
    `HB, ${bars.length}: the first ${write.onTape((bar?.from.u ?? 0) - from.u)} from ${from.words}, then every ${write.onTape(rack.facts.pitchMm)}, ${write.onTape(past)} past each rail. A stop on either side of both rails, a cap on both ends.`,
    caution === '' ? undefined : caution,
  )
}
