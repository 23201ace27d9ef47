import type { RailSpan, RowStrength, Screen } from '../model/strength'
import { conduitWords, stockWords } from './conduitWords'
import type { FrameRule } from './context'
import { overScreens, proofFacts, type Seen, worstOf } from './strengthRule'

const RULE = 'rail-span-max'

/** Where a rail folds nothing is said of how it would sag. */
const worstScreen = ({ strength, settings }: Seen): Screen | undefined => {
  const stress = worstOf(strength, ['rail-stress'])
  const folds = stress !== undefined && stress.measured.value > settings.conduitYieldMpa
  return folds ? stress : worstOf(strength, ['rail-stress', 'rail-sag'])
}

const isIn = ({ fromU, toU }: RailSpan, u: number): boolean => u >= fromU && u <= toU

/** The span of the nearest rail that a screen is worst in; at a riser the more used of its two. */
const spanAt = ({ rails }: RowStrength, { at }: Screen): RailSpan | undefined =>
  rails
    .flatMap(({ v, spans }) =>
      spans.filter((span) => isIn(span, at.u)).map((span) => ({ off: Math.abs(v - at.v), span })),
    )
    .sort((a, b) => a.off - b.off || b.span.used - a.span.used)[0]?.span

const factsOf = (screen: Screen, { strength, settings }: Seen) => {
  const span = spanAt(strength, screen)
  return {
    ...proofFacts(settings),
    ...(span && {
      stock: span.stock,
      spanMm: span.toU - span.fromU,
      where: span.isOverhang ? 'overhang' : 'span',
    }),
  }
}

/** Conduit used as a beam is the trade's habit and its commonest silent failure: what governs is how far apart its risers stand. */
export const railSpanMax: FrameRule = {
  over: 'frame',
  id: RULE,
  title: 'Rail between its risers',
  limit:
    'Stress at most 0.6 of the yield assumed of conduit, sag at most the span over 180: both assumptions',
  source:
    'Common practice, no source: no standard gives conduit a least strength (Steel Tube Institute, May 2016); the sag after farm buildings, International Building Code Table 1604.3',
  mending:
    'Set riser pairs between the rack ends, move the end pairs in, or take the next conduit size; the rack bench lists what each costs.',
  check: overScreens(RULE, worstScreen, (screen, seen) => ({ facts: factsOf(screen, seen) })),
  say: (finding, words) => {
    const { parts, facts } = finding
    const length = words.onTape(Number(facts['spanMm'] ?? 0))
    const where =
      facts['where'] === 'overhang' ? `where they overhang ${length}` : `between risers ${length} apart`
    const rails = `The rails of ${words.name(parts[0] ?? '')}, ${stockWords(facts['stock'])},`
    return conduitWords(finding, rails, where, words)
  },
}
