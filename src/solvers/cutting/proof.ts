import type { CuttingPlan } from './plan'

/**
 * What is known of the best plan of a problem. `bound` is rigorous: found in whole numbers, by prices of pieces that no board
 * on offer can beat, or by a search that left nothing out. Nothing here rests on a time limit or on rounding.
 */
export interface Proof {
  /** The best plan found: least cost, of these fewest boards, of these least length bought. */
  readonly plan: CuttingPlan
  /** No plan costs less, in the unit of `Stock.cost`. */
  readonly bound: number
  /** Which of the three aims are proved to be reached, each among the plans that reach the ones before it. */
  readonly proven: { readonly cost: boolean; readonly boards: boolean; readonly waste: boolean }
  /** Where prices of pieces alone prove the bound: whoever doubts it can check them with a knapsack of his own. */
  readonly certificate?: Certificate
}

/**
 * A price for each piece of the problem, in parts of 1 / `scale` of the cost unit, whole numbers. No board of a stock that has no
 * limit holds pieces of more worth than it costs. Boards that rules settle cost what they cost; all other pieces together are
 * worth what any plan must pay for them, less what boards of limited stocks, and rests of boards that rules have started, can hold
 * beyond their cost. The bound is that, rounded up to what the stocks' costs have in common.
 */
export interface Certificate {
  readonly prices: readonly number[]
  readonly scale: number
}

/** A linear program over whole numbers: least sum of cost x count, so that every row has at least what it needs. */
export interface IntegerProgram {
  readonly columns: readonly {
    readonly cost: number
    readonly most: number
    /** Row index and how much of it one of the column gives. */
    readonly gives: readonly (readonly [row: number, amount: number])[]
  }[]
  readonly needs: readonly number[]
}

/** A package that solves integer programs; undefined where it gave up within its limit. Counts of each column otherwise. */
export type IntegerSolver = (
  program: IntegerProgram,
) => Promise<{ readonly counts: readonly number[]; readonly isOptimal: boolean } | undefined>
