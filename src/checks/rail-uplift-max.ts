import type { Finding } from '../model/finding'
import type { FrameRule, Words } from './context'
import { quantityWords } from './measuredWords'
import { loadWords, overScreens, worstOf } from './strengthRule'

const RULE = 'rail-uplift-max'

/** A bar lies on its rails, a rail in holes of its risers, or on straps from a house that hold nothing down. */
const clauseOf = ({ facts, limit }: Finding, lifts: string, words: Words): string => {
  if (facts['mark'] === 'HB')
    return `A hanger bar of ${words.name(String(facts['part']))} lifts off one rail with ${lifts} and tips over the other`
  if (limit.value > 0)
    return `A rail of ${words.name(String(facts['part']))} lifts a riser with ${lifts}, and the frame may be lifted with ${quantityWords(limit, words)}`
  return `A rail of ${words.name(String(facts['part']))} lifts off a strap with ${lifts}, and nothing holds it down there`
}

/** Where a rail is loaded on one span only it lifts off others: its holes hold it, and the weight of the frame holds those. */
export const railUpliftMax: FrameRule = {
  over: 'frame',
  id: RULE,
  title: 'Rails and bars stay down',
  limit: 'A rail lifts its risers with no more than the frame weighs there over 1.5; a bar lifts off no rail',
  source:
    'Geometry and statics of a continuous beam; 1.5 after International Building Code 1807.2.3, for retaining walls, borrowed',
  mending:
    'Anchor the risers, or tie them with runners along the row; harvest both sides of a bar, or strap it down.',
  check: overScreens(
    RULE,
    ({ strength }) => worstOf(strength, ['rail-uplift']),
    ({ mark }, { built }) => ({ facts: { mark, part: built.part } }),
  ),
  say: (finding, words) => {
    const { measured } = finding
    const lifts = quantityWords({ ...measured, value: Math.abs(measured.value) }, words)
    return `${clauseOf(finding, lifts, words)}, ${loadWords(finding)}.`
  },
}
