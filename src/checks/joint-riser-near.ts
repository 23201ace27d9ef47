import type { FrameRule } from './context'
import { quantityWords } from './measuredWords'
import { loadWords, overScreens, worstOf } from './strengthRule'

const RULE = 'joint-riser-near'

/** A slip joint carries no bending until it has kinked: between two risers it is a hinge, and what hangs there drops. */
export const jointRiserNear: FrameRule = {
  over: 'frame',
  id: RULE,
  title: 'Rail joint over a riser',
  limit: 'Every slip joint of a rail over a riser, or within a few inches of one',
  source: 'Geometry: the play of one conduit in the other lets the joint kink; common practice, no source',
  mending: 'Join the rails in a sleeve over a shared riser, or stand a riser pair under the joint.',
  check: overScreens(RULE, ({ strength }) => worstOf(strength, ['rail-joint'])),
  say: (finding, words) => {
    const { parts, measured, limit } = finding
    const name = words.name(parts[0] ?? '')
    const [is, allowed] = [quantityWords(measured, words), quantityWords(limit, words)]
    return measured.unit === 'mm'
      ? `A rail joint of ${name} lies ${is} from the nearest riser, ${allowed} is allowed: a slip joint is a hinge and bears no bending.`
      : `A rail joint of ${name} takes ${is} ${loadWords(finding)}, ${allowed} is allowed: a slip joint is a hinge and bears no bending.`
  },
}
