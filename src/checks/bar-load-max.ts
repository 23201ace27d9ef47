import type { Screen } from '../model/strength'
import { conduitWords, stockWords } from './conduitWords'
import type { FrameRule } from './context'
import { overScreens, proofFacts, type Seen, worstOf } from './strengthRule'

const RULE = 'bar-load-max'

/** Where a bar folds nothing is said of how it would sag. */
const worstScreen = ({ strength, settings }: Seen): Screen | undefined => {
  const stress = worstOf(strength, ['bar-stress'])
  const folds = stress !== undefined && stress.measured.value > settings.conduitYieldMpa
  return folds ? stress : worstOf(strength, ['bar-stress', 'bar-sag'])
}

const apart = ([first, ...rest]: readonly number[]): number => (rest.at(-1) ?? first ?? 0) - (first ?? 0)

const factsOf = ({ strength: { bar }, settings }: Seen) => ({
  ...proofFacts(settings),
  ...(bar && { stock: bar.stock, railsMm: apart(bar.railV) }),
  ...(bar?.bestSpacingMm !== undefined && { bestMm: bar.bestSpacingMm }),
})

/** A bar sags between its rails and hangs over beyond them; it bears most where both bend it alike. */
export const barLoadMax: FrameRule = {
  over: 'frame',
  id: RULE,
  title: 'Hanger bar and its towers',
  limit:
    'Stress at most 0.6 of the yield assumed of conduit, sag at most the length over 180: both assumptions',
  source:
    'Common practice, no source: no standard gives conduit a least strength (Steel Tube Institute, May 2016)',
  mending: 'Hang fewer towers on a bar, take the next conduit size, or set the rails at their best spacing.',
  check: overScreens(RULE, worstScreen, (_screen, seen) => ({ facts: factsOf(seen) })),
  say: (finding, words) => {
    const { parts, facts } = finding
    const bars = `The hanger bars of ${words.name(parts[0] ?? '')}, ${stockWords(facts['stock'])},`
    const wrong = conduitWords(
      finding,
      bars,
      `on rails ${words.onTape(Number(facts['railsMm'] ?? 0))} apart`,
      words,
    )
    const best = facts['bestMm']
    return best === undefined ? wrong : `${wrong} Rails ${words.onTape(Number(best))} apart load them least.`
  },
}
