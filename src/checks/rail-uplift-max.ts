import type { FrameRule } from './context'
import { quantityWords } from './measuredWords'
import { loadWords, overScreens, worstOf } from './strengthRule'

const RULE = 'rail-uplift-max'

/** A rail that is loaded on one span only lifts off the far riser: a hole holds it, a notch does not. */
export const railUpliftMax: FrameRule = {
  over: 'frame',
  id: RULE,
  title: 'Rails stay down',
  limit: 'No rail lifts off a riser in any state of load, unless a hole holds it down',
  source: 'Geometry and statics of a continuous beam; common practice, no source',
  mending: 'Let the rails lie in drilled holes, pinned, or strap them down.',
  check: overScreens(RULE, ({ strength }) => worstOf(strength, ['rail-uplift'])),
  say: (finding, words) => {
    const { parts, measured } = finding
    const lifts = quantityWords({ ...measured, value: Math.abs(measured.value) }, words)
    return `A rail of ${words.name(parts[0] ?? '')} lifts off a riser with ${lifts} ${loadWords(finding)}: it wants a hole or a strap that holds it down.`
  },
}
