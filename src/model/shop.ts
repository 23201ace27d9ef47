import type { PartId } from './ids'
import type { KnownPrice } from './priceRow'

/** One thing on the shop list. Money is whole cents before tax; undefined where it has no price. */
export interface ShopLine {
  /** Key of the price book's row. */
  readonly key: string
  readonly name: string
  readonly price: KnownPrice
  /** Pieces, feet of coil or boards that the bay has in it, and what the rule of its row adds. */
  readonly needed: number
  readonly spare: number
  /** Packs to buy, and what is in them. */
  readonly packs: number
  readonly bought: number
  readonly neededCents: number | undefined
  readonly boughtCents: number | undefined
  /** Buying up to the next break costs less: so many packs for so much, and how many are over. */
  readonly buyUp?: { readonly packs: number; readonly cents: number; readonly over: number }
}

export interface ShopTotals {
  readonly neededCents: number
  readonly boughtCents: number
  readonly taxCents: number
  /** Lines without a price, which are in none of the sums. */
  readonly unpriced: number
}

/** Lines by supplier, within it by aisle. */
export interface ShopList {
  readonly suppliers: readonly {
    readonly supplier: string
    readonly lines: readonly ShopLine[]
    readonly totals: ShopTotals
  }[]
  readonly totals: ShopTotals
}

/** Work of one kind: minutes of one person each, and how often. */
export interface LabourLine {
  readonly task: string
  readonly title: string
  readonly unit: string
  readonly minutesEach: number
  readonly count: number
  readonly hours: number
}

export interface Labour {
  readonly lines: readonly LabourLine[]
  /** All lines, and with supervision, clean-up and the crew's factor. */
  readonly taskHours: number
  readonly hours: number
  readonly crewDays: number
}

/** What a part has a share in: parts and how many of the thing each brings. */
export type PerPart = ReadonlyMap<PartId, number>
