import { improve, simplexOf, usedColumns } from './simplex'
import type { Column } from './simplex'

/** A weighted sum of numbers of boards and what it must come to: at least, or at most. */
export interface Row {
  readonly of: readonly number[]
  readonly value: number
}

/** Of what a sum of products is made, this share is given away for rounding: a hundred thousand times what may be lost. */
const ROUNDING_SHARE = 1e-10
const MOST_PIVOTS = 200
/** Multiples of a row beyond this are not looked for; where nothing keeps all rows, the least comes out this large. */
const GREATEST_MULTIPLE = 1e7

const scaled = (row: Row, by: number): Row => ({ of: row.of.map((each) => each / by), value: row.value / by })

/** A row in which the greatest number is 1, so that multiples of all rows are alike. */
const evened = (row: Row): Row => scaled(row, Math.max(1e-300, ...row.of.map(Math.abs)))

const columnOf = ({ of, value }: Row, sign: 1 | -1): Column => {
  const rows = [...of.keys()].filter((at) => of[at] !== 0)
  return {
    cost: -sign * value,
    rows: [...rows, of.length],
    amounts: [...rows.map((at) => sign * (of[at] ?? 0)), 1],
  }
}

/**
 * What `aim` comes to at the least, over numbers, also broken ones, that keep `least` rows, `most` rows and are at most `tops`. The
 * best multiples of the rows are found by a simplex; any multiples give a bound, so it is a bound whatever the simplex found:
 *
 *     aim >= multiples x (least rows) - multiples x (most rows) - what of these goes beyond the aim x tops
 */
export const leastBound = (
  aim: readonly number[],
  least: readonly Row[],
  most: readonly Row[],
  tops: readonly number[],
): number => {
  const wide = aim.map((_, at) => ({
    of: aim.map((_each, other) => (other === at ? 1 : 0)),
    value: tops[at] ?? 0,
  }))
  const rows = [...least.map(evened), ...[...most, ...wide].map(evened)]
  const signs = rows.map((_, i): 1 | -1 => (i < least.length ? 1 : -1))
  const columns = rows.map((row, i) => columnOf(row, signs[i] ?? 1))
  const simplex = simplexOf([], [...aim, GREATEST_MULTIPLE], [])
  improve(simplex, columns, Math.max(1e-30, ...columns.map(({ cost }) => Math.abs(cost))), MOST_PIVOTS)
  const over = aim.map((each) => -each)
  let bound = 0
  let size = 0
  for (const [index, multiple] of usedColumns(simplex)) {
    const row = rows[index]
    if (row === undefined) continue
    const signed = multiple * (signs[index] ?? 1)
    bound += signed * row.value
    size += Math.abs(signed * row.value)
    for (const [at, each] of row.of.entries()) over[at] = (over[at] ?? 0) + signed * each
  }
  for (const [at, each] of over.entries()) {
    const lost = Math.max(0, each + ROUNDING_SHARE * ((aim[at] ?? 0) + 1)) * (tops[at] ?? 0)
    bound -= lost
    size += lost
  }
  return bound - ROUNDING_SHARE * size
}
