import type { Settings } from '../layout/settings'
import type { Built } from '../model/built'
import { type Finding, type Mend, rankOf } from '../model/finding'
import type { RackFacts } from '../model/rackFacts'
import type { LoadState, RowStrength, Screen, ScreenId } from '../model/strength'
import type { FrameRule } from './context'
import { found } from './found'
import { placeOfSpot } from './rowPlace'

/** What hangs while a member is at its worst, as a clause. */
const underWords: Readonly<Record<LoadState, string>> = {
  full: 'with every tower hung',
  harvested: 'with the worst of its spans harvested',
  'one-side': 'with one side hung',
  empty: 'with nothing hung',
  proof: 'under the proof load',
}

/** `with every tower hung`, of a finding's facts. */
export const loadWords = ({ facts }: Finding): string =>
  underWords[String(facts['under']) as LoadState] ?? underWords.full // facts hold plain words; a screen put this one there

const rank = ({ state }: Screen): number => rankOf({ subject: 'strength', state })

/** Worse by its state, then by the share of its limit. */
const worse = (a: Screen, b: Screen): Screen =>
  rank(b) > rank(a) || (rank(b) === rank(a) && b.used > a.used) ? b : a

/** The worst of a row's screens of these sorts; undefined where all are within. */
export const worstOf = ({ screens }: RowStrength, ids: readonly ScreenId[]): Screen | undefined => {
  const [first, ...others] = screens.filter((screen) => ids.includes(screen.id) && rank(screen) > 0)
  return first && others.reduce(worse, first)
}

/** All that a rule is told of a row. */
export interface Seen {
  readonly strength: RowStrength
  readonly built: Built
  readonly rack: RackFacts
  readonly settings: Settings
}

interface More {
  readonly facts?: Finding['facts']
  readonly mend?: Mend
}

/** The finding of a screen that is not within, at its worst place. */
const findingOf = (rule: string, screen: Screen, { built, rack }: Seen, more: More): Finding =>
  found({
    rule,
    subject: 'strength',
    state: screen.state,
    parts: [built.part],
    at: placeOfSpot(rack, screen.at),
    measured: screen.measured,
    limit: screen.limit,
    terms: screen.terms,
    ...more,
    facts: { screen: screen.id, under: screen.under, ...more.facts },
  })

/** A check of one row's screens: its worst that `pick` gives, with what `more` has to say of it. */
export const overScreens =
  (
    rule: string,
    pick: (seen: Seen) => Screen | undefined,
    more: (screen: Screen, seen: Seen) => More = () => ({}),
  ): FrameRule['check'] =>
  (strength, built, settings) => {
    const { rack } = built
    if (!rack) return []
    const seen = { strength, built, rack, settings }
    const screen = pick(seen)
    return screen ? [findingOf(rule, screen, seen, more(screen, seen))] : []
  }

/** A field of the row set by one press. */
export const setMend = ({ built }: Seen, field: string, value: string): Mend => ({
  kind: 'set',
  part: built.part,
  field,
  value,
})

/** That and how an overworked conduit is proven or fails, of a finding whose facts have `yieldMpa` and `proofTimes`. */
export const proofFacts = ({ conduitYieldMpa, proofTimes }: Settings) => ({
  yieldMpa: conduitYieldMpa,
  proofTimes,
})
