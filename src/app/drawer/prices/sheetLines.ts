import type { ParseStepResult } from 'papaparse'
import type { SheetLine } from '../../../layout/quoteReading'

/** Larger than a price book with every cell full. */
export const LARGEST_BYTES = 4_000_000

const SEPARATORS = [',', ';', '\t'] as const

/** The sign that parts the names in the first line most often. */
const separatorOf = (text: string): string => {
  const first = text.slice(0, text.search(/\n|$/))
  const uses = (sign: string): number => first.split(sign).length - 1
  return SEPARATORS.reduce((most, sign) => (uses(sign) > uses(most) ? sign : most))
}

const breaksIn = (text: string): number => text.split('\n').length - 1

const NO_END = 'a quote mark opens in it and does not close, so this line and all behind it could not be read'

const faultOf = ({ errors }: ParseStepResult<string[]>): Pick<SheetLine, 'fault'> => {
  const [first] = errors.filter(({ type }) => type === 'Quotes')
  if (!first) return {}
  return { fault: first.code === 'MissingQuotes' ? NO_END : 'a quote mark stands in the middle of a cell' }
}

const isEmpty = (cells: readonly string[]): boolean => cells.every((cell) => cell.trim() === '')

/**
 * A sheet as lines of cells, each with the line of the file that it begins in; empty lines are left out. Cells are parted by
 * commas, semicolons or tabs, whichever the first line has most of; line breaks may be of any kind, also in quoted cells.
 */
export const sheetLines = async (text: string): Promise<readonly SheetLine[]> => {
  const { default: papa } = await import('papaparse')
  const plain = text.replace(/^\uFEFF/, '').replaceAll(/\r\n?/g, '\n')
  const lines: SheetLine[] = []
  let [at, line] = [0, 1]
  papa.parse<string[]>(plain, {
    delimiter: separatorOf(plain),
    newline: '\n',
    step: (result) => {
      if (!isEmpty(result.data)) lines.push({ line, cells: result.data, ...faultOf(result) })
      line += breaksIn(plain.slice(at, result.meta.cursor))
      at = result.meta.cursor
    },
  })
  return lines
}

/** The text of a file: UTF-8, or as older sheets save it where it is not that. */
export const textOf = (bytes: ArrayBuffer): string => {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes)
  } catch {
    return new TextDecoder('windows-1252').decode(bytes)
  }
}
