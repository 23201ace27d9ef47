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
  /** No plan can buy less than this, mm. */
  readonly boundMm: number
  /** Longer than any stock: no board makes them. */
  readonly tooLong: readonly CutLine[]
}
