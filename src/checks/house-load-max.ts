import type { FrameRule } from './context'
import { quantityWords } from './measuredWords'
import { loadWords, overScreens, setMend, worstOf } from './strengthRule'

const RULE = 'house-load-max'

/** Most tunnels are not made to bear crops: racks stand on the floor unless whoever made the house says otherwise in writing. */
export const houseLoadMax: FrameRule = {
  over: 'frame',
  id: RULE,
  title: 'Hung from the house',
  limit: 'No more than the maker of the house has given in writing for things that hang from it',
  source:
    'Common practice, no source: Alabama Extension on high tunnels, not built to bear crops; National Greenhouse Manufacturers Association caps plants at 15 psf',
  mending: 'Stand the rails on risers, or set what the maker of the house gives in writing.',
  check: overScreens(
    RULE,
    ({ strength }) => worstOf(strength, ['house-load']),
    (_screen, seen) => ({
      facts: { isGiven: seen.settings.houseKpa === null ? 'no' : 'yes' },
      mend: setMend(seen, 'carriedBy', 'floor'),
    }),
  ),
  say: (finding, words) => {
    const { parts, measured, limit, facts } = finding
    const hung = `${words.name(parts[0] ?? '')} hangs ${quantityWords(measured, words)} from the house frame ${loadWords(finding)}`
    if (facts['isGiven'] !== 'yes') return `${hung}, and no figure of its maker says that it bears anything.`
    return limit.unit === 'N'
      ? `One hanger of ${words.name(parts[0] ?? '')} pulls at the house frame with ${quantityWords(measured, words)} ${loadWords(finding)}; a purlin takes ${quantityWords(limit, words)} in mid span.`
      : `${hung}; its maker gives ${quantityWords(limit, words)}.`
  },
}
