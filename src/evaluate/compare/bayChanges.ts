import type { Layout } from '../../layout/schema'

/** A field of the bay as a whole that is another. */
export interface BayChange {
  readonly of: 'title' | 'house' | 'settings' | 'counter'
  readonly field: string
  readonly from: unknown
  readonly to: unknown
}

/** What the program counts by itself, or what says nothing of how the bay is built. */
const NO_PLAN = new Set(['issue', 'accepted'])

const fieldsOf = (of: BayChange['of'], before: object, after: object): readonly BayChange[] => {
  const [was, is] = [before, after] as readonly Readonly<Record<string, unknown>>[] // read field by field
  return Object.keys({ ...after, ...before }).flatMap((field) => {
    const [from, to] = [was?.[field], is?.[field]]
    if (NO_PLAN.has(field) || from === to || JSON.stringify(from) === JSON.stringify(to)) return []
    return [{ of, field, from, to }]
  })
}

/** Fields of title, house, settings and prices that differ. */
export const bayChanges = (before: Layout, after: Layout): readonly BayChange[] => [
  ...(before.title === after.title
    ? []
    : [{ of: 'title' as const, field: 'title', from: before.title, to: after.title }]),
  ...fieldsOf('house', before.house, after.house),
  ...fieldsOf('settings', before.settings, after.settings),
  ...fieldsOf('counter', before.counter, after.counter),
]
