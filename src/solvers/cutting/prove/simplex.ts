/*
 * A primal simplex for covering: least sum of cost x count over columns, so that every need row has at least what it needs and every
 * limit row at most what it allows. It keeps the inverse of its basis whole, which is the quickest for some hundred rows. It runs
 * in floating point and decides nothing: its prices are rounded and checked in whole numbers by whoever asks (relaxation.ts).
 *
 * Need rows come first. Every row has a column of its own to begin with: what is missing of a need, at a high cost, or what is
 * spare of a limit.
 */

export interface Column {
  readonly cost: number
  readonly rows: readonly number[]
  readonly amounts: readonly number[]
}

export interface Simplex {
  readonly needs: number
  /** The right side as it is, and, moved a little so that no two ways out of a corner tie, as it is worked with. */
  readonly right: Float64Array
  readonly moved: Float64Array
  readonly missingCost: readonly number[]
  /** Of each row: the column of the list, or -1 - row for what is missing or spare, or -1 - size - row for a surplus. */
  readonly basis: Int32Array
  /** Row by row. */
  readonly inverse: Float64Array
  readonly level: Float64Array
  /** What one more of a row's right side would cost; negative for limits. */
  readonly prices: Float64Array
  pivots: number
}

/** Costs are compared, and levels held for nothing, within this share of the greatest cost or of 1. */
const CLOSE = 1e-9
const LEAST_PIVOT = 1e-8
const MOVE = 1e-7
/** Rounding of some hundred pivots is harmless; then the inverse is made anew. */
const PIVOTS_UNTIL_ANEW = 150

/** Between 0.5 and 1.5, another for each row: multiples of the golden section, which never repeat. */
const wobble = (row: number): number => 0.5 + (((row + 1) * 0.618_033_988_749_895) % 1)

export const simplexOf = (
  needs: readonly number[],
  limits: readonly number[],
  missingCost: readonly number[],
): Simplex => {
  const size = needs.length + limits.length
  const right = Float64Array.from([...needs, ...limits])
  const moved = right.map((each, row) => each + MOVE * wobble(row))
  const inverse = new Float64Array(size * size)
  const prices = new Float64Array(size)
  for (let row = 0; row < size; row += 1) {
    inverse[row * size + row] = 1
    prices[row] = missingCost[row] ?? 0
  }
  const basis = Int32Array.from({ length: size }, (_, row) => -1 - row)
  return {
    needs: needs.length,
    right,
    moved,
    missingCost,
    basis,
    inverse,
    level: moved.slice(),
    prices,
    pivots: 0,
  }
}

/** The column of a basis index: rows and amounts. */
const columnAt = (index: number, columns: readonly Column[], { right, missingCost }: Simplex): Column => {
  const listed = columns[index]
  if (listed !== undefined) return listed
  const size = right.length
  const own = -1 - index
  return own < size
    ? { cost: missingCost[own] ?? 0, rows: [own], amounts: [1] }
    : { cost: 0, rows: [own - size], amounts: [-1] }
}

const gainOf = ({ cost, rows, amounts }: Column, prices: Float64Array): number => {
  let gain = -cost
  for (let i = 0; i < rows.length; i += 1) gain += (amounts[i] ?? 0) * (prices[rows[i] ?? 0] ?? 0)
  return gain
}

/** The index of the column that gains most by coming in, and its gain. */
const entering = (
  columns: readonly Column[],
  simplex: Simplex,
  least: number,
): readonly [number, number] | undefined => {
  const { prices, needs } = simplex
  const size = prices.length
  let best = least
  let index: number | undefined
  for (let i = 0; i < columns.length; i += 1) {
    const column = columns[i]
    const gain = column === undefined ? 0 : gainOf(column, prices)
    if (gain > best) [best, index] = [gain, i]
  }
  for (let row = 0; row < size; row += 1) {
    const price = prices[row] ?? 0
    // A surplus gains where a need's price is negative, what is spare of a limit where its price is positive.
    const gain = row < needs ? -price : price
    if (gain > best) [best, index] = [gain, row < needs ? -1 - size - row : -1 - row]
  }
  return index === undefined ? undefined : [index, best]
}

/** The inverse times a column. */
const rise = ({ rows, amounts }: Column, { inverse, level }: Simplex): Float64Array => {
  const size = level.length
  const result = new Float64Array(size)
  for (let row = 0; row < size; row += 1) {
    let sum = 0
    for (let i = 0; i < rows.length; i += 1)
      sum += (inverse[row * size + (rows[i] ?? 0)] ?? 0) * (amounts[i] ?? 0)
    result[row] = sum
  }
  return result
}

