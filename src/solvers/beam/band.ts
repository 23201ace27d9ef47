/** How far from the diagonal a row reaches: over a hinge from a sag to the slope at the next place. */
export const REACH = 4

const WIDTH = REACH + 1

/** A symmetric matrix whose rows reach no further than `REACH` to the left; entry (i, j <= i) stands at `spot(i, j)`. */
export const bandOf = (rows: number): Float64Array => new Float64Array(rows * WIDTH)

const spot = (i: number, j: number): number => i * WIDTH + i - j

export const addAt = (band: Float64Array, i: number, j: number, value: number): void => {
  const at = i >= j ? spot(i, j) : spot(j, i)
  band[at] = (band[at] ?? 0) + value
}

/** Makes a row stand alone, so that its unknown is what stands on the right. */
export const fixRow = (band: Float64Array, rows: number, fixed: number): void => {
  for (let j = Math.max(0, fixed - REACH); j < fixed; j += 1) band[spot(fixed, j)] = 0
  for (let i = fixed + 1; i <= Math.min(rows - 1, fixed + REACH); i += 1) band[spot(i, fixed)] = 0
  band[spot(fixed, fixed)] = 1
}

const entry = (band: Float64Array, i: number, j: number): number => band[spot(i, j)] ?? 0

/** L D L^T in place: D on the diagonal, L below it. The matrix must be positive definite. */
export const factor = (band: Float64Array, rows: number): void => {
  for (let i = 0; i < rows; i += 1) {
    const first = Math.max(0, i - REACH)
    for (let j = first; j < i; j += 1) {
      let sum = entry(band, i, j)
      for (let k = Math.max(first, j - REACH); k < j; k += 1) sum -= entry(band, i, k) * entry(band, j, k)
      band[spot(i, j)] = sum // still times D of column j
    }
    let pivot = entry(band, i, i)
    for (let j = first; j < i; j += 1) {
      const scaled = entry(band, i, j)
      const share = scaled / entry(band, j, j)
      pivot -= scaled * share
      band[spot(i, j)] = share
    }
    band[spot(i, i)] = pivot
  }
}

/** Solves in place with a factored matrix. */
export const substitute = (band: Float64Array, right: Float64Array): void => {
  const rows = right.length
  for (let i = 0; i < rows; i += 1) {
    let sum = right[i] ?? 0
    for (let j = Math.max(0, i - REACH); j < i; j += 1) sum -= entry(band, i, j) * (right[j] ?? 0)
    right[i] = sum
  }
  for (let i = rows - 1; i >= 0; i -= 1) {
    let sum = (right[i] ?? 0) / entry(band, i, i)
    const end = Math.min(rows - 1, i + REACH)
    for (let k = i + 1; k <= end; k += 1) sum -= entry(band, k, i) * (right[k] ?? 0)
    right[i] = sum
  }
}
