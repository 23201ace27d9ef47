import type { PartId } from './ids'
import type { KnownPrice } from './priceRow'

/** What a line is counted in: sticks, boards and fittings by the piece; coils and tape by the foot; sheet by the square foot. */
export type ShopUnit = 'piece' | 'ft' | 'ft2'

/** What the bay wants of one thing, before anyone thinks of packs and prices. */
export interface Wanted {
  /** Key of the price book's row. */
  readonly key: string
  readonly title: string
  readonly unit: ShopUnit
  readonly needed: number
  /** How much of it one of what is sold holds: the length of a coil, ft; else 1. */
  readonly inOne: number
  /** The cutting plan takes so many whole coils, sticks or boards; 0 for what is not cut. */
  readonly planned: number
}

/** One thing on the shop list. Money is whole cents before tax; undefined where it has no price. */
export interface ShopLine {
  /** Key of the price book's row. */
  readonly key: string
  readonly name: string
  readonly price: KnownPrice
  readonly unit: ShopUnit
  /** Pieces, feet of coil or boards that the bay has in it, and what the rule of its row adds, which need not be whole. */
  readonly needed: number
  readonly spare: number
  /** Packs to buy, and what is in them. Packs are whole unless the row is sold loose. */
  readonly packs: number
  readonly bought: number
  /** What one pack costs when so many are bought. */
  readonly packCents: number | undefined
  /** The needed part of what is paid. */
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
  /** Lines whose price is invented. */
  readonly placeholders: number
}

/** All that is bought in one place. */
export interface SupplierList {
  readonly supplier: string
  /** The longest that anything of it takes to come, days. */
  readonly leadDays: number
  /** By aisle, then by name. */
  readonly lines: readonly ShopLine[]
  readonly totals: ShopTotals
}

/** Lines by supplier, what takes longest to come first; within it by aisle. */
export interface ShopList {
  readonly suppliers: readonly SupplierList[]
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
