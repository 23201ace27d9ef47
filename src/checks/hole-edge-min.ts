import type { FrameRule } from './context'
import { quantityWords } from './measuredWords'
import { overScreens, worstOf } from './strengthRule'

const RULE = 'hole-edge-min'

/** Wood splits out between a hole and its edge or end long before it is crushed. */
export const holeEdgeMin: FrameRule = {
  over: 'frame',
  id: RULE,
  title: 'Hole in its riser',
  limit: 'From the middle of a hole 1.5 conduits to the edge, 4 to the end, at the very least 2',
  source: 'NDS 12.5.1, National Design Specification, the wood Code: 1.5 D and 4 D, the end from memory',
  mending: 'Drill in the middle of the wide face with the bit for the conduit, and leave more riser over it.',
  check: overScreens(RULE, ({ strength }) => worstOf(strength, ['hole-edge', 'hole-end'])),
  say: ({ parts, measured, limit, facts }, words) => {
    const from = facts['screen'] === 'hole-end' ? 'top' : 'edge'
    return `A hole in a riser of ${words.name(parts[0] ?? '')} has its middle ${quantityWords(measured, words)} from the ${from}; ${quantityWords(limit, words)} is asked, or the wood splits out.`
  },
}
