import type { KnownPrice, PriceRow } from '../../model/priceRow'
import type { ShopLine, Wanted } from '../../model/shop'

/** Sums of shares end a hair over a whole number; that is no reason for one more pack. */
const HAIR = 1e-6

const upToWhole = (count: number): number => Math.ceil(count - HAIR)

/**
 * What is bought beyond the count. A share of pieces is whole ones, to the nearest: 2 % of 90 sticks are 2, and of 2 sticks none,
 * which half a stick or more would be. A cutting plan has its own waste in it.
 */
const spareOf = ({ waste }: PriceRow, { needed, unit }: Wanted): number => {
  if (waste.kind === 'share')
    return unit === 'piece' ? Math.round(needed * waste.share) : needed * waste.share
  return waste.kind === 'spares' ? waste.count : 0
}

/** What one pack costs when so many are bought; undefined without a price. */
const packCentsAt = ({ cents, breaks }: PriceRow, packs: number): number | undefined =>
  breaks.findLast(({ from }) => from <= packs)?.cents ?? cents

/** What so many packs cost, whole cents. Packs that are sold loose come in parts, and their price is rounded to the cent. */
const costOf = (row: PriceRow, packs: number): number | undefined => {
  const each = packCentsAt(row, packs)
  return each === undefined ? undefined : Math.round(packs * each)
}

/** Packs that hold what is asked for, and the sticks or coils that the plan takes: an offcut at the end of one is not the next one's start. */
const packsFor = ({ isWholePack, pack }: PriceRow, asked: number, { planned, inOne }: Wanted): number => {
  if (!isWholePack) return upToWhole(asked) / (pack * inOne)
  return upToWhole(Math.max(asked / inOne, planned) / pack)
}

interface Buying {
  readonly packs: number
  readonly cents: number
}

/** The cheapest way to buy more than is wanted for less than is asked; undefined where no break gives it. */
const buyUpOf = (row: PriceRow, { packs, cents }: Buying): Buying | undefined => {
  let best: Buying | undefined
  for (const { from, cents: each } of row.breaks) {
    const up = { packs: from, cents: from * each }
    if (from > packs && up.cents < (best?.cents ?? cents)) best = up
  }
  return best
}

/**
 * One line of the shop list: what is wanted, with what its row's rule adds, in the packs that it is sold by, at the price that
 * holds for so many. What is needed of it costs its share of what is paid.
 */
export const shopLine = (wanted: Wanted, price: KnownPrice): ShopLine => {
  const { row } = price
  const { key, title, unit, needed, inOne } = wanted
  const spare = spareOf(row, wanted)
  const packs = packsFor(row, needed + spare, wanted)
  const bought = packs * row.pack * inOne
  const cents = costOf(row, packs)
  const up = cents === undefined ? undefined : buyUpOf(row, { packs, cents })
  return {
    key,
    name: row.name === '' ? title : row.name,
    price,
    unit,
    needed,
    spare,
    packs,
    bought,
    packCents: packCentsAt(row, packs),
    neededCents: cents === undefined ? undefined : Math.round((cents * Math.min(needed, bought)) / bought),
    boughtCents: cents,
    ...(up && { buyUp: { ...up, over: up.packs * row.pack * inOne - needed - spare } }),
  }
}
