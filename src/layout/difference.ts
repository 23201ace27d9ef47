import type { PartId } from '../model/ids'
import type { Layout, Part } from './schema'

/** A part and its index among the parts of the layout that has it. */
export interface PlacedPart {
  readonly part: Part
  readonly index: number
}

/** All of a layout that can change beside its parts. */
export type BayFields = Pick<Layout, 'title' | 'house' | 'settings' | 'bench' | 'counter' | 'papers'>

/** What makes one layout into another. It knows no kind of part and no kind of edit, and neither does its reverse. */
export interface Difference {
  readonly added: readonly PlacedPart[]
  readonly removed: readonly PlacedPart[]
  readonly updated: readonly (readonly [from: Part, to: Part])[]
  /** The changed fields of the bay, before and after. */
  readonly from: Partial<BayFields>
  readonly to: Partial<BayFields>
}

const fieldNames = ['title', 'house', 'settings', 'bench', 'counter', 'papers'] as const

const idsOf = (parts: readonly Part[]): PartId[] => parts.map(({ id }) => id)

/** Ids in both layouts. Where their order has changed none counts as kept: all are taken out and put back in order. */
const keptIds = (before: Layout, after: Layout): Set<PartId> => {
  const [was, is] = [new Set(idsOf(before.parts)), new Set(idsOf(after.parts))]
  const kept = idsOf(before.parts).filter((id) => is.has(id))
  const order = idsOf(after.parts).filter((id) => was.has(id))
  return new Set(kept.every((id, index) => id === order[index]) ? kept : [])
}

const placedOutside = (parts: readonly Part[], kept: ReadonlySet<PartId>): PlacedPart[] =>
  parts.flatMap((part, index) => (kept.has(part.id) ? [] : [{ part, index }]))

const updatesOf = (before: Layout, after: Layout, kept: ReadonlySet<PartId>): [Part, Part][] => {
  const was = new Map(before.parts.map((part) => [part.id, part]))
  return after.parts.flatMap((to): [Part, Part][] => {
    const from = kept.has(to.id) ? was.get(to.id) : undefined
    return from && from !== to ? [[from, to]] : []
  })
}

const fieldsOf = (layout: Layout, other: Layout): Partial<BayFields> =>
  Object.fromEntries(
    fieldNames.filter((name) => layout[name] !== other[name]).map((name) => [name, layout[name]]),
  )

/** The difference of two layouts, found by reference: what an edit did not touch is the same object in both. */
export const differenceBetween = (before: Layout, after: Layout): Difference => {
  const kept = keptIds(before, after)
  return {
    added: placedOutside(after.parts, kept),
    removed: placedOutside(before.parts, kept),
    updated: updatesOf(before, after, kept),
    from: fieldsOf(before, after),
    to: fieldsOf(after, before),
  }
}

export const isNothing = ({ added, removed, updated, to }: Difference): boolean =>
  added.length + removed.length + updated.length + Object.keys(to).length === 0

export const reverse = ({ added, removed, updated, from, to }: Difference): Difference => ({
  added: removed,
  removed: added,
  updated: updated.map(([was, is]) => [is, was]),
  from: to,
  to: from,
})

/** `parts` with each added part at its own index; `added` is in ascending order. */
const inserted = (parts: readonly Part[], added: readonly PlacedPart[]): Part[] => {
  const all: Part[] = []
  let next = 0
  for (const { part, index } of added) {
    while (all.length < index && next < parts.length) all.push(...parts.slice(next, (next += 1)))
    all.push(part)
  }
  return [...all, ...parts.slice(next)]
}

const changedParts = (parts: readonly Part[], { added, removed, updated }: Difference): Part[] => {
  const gone = new Set(removed.map(({ part }) => part.id))
  const changed = new Map(updated.map(([from, to]) => [from.id, to]))
  const kept = parts.filter(({ id }) => !gone.has(id)).map((part) => changed.get(part.id) ?? part)
  return inserted(kept, added)
}

/** The layout with a difference made. Parts that the difference does not name are the same objects as before. */
export const apply = (layout: Layout, difference: Difference): Layout => {
  const { added, removed, updated, to } = difference
  if (isNothing(difference)) return layout
  const isParts = added.length + removed.length + updated.length > 0
  return { ...layout, ...to, parts: isParts ? changedParts(layout.parts, difference) : layout.parts }
}

/** Ids of the parts that an edit brought, in their order: what is selected after a copy. */
export const newcomers = (before: Layout, after: Layout): PartId[] => {
  const was = new Set(idsOf(before.parts))
  return idsOf(after.parts).filter((id) => !was.has(id))
}

const isRecord = (value: unknown): value is object => typeof value === 'object' && value !== null

/** A file has no field for what is undefined. */
const filled = (record: object): ReadonlyMap<string, unknown> =>
  new Map<string, unknown>(Object.entries(record).filter(([, value]) => value !== undefined))

/** Equal by content; what is the same object is not looked into, so that a plan that is kept is compared once or never. */
const isAlike = (a: unknown, b: unknown): boolean => {
  if (Object.is(a, b)) return true
  if (!isRecord(a) || !isRecord(b) || Array.isArray(a) !== Array.isArray(b)) return false
  const [own, other] = [filled(a), filled(b)]
  return own.size === other.size && [...own].every(([key, value]) => isAlike(value, other.get(key)))
}

/** Whether a layout is one that the difference can start from, by content: after a reload no reference is the same. */
export const fits = (layout: Layout, { added, removed, updated, from }: Difference): boolean => {
  const parts = new Map(layout.parts.map((part) => [part.id, part]))
  const gone = new Set(removed.map(({ part }) => part.id))
  return (
    removed.every(({ part }) => isAlike(parts.get(part.id), part)) &&
    updated.every(([was, is]) => was.id === is.id && isAlike(parts.get(was.id), was)) &&
    added.every(({ part }) => !parts.has(part.id) || gone.has(part.id)) &&
    fieldNames.every((name) => !(name in from) || isAlike(layout[name], from[name]))
  )
}