const leaving = (rises: Float64Array, { level }: Simplex): number => {
  let best = Infinity
  let leaves = -1
  for (let row = 0; row < level.length; row += 1) {
    const rate = rises[row] ?? 0
    if (rate < LEAST_PIVOT) continue
    const ratio = Math.max(0, level[row] ?? 0) / rate
    if (ratio < best) [best, leaves] = [ratio, row]
  }
  return leaves
}

const pivot = (simplex: Simplex, row: number, rises: Float64Array, gain: number): void => {
  const { inverse, level, prices } = simplex
  const size = level.length
  const by = 1 / (rises[row] ?? 1)
  const start = row * size
  for (let i = 0; i < size; i += 1) inverse[start + i] = (inverse[start + i] ?? 0) * by
  level[row] = (level[row] ?? 0) * by
  for (let other = 0; other < size; other += 1) {
    const rate = rises[other] ?? 0
    if (other === row || rate === 0) continue
    const at = other * size
    for (let i = 0; i < size; i += 1)
      inverse[at + i] = (inverse[at + i] ?? 0) - rate * (inverse[start + i] ?? 0)
    level[other] = (level[other] ?? 0) - rate * (level[row] ?? 0)
  }
  for (let i = 0; i < size; i += 1) prices[i] = (prices[i] ?? 0) - gain * (inverse[start + i] ?? 0)
}

/** The inverse times a right side. */
const solved = ({ inverse, level }: Simplex, right: Float64Array): Float64Array => {
  const size = level.length
  return Float64Array.from({ length: size }, (_, row) => {
    let sum = 0
    for (let i = 0; i < size; i += 1) sum += (inverse[row * size + i] ?? 0) * (right[i] ?? 0)
    return sum
  })
}

/** Brings every column of the basis in once more, into a fresh inverse: the greatest pivot of each first. */
const makeAnew = (columns: readonly Column[], simplex: Simplex): void => {
  const { inverse, level, prices, basis, moved } = simplex
  const size = level.length
  const members = [...basis].map((index) => [index, columnAt(index, columns, simplex)] as const)
  inverse.fill(0)
  for (let row = 0; row < size; row += 1) inverse[row * size + row] = 1
  const isFree = Array.from({ length: size }, () => true)
  for (const [index, column] of members) {
    const rises = rise(column, simplex)
    let row = -1
    for (let i = 0; i < size; i += 1)
      if (isFree[i] === true && (row < 0 || Math.abs(rises[i] ?? 0) > Math.abs(rises[row] ?? 0))) row = i
    isFree[row] = false
    basis[row] = index
    pivot(simplex, row, rises, 0)
  }
  level.set(solved(simplex, moved))
  prices.fill(0)
  for (let row = 0; row < size; row += 1) {
    const { cost } = columnAt(basis[row] ?? 0, columns, simplex)
    if (cost !== 0)
      for (let i = 0; i < size; i += 1) prices[i] = (prices[i] ?? 0) + cost * (inverse[row * size + i] ?? 0)
  }
}

/**
 * Goes on from where the simplex stands until no column of the list gains more than a share of 1e-9 of `greatestCost`, or until
 * `most` steps are done. Columns may be added at the end of the list between two calls. Returns the steps done.
 */
export const improve = (
  simplex: Simplex,
  columns: readonly Column[],
  greatestCost: number,
  most: number,
): number => {
  for (let steps = 0; steps < most; steps += 1) {
    const found = entering(columns, simplex, CLOSE * greatestCost)
    if (found === undefined) return steps
    const [index, gain] = found
    const rises = rise(columnAt(index, columns, simplex), simplex)
    const row = leaving(rises, simplex)
    if (row < 0) return steps
    pivot(simplex, row, rises, gain)
    simplex.basis[row] = index
    simplex.pivots += 1
    if (simplex.pivots % PIVOTS_UNTIL_ANEW === 0) makeAnew(columns, simplex)
  }
  return most
}

/** How often each column of the list is used, for the right side as it is; columns that are not used are left out. */
export const usedColumns = (simplex: Simplex): (readonly [index: number, count: number])[] => {
  const counts = solved(simplex, simplex.right)
  const used: (readonly [number, number])[] = []
  for (const [row, index] of simplex.basis.entries()) {
    const count = counts[row] ?? 0
    if (index >= 0 && count > CLOSE) used.push([index, count])
  }
  return used
}

/** How much of the needs nothing covers. */
export const missingOf = (simplex: Simplex): number => {
  const counts = solved(simplex, simplex.right)
  let missing = 0
  for (const [row, index] of simplex.basis.entries())
    if (index < 0 && -1 - index < simplex.needs) missing += Math.max(0, counts[row] ?? 0)
  return missing
}
