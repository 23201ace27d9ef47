import { said, type Row } from '../../model/table'

/** So many names stand in one cell; more are counted. */
const MOST_NAMES = 8

const namesSaid = (names: readonly string[]): string => {
  const more = names.length - MOST_NAMES
  return more > 1 ? `${names.slice(0, MOST_NAMES).join(', ')} and ${more} more` : names.join(', ')
}

/** Rows that say the same of several parts as one that names them all, where the first of them stood. */
export const gathered = (rows: readonly Row[]): readonly Row[] => {
  const alike = new Map<string, Row[]>()
  for (const row of rows) {
    const words = JSON.stringify(row.cells.slice(1).map(({ text }) => text))
    alike.set(words, [...(alike.get(words) ?? []), row])
  }
  return [...alike.values()].flatMap((group) => {
    const [first] = group
    if (!first || group.length === 1) return group
    const names = group.map(({ cells }) => cells[0]?.text ?? '')
    return [{ ...first, cells: [said(namesSaid(names)), ...first.cells.slice(1)] }]
  })
}
