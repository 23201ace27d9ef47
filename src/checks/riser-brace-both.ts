import type { RackFacts } from '../model/rackFacts'
import type { ScreenId } from '../model/strength'
import type { FrameRule } from './context'
import { quantityWords } from './measuredWords'
import { loadWords, overScreens, setMend, worstOf } from './strengthRule'

const RULE = 'riser-brace-both'

/** What bracing changes of a riser. */
const BRACED: readonly ScreenId[] = ['riser-slenderness', 'riser-column', 'riser-push']

const missing: Readonly<Record<RackFacts['bracing'], string>> = {
  both: '',
  along: 'across the row',
  across: 'along the row',
  none: 'either way',
}

/** Bracing is a part that a rack needs: a riser free to sway is refused before anybody asks what it carries. */
export const riserBraceBoth: FrameRule = {
  over: 'frame',
  id: RULE,
  title: 'Risers are braced',
  limit: 'Braced along the row and across it; slenderness at most 50',
  source: 'NDS 3.7.1.4 on slenderness, National Design Specification for Wood Construction, the wood Code',
  mending: 'Brace the risers both ways: side braces along the row, cross braces across it.',
  check: overScreens(
    RULE,
    ({ strength, rack }) => (rack.bracing === 'both' ? undefined : worstOf(strength, BRACED)),
    (_screen, seen) => ({
      facts: { missing: missing[seen.rack.bracing] },
      mend: setMend(seen, 'bracing', 'both'),
    }),
  ),
  say: (finding, words) => {
    const { parts, measured, limit, facts } = finding
    const free = `Nothing braces the risers of ${words.name(parts[0] ?? '')} ${facts['missing']}`
    const [is, allowed] = [quantityWords(measured, words), quantityWords(limit, words)]
    return facts['screen'] === 'riser-slenderness'
      ? `${free}: their slenderness is ${is}, and over ${allowed} a riser is refused whatever it carries.`
      : `${free}: ${loadWords(finding)} one comes to ${is}, ${allowed} is allowed.`
  },
}
