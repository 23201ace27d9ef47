import type { Writer } from '../../units/writer'
import {
  hangBars,
  marked,
  type Mind,
  railsApart,
  slideRails,
  type Step,
  stepOf,
  type WorkOnRack,
} from './railSteps'
import type { RackBuilt } from './rowBuilt'

const LEAVE =
  'The house carries this rack. No strap goes up before whoever made the house has put in writing what may hang from it, and where, with the load test counted in.'

/** What the crew does with a rack that the house carries. Heights are over the rack datum, which is the floor. */
export const houseSteps = (rack: RackBuilt, write: Writer, mind: Mind): readonly Step[] => {
  const bearers = marked(rack, 'GB').toSorted((a, b) => a.from.u - b.from.u)
  const [first] = bearers
  const [rail] = marked(rack, 'RL', 'RL-b')
  if (!first || !rail) return []
  const work: WorkOnRack = { rack, write, mind, from: { u: first.from.u, words: 'the first strap' } }
  const places = bearers.map(({ from }) => write.onTape(from.u)).join(', ')
  const railMm = rail.from.z - rail.stick.heightMm / 2
  return [
    stepOf(
      'straps',
      `Hang two straps, ${write.onTape(railsApart(rack))} apart, at ${places} from the rack’s high line. Their loops for the rails hang ${write.onTape(railMm)} over the floor, all level; below, they reach the bearers.`,
      LEAVE,
    ),
    slideRails(work),
    stepOf(
      'bearers',
      `Screw GB flat into the straps at each place, ${bearers.length} of them, tops ${write.onTape(first.from.z + first.stick.heightMm / 2)} over the floor. The gutters lie on these; what the straps are fixed to, and what keeps the row from swinging, is not in the counts.`,
    ),
    hangBars(work),
  ]
}
