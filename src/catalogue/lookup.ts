/**
 * A finder of rows by name. It throws a RangeError on an unknown name: names come from the schema's own choices,
 * so a wrong one is a programmer's mistake, never a builder's.
 */
export const finder = <Row>(
  noun: string,
  rows: readonly Row[],
  nameOf: (row: Row) => string,
): ((name: string) => Row) => {
  const byName = new Map(rows.map((row) => [nameOf(row), row]))
  return (name) => {
    const row = byName.get(name)
    if (row === undefined)
      throw new RangeError(`The catalogue has no ${noun} "${name}"; it has ${[...byName.keys()].join(', ')}.`)
    return row
  }
}

/** The source of a row that every builder knows and nobody published. */
export const COMMON_PRACTICE = 'common practice, no source'
