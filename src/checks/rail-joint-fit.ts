import { inches } from '../units/length'
import type { PartRule } from './context'
import { CLOSE_MM, lengthOf, stateFor, term } from './found'
import { overRack } from './rackRule'

const RULE = 'rail-joint-fit'

/** Room all round that a burr and a bow still slide in with. Common practice, no source. */
const ROOM_MM = inches(1 / 64)

/** A rail that does not slide into what takes it makes no joint, however the catalogue has it. */
export const railJointFit: PartRule = {
  over: 'part',
  id: RULE,
  title: 'Rail slides into its joint',
  limit: '1/64 in between a rail and the bore of the sleeve or big stick that takes it',
  source: 'Geometry: outside diameter less two walls, less the rail; 1/64 in is common practice, no source',
  mending: 'Slide the two sticks together before you buy; put the measured diameters under Stock.',
  check: overRack(RULE, ({ railJoint }) => {
    if (!railJoint) return undefined
    const { boreMm, insideOdMm, goesIn } = railJoint
    const roomMm = boreMm - insideOdMm
    if (roomMm >= ROOM_MM - CLOSE_MM) return undefined
    return {
      state: stateFor('fit', roomMm, ROOM_MM, 0),
      measured: lengthOf(roomMm),
      limit: lengthOf(ROOM_MM),
      facts: { boreMm, insideOdMm, goesIn },
      terms: [
        term('Bore of the conduit that takes it', lengthOf(boreMm)),
        term(`Outside of the ${goesIn}`, lengthOf(insideOdMm)),
      ],
    }
  }),
  say: ({ parts, measured, facts }, { bore, name }) => {
    const rail = `A ${facts['goesIn']} of ${name(parts[0] ?? '')}, ${bore(Number(facts['insideOdMm']))} outside,`
    const taken = `the bore of ${bore(Number(facts['boreMm']))} that takes it`
    return measured.value >= 0 ? `${rail} binds in ${taken}.` : `${rail} does not go into ${taken}.`
  },
}
