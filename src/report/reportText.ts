import { heading, tableOf, words, type Piece } from '../sheets/piece'
import { onOneLine } from '../sheets/textTable'
import { piecesText } from '../sheets/sheetText'
import { thousands } from '../units/thousands'
import { type Failing, failWords } from './failing'
import type { Section } from './fields'

/** The bay's one row as a list of names and words. */
const bayText = ({ table }: Section): string => {
  const [row] = table.rows
  const names = table.columns.map(({ title }) => title)
  const wide = Math.max(...names.map(({ length }) => length))
  return names
    .flatMap((name, index) => {
      const text = onOneLine(row?.cells[index]?.text ?? '')
      return text === '' ? [] : [`${name.padEnd(wide)}  ${text}\n`]
    })
    .join('')
}

/** Tables without a row say nothing on a terminal, but for the findings: that there is none is worth a word. */
const sectionPieces = ({ table, onTerminal }: Section): readonly Piece[] => {
  if (onTerminal === undefined) return []
  if (table.rows.length > 0) return [tableOf(onTerminal)]
  return table.id === 'findings' ? [words('Findings: none.')] : []
}

const leftOut = (sections: readonly Section[]): string =>
  sections
    .filter(({ onTerminal, table }) => onTerminal === undefined && table.rows.length > 0)
    .map(({ table }) => `${table.id} (${thousands(table.rows.length)} rows)`)
    .join(', ')

/** The report for a terminal, at most 96 letters across; what is only for programs is named at the end. */
export const reportText = (sections: readonly Section[], failing: Failing): string => {
  const [bay, ...rest] = sections
  const more = leftOut(rest)
  return [
    piecesText([heading('Kerf & Fall: the bay in numbers')]),
    bay ? bayText(bay) : '',
    piecesText([words(failWords(failing)), ...rest.flatMap(sectionPieces)]),
    ...(more === ''
      ? []
      : [piecesText([words(`With --format json or csv there is also: ${more}.`, 'note')])]),
  ].join('\n')
}
