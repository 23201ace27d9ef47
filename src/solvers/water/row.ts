/** A row of whole numbers that grows; what lies in `values` beyond `length` means nothing. */
export interface Row {
  values: Int32Array
  length: number
}

/** An empty row with room for so many. */
export const rowOf = (room: number): Row => ({ values: new Int32Array(Math.max(8, room)), length: 0 })

const grow = (row: Row): void => {
  const values = new Int32Array(2 * row.values.length)
  values.set(row.values)
  row.values = values
}

export const push = (row: Row, value: number): void => {
  if (row.length === row.values.length) grow(row)
  row.values[row.length] = value
  row.length += 1
}

/** What the row holds, in an array of its own. */
export const trimmed = ({ values, length }: Row): Int32Array => values.slice(0, length)
