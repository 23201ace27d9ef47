import type { PartId } from '../../model/ids'
import { type Evenness, evennessOf } from '../../solvers/water/uniformity'
import type { WaterInputs } from './plan'
import { planOf } from './planOf'
import { isReached } from './readRows'
import { type Solved, solvedBay } from './solved'
import { AS_DRAWN, type Cause, causes, type WhatIf } from './whatIf'

/**
 * What one cause does to evenness, found by switching it alone off and solving the bay again.
 *
 *     share = 1 - variation without it / variation as drawn
 *
 * Shares do not add up to 1. Two causes may hide each other (a main that is high where its heads are low, trim valves
 * that burn what a main would give too much): then switching one off makes matters worse and its share is negative. Or
 * they may feed each other, since a tube under less head loses more by the same level error.
 */
export interface Ruling {
  readonly cause: Cause
  /** Of the coefficient of variation of the towers' flows. */
  readonly share: number
  readonly variationWithout: number
  /** (most - least) / most with the cause switched off. */
  readonly spreadWithout: number
}

/** What makes some towers uneven, the greatest share first. */
export interface Governs {
  readonly variation: number
  readonly spread: number
  readonly rulings: readonly Ruling[]
  /** 1 less the sum of all shares: what causes do only together, or against each other. */
  readonly interactions: number
}

export interface BayGoverns {
  readonly bay: Governs
  readonly rows: ReadonlyMap<PartId, Governs>
}

const STILL: Pick<Evenness, 'variation' | 'spread'> = { variation: 0, spread: 0 }

type Measures = Pick<Evenness, 'variation' | 'spread'>

/** Less variation than any cup and watch would show: there is nothing to share out. */
const EVEN_VARIATION = 1e-4

/** What the solver's tolerance alone may make of no share at all. */
const NOTHING = 1e-5

const governsBy = (drawn: Measures, without: readonly (readonly [Cause, Measures])[]): Governs => {
  const shareOf = ({ variation }: Measures) => {
    const share = drawn.variation > EVEN_VARIATION ? 1 - variation / drawn.variation : 0
    return Math.abs(share) < NOTHING ? 0 : share
  }
  const rulings = without.map(([cause, measures]): Ruling => ({
    cause,
    share: shareOf(measures),
    variationWithout: measures.variation,
    spreadWithout: measures.spread,
  }))
  return {
    variation: drawn.variation,
    spread: drawn.spread,
    rulings: rulings.toSorted((a, b) => b.share - a.share),
    interactions: 1 - rulings.reduce((sum, { share }) => sum + share, 0),
  }
}

interface Measured {
  readonly bay: Measures
  readonly rows: ReadonlyMap<PartId, Measures>
}

const measured = (solved: Solved): Measured => {
  const rows = solved.plan.rows.filter((row) => isReached(solved, row))
  const flowsOf = ({ mouth, piece }: (typeof rows)[number]) =>
    solved.solution.mouthM3S.subarray(mouth, mouth + piece.mouths.from.length)
  const all = new Float64Array(rows.reduce((sum, row) => sum + flowsOf(row).length, 0))
  let at = 0
  for (const row of rows) {
    all.set(flowsOf(row), at)
    at += flowsOf(row).length
  }
  return {
    bay: evennessOf(all) ?? STILL,
    rows: new Map(rows.map((row) => [row.built.part, evennessOf(flowsOf(row)) ?? STILL])),
  }
}

/**
 * What makes the bay, and each of its rows, uneven. As many solutions as there are causes, and one. Undefined where the
 * bay has no water or can't be solved.
 */
export const governs = (inputs: WaterInputs, whatIf: WhatIf = AS_DRAWN): BayGoverns | undefined => {
  const plan = planOf(inputs)
  if (plan.rows.length === 0) return undefined
  const measure = (more: WhatIf): Measured | undefined => {
    const solved = solvedBay(plan, { ...whatIf, ...more })
    return 'sentence' in solved ? undefined : measured(solved)
  }
  const drawn = measure({})
  if (!drawn) return undefined
  const without = causes.flatMap((cause) => {
    const found = measure({ without: new Set([...(whatIf.without ?? []), cause]) })
    return found ? [[cause, found] as const] : []
  })
  const rowGoverns = (part: PartId, row: Measures) =>
    governsBy(
      row,
      without.map(([cause, { rows }]) => [cause, rows.get(part) ?? STILL]),
    )
  return {
    bay: governsBy(
      drawn.bay,
      without.map(([cause, { bay }]) => [cause, bay]),
    ),
    rows: new Map([...drawn.rows].map(([part, row]) => [part, rowGoverns(part, row)])),
  }
}
