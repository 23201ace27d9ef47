import { lumbers } from '../../catalogue/lumber'
import type { Layout } from '../../layout/schema'
import type { CutList } from '../../model/cutList'
import { isLumber } from '../cutting/benchStock'
import { stockOf } from '../../catalogue/stock'
import { derive } from '../1-derive'
import { cutLists } from '../6-cutting'
import { shopLines } from './shopList'

/** What the lumber of a bay comes to when it is bought in certain lengths. */
export interface Alternative {
  /** Lengths on offer, mm, shortest first. */
  readonly lumberMm: readonly number[]
  readonly isChosen: boolean
  readonly boards: number
  readonly boughtMm: number
  /** Of what is bought, what goes into no piece, in parts of 1. */
  readonly waste: number
  /** What the shop list would have for it, with spares and breaks; undefined where a length has no price. */
  readonly cents: number | undefined
  /** Pieces that no board of these lengths makes. */
  readonly unmade: number
}

const total = <T>(things: readonly T[], of: (thing: T) => number): number =>
  things.reduce((sum, thing) => sum + of(thing), 0)

const centsOf = (lists: readonly CutList[], { counter }: Layout): number | undefined => {
  const lines = shopLines(lists, [], counter)
  return lines.some(({ boughtCents }) => boughtCents === undefined)
    ? undefined
    : total(lines, ({ boughtCents = 0 }) => boughtCents)
}

/**
 * The lumber lists of the bay with other lengths at the yard. Risers and runners are made from the boards on offer, and so the
 * rows are built anew, as copies: the bay that is drawn keeps what is remembered of it.
 */
const listsWith = (layout: Layout, lumberMm: readonly number[]): readonly CutList[] => {
  const copy: Layout = {
    ...layout,
    house: { ...layout.house },
    settings: { ...layout.settings, lumberMm: [...lumberMm] },
    parts: layout.parts.map((part) => ({ ...part })),
  }
  return cutLists(derive(copy).built, copy).filter(({ stock }) => isLumber(stockOf(stock)))
}

const isSameLengths = (a: readonly number[], b: readonly number[]): boolean =>
  a.length === b.length && a.every((mm, index) => mm === b[index])

const alternative = (layout: Layout, lumberMm: readonly number[]): Alternative => {
  const lists = listsWith(layout, lumberMm)
  const boughtMm = total(lists, (list) => list.boughtMm)
  const netMm = total(lists, (list) => list.netMm)
  return {
    lumberMm,
    isChosen: isSameLengths(lumberMm, layout.settings.lumberMm),
    boards: total(lists, ({ bought }) => total(bought, ({ count }) => count)),
    boughtMm,
    waste: boughtMm > 0 ? 1 - netMm / boughtMm : 0,
    cents: centsOf(lists, layout),
    unmade: total(lists, ({ tooLong, ranOut }) => total([...tooLong, ...ranOut], ({ count }) => count)),
  }
}

/** Lengths that a yard has, and the builder's own, which the truck carries; shortest first, mm. */
const lengthsUpTo = ({ settings }: Layout, longestMm: number): number[] => {
  const yard = lumbers.flatMap(({ lengthsMm }) => lengthsMm)
  return [...new Set([...yard, ...settings.lumberMm])]
    .filter((lengthMm) => lengthMm <= longestMm)
    .sort((a, b) => a - b)
}

/** As chosen; all from one length, each in turn; any of the lengths together. Each once. */
const choicesOf = (layout: Layout, longestMm: number): number[][] => {
  const lengths = lengthsUpTo(layout, longestMm)
  const choices = [[...layout.settings.lumberMm], ...lengths.map((mm) => [mm]), lengths]
  return choices.filter(
    (choice, index) =>
      choice.length > 0 && choices.findIndex((other) => isSameLengths(choice, other)) === index,
  )
}

/**
 * The lumber of a bay bought in other lengths, none longer than the truck carries, each planned anew by the first answer of the
 * cutter; a step each. Lengths that can't make all pieces come last, then the cheaper before the dearer, then the fewer boards.
 */
export function* alternatives(
  layout: Layout,
  longestMm: number,
): Generator<undefined, readonly Alternative[]> {
  const found: Alternative[] = []
  for (const choice of choicesOf(layout, longestMm)) {
    yield
    found.push(alternative(layout, choice))
  }
  return found.sort(
    (a, b) =>
      a.unmade - b.unmade ||
      (a.cents ?? Number.MAX_VALUE) - (b.cents ?? Number.MAX_VALUE) ||
      a.boards - b.boards,
  )
}
