import type { CuttingProblem } from '../solvers/cutting/problem'
import type { CutRule } from './built'

/** All pieces of one stop setting. */
export interface CutLine {
  readonly marks: readonly string[]
  readonly lengthMm: number
  readonly count: number
  readonly cut: CutRule
}

/** Boards cut alike. */
export interface Board {
  readonly stockMm: number
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
 * there can be. `share` is how much more it may cost than the cheapest, in parts of 1.
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
  /** Longest first. */
  readonly lines: readonly CutLine[]
  readonly boards: readonly Board[]
  readonly bought: readonly { readonly stockMm: number; readonly count: number }[]
  /** Sum of the pieces, and of the boards bought, mm. */
  readonly netMm: number
  readonly boughtMm: number
  readonly standing: Standing
  /** What the boards bought cost, whole cents; undefined where one of their lengths has no price. */
  readonly cents: number | undefined
  /** No plan can buy less than this, mm. */
  readonly boundMm: number
  /** Longer than any stock: no board makes them. */
  readonly tooLong: readonly CutLine[]
}
