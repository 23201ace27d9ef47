/** Who sells it, where it lies and how it is bought: one row of the price book for each thing that can be bought. */
export interface PriceRow {
  /** Catalogue key, such as `tee-pe-3/4`; a length of stock has its length behind it, such as `lumber-2x4@12ft`. */
  readonly key: string
  readonly name: string
  /** Size, length, material. */
  readonly spec: string
  readonly group: PriceGroup
  /** What one is called at the till: `piece`, `box`, `coil`, `bag`. */
  readonly unit: string
  /** How many of what is counted are in one unit: 100 screws in a box, 1 tee in a piece; for coils and sticks 1. */
  readonly pack: number
  /** Only for stock that pieces are cut from: the length it is sold by, mm. */
  readonly stockMm?: number | undefined
  /** Price of one unit, whole cents; undefined where nobody has asked yet, which is never 0. */
  readonly cents?: number | undefined
  /** From so many units on, each of all of them costs `cents`; ascending by `from`. */
  readonly breaks: readonly { readonly from: number; readonly cents: number }[]
  readonly supplier: string
  readonly aisle: string
  readonly leadDays: number
  /** What is bought beyond the count: `cut` for what the cutting plan says, a share of 1, or a number of spares. */
  readonly waste: PriceWaste
  /** Only whole packs are sold. */
  readonly isWholePack: boolean
  readonly isTaxed: boolean
  readonly isReturnable: boolean
  /** ISO date of the quote; empty for a placeholder, which is nobody's quote. */
  readonly date: string
  readonly note: string
}

export const priceGroups = [
  'lumber',
  'conduit',
  'gutter',
  'drain',
  'pipe',
  'fittings',
  'pit',
  'pump',
  'electrics',
  'growing',
  'fasteners',
  'safety',
] as const

export type PriceGroup = (typeof priceGroups)[number]

/**
 * A share of a coil is of the length that is needed, of sticks and boards of those that the plan buys, of all else of the count.
 * Pieces to spare are whole, to the nearest, so that a small share of a few buys none; then all goes up to what is sold.
 */
export type PriceWaste =
  | { readonly kind: 'cut' }
  | { readonly kind: 'none' }
  | { readonly kind: 'share'; readonly share: number }
  | { readonly kind: 'spares'; readonly count: number }

/** Which layer of the price book a price comes from; the later wins. */
export type PriceLayer = 'base' | 'book' | 'quote'

/** The rows that a job lays over those that come with the program. */
export interface PriceLayers {
  /** The supplier's, and over it this job's. */
  readonly book: readonly PriceRow[]
  readonly quotes: readonly PriceRow[]
}

/** A row as it stands once the layers are laid over each other. */
export interface KnownPrice {
  readonly row: PriceRow
  /** The layer that the price is from. */
  readonly layer: PriceLayer
  /** Nobody's quote: invented so that the columns can be sized. */
  readonly isPlaceholder: boolean
}
