import { centsEach, type SharedBy } from '../../../evaluate/shop/costFigures'
import type { NextRow } from '../../../evaluate/shop/nextRow'
import type { ShopTotals } from '../../../model/shop'
import { feet, MM_PER_M, type Units } from '../../../units/length'
import { money } from '../../../units/money'
import { thousands } from '../../../units/thousands'
import { priceWords } from '../../../sheets/shop/shopWords'

/** One line of the table of costs: of what, how many there are, and the share of each in what is needed and what is bought. */
export type CostRow = readonly [of: string, count: string, needed: string, bought: string]

const grouped = (count: number): string => thousands(Math.round(count))

const floorOf: Readonly<Record<Units, { readonly title: string; readonly mm2: number }>> = {
  'feet-inches': { title: 'Square foot of house', mm2: feet(1) ** 2 },
  metric: { title: 'Square metre of house', mm2: MM_PER_M ** 2 },
}

/** The cost of the bay, and of a tower, a plant site, the floor and a zone. */
export const costRows = (
  { neededCents, boughtCents }: ShopTotals,
  { towers, sites, areaMm2, zones }: SharedBy,
  currency: string,
  units: Units,
): readonly CostRow[] => {
  const floor = floorOf[units]
  const share = (of: string, count: number): CostRow => [
    of,
    grouped(count),
    priceWords(centsEach(neededCents, count), currency),
    priceWords(centsEach(boughtCents, count), currency),
  ]
  return [
    ['The bay', '1', money(neededCents, currency), money(boughtCents, currency)],
    share('Tower', towers),
    share('Plant site', sites),
    share(floor.title, areaMm2 / floor.mm2),
    share('Zone', zones),
  ]
}

const many = (count: number, one: string, more: string): string =>
  `${grouped(count)} ${count === 1 ? one : more}`

/** Hours to a tenth where they are few. */
const fewHours = (hours: number): string => `${hours.toFixed(Math.abs(hours) < 10 ? 1 : 0)} h`

const unpricedWords = (unpriced: number): string =>
  unpriced === 0 ? '' : ` and ${many(unpriced, 'thing', 'things')} without a price`

/** What one more row costs, in a sentence: it stands by itself, and so says what its money is worth. */
export const nextRowWords = (row: NextRow, like: string, currency: string): string => {
  const { cents, neededCents, boards, hours, towers, sites, unpriced, isPlaceholder } = row
  const what = `One more row like ${like}, of ${many(towers, 'tower', 'towers')} and ${many(sites, 'plant site', 'plant sites')}`
  const adds = `adds ${money(cents, currency)}${unpricedWords(unpriced)} to what is bought, and ${money(neededCents, currency)} to what is needed`
  return `${what}, ${adds}. It takes ${many(boards, 'board', 'boards')} and ${fewHours(hours)}.${isPlaceholder ? ' Some of the prices are placeholders.' : ''}`
}

/** What the next row's figures take for granted. */
export const nextRowAssumed = ({ isFed, isDrained }: NextRow, like: string): string => {
  const joined = [
    isFed ? 'its pipe from the main' : 'no pipe from a main, for none is in reach',
    isDrained ? 'its drops into the drain' : 'no drops, for no drain is in reach',
  ]
  return `Counted as a copy in ${like}’s own place, so that nothing is in its way: with ${joined.join(' and ')}. Mains, drains, pump and pit stay as they are, whether they do for one row more or not. Boards are by the first answer of the cutter, with the row and without. Whole packs make what is bought go in steps: a pack that is open does for some of it.`
}

/** What a tower of the next row costs. */
export const nextRowEach = ({ cents, towers }: NextRow, currency: string): string =>
  priceWords(centsEach(cents, towers), currency)
