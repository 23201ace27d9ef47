import type { CuttingProblem } from '../solvers/cutting/problem'
import type { CutRule } from './built'

/** All pieces of one stop setting. */
export interface CutLine {
  readonly marks: readonly string[]
  readonly lengthMm: number
  readonly count: number
  readonly cut: CutRule
}

/** Like boards, sticks or coils, by the length that they are called by. */
export interface StockCount {
  readonly stockMm: number
  readonly count: number
}

/** What boards can be taken from: a length that the yard sells, or leftovers of one length on hand. */
export interface CutStock {
  /** What it is called and sold by; of leftovers what a tape finds. */
  readonly stockMm: number
  /** What a tape finds, mm. */
  readonly measuredMm: number
  readonly isLeftover: boolean
  /** What one costs, whole cents; leftovers 0, undefined where it has no price. */
  readonly cents: number | undefined
  /** The price is nobody's quote. */
  readonly isPlaceholder: boolean
}

/** Boards cut alike. */
export interface Board {
  /** What it is called and sold by; of leftovers what a tape finds. */
  readonly stockMm: number
  /** What a tape finds, mm: the pieces and the offcut are of this. */
  readonly measuredMm: number
  readonly isLeftover: boolean
  readonly count: number
  readonly pieces: readonly {
    readonly lengthMm: number
    readonly count: number
    readonly marks: readonly string[]
  }[]
  readonly offcutMm: number
}

/**
 * How good a plan is known to be: a first answer with a quick bound; a plan that a proof is still short of; or the cheapest that
 * there can be. `share` is how much more it may cost than the cheapest, in parts of 1; infinite where the bound is 0.
 */
export type Standing =
  | { readonly kind: 'first'; readonly share: number }
  | { readonly kind: 'within'; readonly share: number }
  | { readonly kind: 'proven' }

export interface CutList {
  /** Names the problem: lists of the same pieces, stock and saw have the same key, and so the same plan. */
  readonly key: string
  /** What the boards are planned from; a proof is of this. */
  readonly problem: CuttingProblem
  /** Catalogue key of the material. */
  readonly stock: string
  readonly title: string
  /** What the pieces and the stocks of the problem are, in its order. */
  readonly pieces: readonly CutLine[]
  readonly stocks: readonly CutStock[]
  /** What the boards make, longest first: all pieces but those that are cut already and those that can't be made. */
  readonly lines: readonly CutLine[]
  readonly boards: readonly Board[]
  /** Boards still to be bought, and leftovers that the plan uses up. */
  readonly bought: readonly StockCount[]
  readonly leftovers: readonly StockCount[]
  /** Sum of the pieces of `lines`, and of the boards bought and leftovers used by what they are called, mm. */
  readonly netMm: number
  readonly boughtMm: number
  /** What cost is: cents where every length that the yard sells has a price, else the ticks of length bought. */
  readonly costIs: 'cents' | 'ticks'
  readonly cost: number
  /** No plan costs less than this, in the unit of `cost`. */
  readonly bound: number
  readonly standing: Standing
  /** What the boards still to be bought cost, whole cents; undefined where one of their lengths has no price. */
  readonly cents: number | undefined
  /** Longer than any stock: no board makes them. */
  readonly tooLong: readonly CutLine[]
  /** There is not enough of the stock that makes them. */
  readonly ranOut: readonly CutLine[]
  /** Pieces that the bay wants and that are cut, longest first; the plan makes none of them. */
  readonly cutAlready: readonly CutLine[]
  /** Boards that were bought and are sawn, beside the plan. */
  readonly sawn: readonly StockCount[]
  /** Joints within runs that are longer than a length of their stock: couplings, or bells of a drain. */
  readonly joints: number
}
