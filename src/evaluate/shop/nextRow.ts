import { copyParts } from '../../layout/edits'
import type { Layout, Part } from '../../layout/schema'
import type { PartId } from '../../model/ids'
import { beforeChecks } from '../beforeChecks'
import type { Evaluation } from '../evaluation'
import { bayChange, type BayChange } from './change'
import { shopList } from './shopList'

type Row = Part & { readonly kind: 'rack-row' }

/** What one more row takes, beside what the bay takes already. */
export interface NextRow extends BayChange {
  readonly like: PartId
  /** Of the money, what goes into the row; the rest is what whole packs and boards leave over. */
  readonly neededCents: number
  readonly towers: number
  readonly sites: number
  /** Water reaches it from a main or a row, and its outlets drop into a drain: the pipes between are counted. */
  readonly isFed: boolean
  readonly isDrained: boolean
}

const towersIn = ({ bay }: Evaluation, id: PartId): number => bay.builtOf.get(id)?.rack?.towers ?? 0

/** The row that the next is like: the one that is chosen, else the one with the most towers; undefined in a bay without rows. */
export const rowLike = (evaluation: Evaluation, selection: readonly PartId[]): PartId | undefined => {
  const rows = evaluation.layout.parts.filter((part): part is Row => part.kind === 'rack-row')
  const chosen = rows.find(({ id }) => selection.includes(id))
  const [most] = rows.toSorted((a, b) => towersIn(evaluation, b.id) - towersIn(evaluation, a.id))
  return (chosen ?? most)?.id
}

const neededIn = ({ cuts, counts, layout }: Evaluation): number =>
  shopList(cuts, counts, layout.counter, 'counted').totals.neededCents

const isJoined = ({ bay }: Evaluation, from: PartId, kinds: readonly string[]): boolean =>
  bay.joins.some((join) => join.from === from && join.to !== undefined && kinds.includes(join.kind))

/**
 * What one more row like this one would take. A copy is counted in the row's own place, so that nothing stands in its way and
 * it is as far from main and drain as its like; mains, drains, pump and pit stay as they are, whether they do for one row more or
 * not. Undefined where the bay has no such row or holds no more parts.
 */
export const nextRow = (layout: Layout, before: Evaluation, like: PartId): NextRow | undefined => {
  const more = copyParts(layout, [like], 0, 0)
  const copy = more.parts.at(-1)
  if (more === layout || copy === undefined) return undefined
  const after = beforeChecks(more)
  return {
    ...bayChange(before, after),
    like,
    neededCents: neededIn(after) - neededIn(before),
    towers: after.towers - before.towers,
    sites: after.sites - before.sites,
    isFed: isJoined(after, copy.id, ['zone-to-main', 'zone-to-zone']),
    isDrained: isJoined(after, copy.id, ['outlet-to-drain']),
  }
}
