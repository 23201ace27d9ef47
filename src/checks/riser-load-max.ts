import type { Finding } from '../model/finding'
import type { Screen } from '../model/strength'
import type { FrameRule, Words } from './context'
import { quantityWords } from './measuredWords'
import { loadWords, overScreens, type Seen, worstOf } from './strengthRule'

const RULE = 'riser-load-max'

/** What lacks braces is told of by the rule of braces. */
const worstScreen = ({ strength, rack }: Seen): Screen | undefined =>
  worstOf(strength, [
    ...(rack.bracing === 'both' ? (['riser-slenderness', 'riser-column', 'riser-push'] as const) : []),
    'hole-net',
    'hole-bearing',
  ])

/** What a riser does too much of, by its screen. */
const wrong = (finding: Finding, words: Words): string => {
  const name = words.name(finding.parts[0] ?? '')
  const is = quantityWords(finding.measured, words)
  switch (finding.facts['screen']) {
    case 'riser-slenderness':
      return `The slenderness of the risers of ${name} is ${is}, braced as they are`
    case 'riser-push':
      return `A riser of ${name} that a person pushes comes to ${is}`
    case 'hole-net':
      return `A riser of ${name} comes to ${is} beside its hole ${loadWords(finding)}`
    case 'hole-bearing':
      return `A rail presses on the hole of a riser of ${name} with ${is} ${loadWords(finding)}`
    default:
      return `A riser of ${name} comes to ${is} ${loadWords(finding)}`
  }
}

/** Wood is seldom what fails, but a thin or tall riser may be. */
export const riserLoadMax: FrameRule = {
  over: 'frame',
  id: RULE,
  title: 'Riser and what it carries',
  limit: 'As a column braced both ways, beside its hole, under the rail and against a push: within its wood',
  source:
    'NDS 3.7.1 on columns and Supplement Table 4A on wood, National Design Specification, the wood Code; the push is an assumption',
  mending: 'Stand the riser pairs closer, take shorter towers, or brace the risers at mid height.',
  check: overScreens(RULE, worstScreen),
  say: (finding, words) =>
    finding.facts['screen'] === 'riser-slenderness'
      ? `${wrong(finding, words)}; over ${quantityWords(finding.limit, words)} a riser is refused whatever it carries.`
      : `${wrong(finding, words)}; ${quantityWords(finding.limit, words)} is allowed.`,
}
