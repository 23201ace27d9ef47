import type { CountGroup } from '../../model/countLine'
import type { CountUnit } from '../../units/writeCount'
import type { Judged } from '../evaluation'
import { paired } from './paired'

/** So many of a thing before and after; 0 where one plan has none. */
export interface CountChange {
  readonly key: string
  readonly before: number
  readonly after: number
}

/** Boards, sticks or coils of one length that are still to be bought, mm. */
export interface BoardChange extends CountChange {
  readonly stock: string
  readonly title: string
  readonly stockMm: number
}

/** A line of the take-off. */
export interface TakeOffChange extends CountChange {
  readonly title: string
  readonly group: CountGroup
  readonly unit: CountUnit
  /** Work is counted and never bought; of what is cut the boards are. */
  readonly isBought: boolean
}

type Counted<C extends CountChange> = Omit<C, 'before' | 'after'> & { readonly count: number }

/** Runs of pipe differ by rounding where their ends do, ft. */
const SAME_COUNT = 1e-6

/** Lines whose counts differ, by their keys; what is said of a line is said as it is after. */
export const countChanges = <T extends { readonly key: string; readonly count: number }>(
  before: readonly T[],
  after: readonly T[],
): readonly (Omit<T, 'count'> & { readonly before: number; readonly after: number })[] =>
  paired(before, after).flatMap((pair) => {
    const { count: _, ...said } = pair.said
    const change = { ...said, before: pair.before?.count ?? 0, after: pair.after?.count ?? 0 }
    return Math.abs(change.after - change.before) < SAME_COUNT ? [] : [change]
  })

const boardsOf = ({ cuts }: Judged): readonly Counted<BoardChange>[] =>
  cuts.flatMap(({ stock, title, bought }) =>
    bought.map(({ stockMm, count }) => ({ key: `${stock}@${stockMm}`, stock, title, stockMm, count })),
  )

export const boardChanges = (before: Judged, after: Judged): readonly BoardChange[] =>
  countChanges(boardsOf(before), boardsOf(after))

const takeOffOf = ({ counts }: Judged): readonly Counted<TakeOffChange>[] =>
  counts.map(({ item, title, group, unit, count, isWork }) => ({
    key: item,
    title,
    group,
    unit,
    count,
    isBought: !isWork && !item.includes('#'),
  }))

export const takeOffChanges = (before: Judged, after: Judged): readonly TakeOffChange[] =>
  countChanges(takeOffOf(before), takeOffOf(after))
