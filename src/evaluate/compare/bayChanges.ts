import type { Layout } from '../../layout/schema'
import { type FieldChange, fieldChanges } from './fieldChanges'

/** A field of the bay as a whole that holds another value. */
export interface BayChange extends FieldChange {
  readonly of: 'title' | 'house' | 'settings' | 'counter'
}

/** What the program counts by itself, and what the builder lives with: neither changes how the bay is built. */
const NO_PLAN: ReadonlySet<string> = new Set(['issue', 'accepted'])

const changesOf = (of: BayChange['of'], before: object, after: object): readonly BayChange[] =>
  fieldChanges(before, after, NO_PLAN).map((change) => ({ of, ...change }))

/** Fields of title, house, settings and prices that differ. */
export const bayChanges = (before: Layout, after: Layout): readonly BayChange[] => [
  ...changesOf('title', { title: before.title }, { title: after.title }),
  ...changesOf('house', before.house, after.house),
  ...changesOf('settings', before.settings, after.settings),
  ...changesOf('counter', before.counter, after.counter),
]
