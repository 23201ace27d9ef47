import { fittingOf } from '../../catalogue/fittings'
import { polyOf } from '../../catalogue/pipe'
import { centsOf, centsOfLength, type PriceOf } from '../../catalogue/priceBook/knownPrice'
import { stockKey } from '../../catalogue/stock'
import type { Built } from '../../model/built'

/** What a row's water is bought as: fittings by their keys, pipe and tube by its stock, mm cut off the coil. */
export interface RowParts {
  readonly counts: ReadonlyMap<string, number>
  readonly lengthsMm: ReadonlyMap<string, number>
}

const add = (sums: Map<string, number>, key: string, by: number): void => {
  sums.set(key, (sums.get(key) ?? 0) + by)
}

const WATER_GROUPS: ReadonlySet<string> = new Set(['water', 'fasteners'])

/** Fittings for water and what fastens them, pipe and tubes of some built things together. */
export const rowParts = (things: readonly Built[]): RowParts => {
  const counts = new Map<string, number>()
  const lengthsMm = new Map<string, number>()
  for (const { fittings, tubes } of things) {
    for (const { item } of fittings) if (WATER_GROUPS.has(fittingOf(item).group)) add(counts, item, 1)
    for (const { stock, lengthMm } of tubes) add(lengthsMm, stock, lengthMm)
  }
  return { counts, lengthsMm }
}

/** A catalogue item of which there are more, or fewer. */
export interface CountChange {
  readonly item: string
  readonly change: number
  /** What the change costs; undefined where the item has no price. */
  readonly cents: number | undefined
}

export interface LengthChange {
  readonly stock: string
  readonly changeMm: number
  readonly cents: number | undefined
}

/** What one way of feeding a row takes more, or less, than another. Only what differs is listed, by key. */
export interface PartsDifference {
  readonly counts: readonly CountChange[]
  readonly lengths: readonly LengthChange[]
  /** More pieces in all, and more pipe, mm; microtube is not pipe. */
  readonly pieces: number
  readonly pipeMm: number
  /** Of all that has a price. */
  readonly cents: number
  /** How many of the items and stocks that differ have none: with any, `cents` is not the whole difference. */
  readonly unpriced: number
}

/** A thousandth of a mm is what sums of lengths leave. */
const SAME_MM = 1e-3

const changes = (
  from: ReadonlyMap<string, number>,
  to: ReadonlyMap<string, number>,
): readonly (readonly [string, number])[] =>
  [...new Set([...from.keys(), ...to.keys()])]
    .toSorted()
    .map((key) => [key, (to.get(key) ?? 0) - (from.get(key) ?? 0)] as const)
    .filter(([, change]) => Math.abs(change) > SAME_MM)

const isPipe = (stock: string): boolean => polyOf(stock).family !== 'microtube'

const pieceCents = (item: string, count: number, priceOf: PriceOf): number | undefined => {
  const price = priceOf(item)
  return price && centsOf(price, count)
}

const lengthCents = (stock: string, lengthMm: number, priceOf: PriceOf): number | undefined => {
  const price = priceOf(stockKey(stock, polyOf(stock).coilMm))
  return price && centsOfLength(price, lengthMm)
}

const sumOf = <T>(items: readonly T[], of: (item: T) => number): number =>
  items.reduce((sum, item) => sum + of(item), 0)

/** What `to` takes more than `from`, and what that costs. */
export const partsDifference = (from: RowParts, to: RowParts, priceOf: PriceOf): PartsDifference => {
  const counts = changes(from.counts, to.counts).map(([item, change]): CountChange => ({
    item,
    change,
    cents: pieceCents(item, change, priceOf),
  }))
  const lengths = changes(from.lengthsMm, to.lengthsMm).map(([stock, changeMm]): LengthChange => ({
    stock,
    changeMm,
    cents: lengthCents(stock, changeMm, priceOf),
  }))
  return {
    counts,
    lengths,
    pieces: sumOf(counts, ({ change }) => change),
    pipeMm: sumOf(lengths, ({ stock, changeMm }) => (isPipe(stock) ? changeMm : 0)),
    cents: sumOf([...counts, ...lengths], ({ cents }) => cents ?? 0),
    unpriced: [...counts, ...lengths].filter(({ cents }) => cents === undefined).length,
  }
}

/** Pieces in all. */
export const pieceCount = ({ counts }: RowParts): number => sumOf([...counts.values()], (count) => count)

/** Pipe in all, microtube aside, mm. */
export const pipeLengthMm = ({ lengthsMm }: RowParts): number =>
  sumOf([...lengthsMm], ([stock, lengthMm]) => (isPipe(stock) ? lengthMm : 0))
