import type { Page } from '../drawing/page'
import { pageSvg } from '../drawing/svg'
import { paperTheme } from '../drawing/theme'
import type { Table } from '../model/table'
import { pageFileName, tableFileName } from './paperFileNames'
import { tableCsv } from './sheetCsv'

/** A file of words, by its name alone. */
export interface TextFile {
  readonly name: string
  readonly text: string
}

/** A paper may have a table of one kind for each drain or zone: their files are numbered. */
const numbered = (name: string, index: number): string =>
  index === 0 ? name : name.replace(/\.csv$/, `-${index + 1}.csv`)

/** Every table as a file for spreadsheets; no two have one name. */
export const tableFiles = (stem: string, tables: readonly Table[]): readonly TextFile[] => {
  const taken = new Map<string, number>()
  return tables.map((table) => {
    const name = tableFileName(stem, table.id)
    const index = taken.get(name) ?? 0
    taken.set(name, index + 1)
    return { name: numbered(name, index), text: tableCsv(table) }
  })
}

/** Every page as a picture of its true size. */
export const pageFiles = (stem: string, pages: readonly Page[]): readonly TextFile[] =>
  pages.map((page, index) => ({
    name: pageFileName(stem, index + 1, pages.length, '.svg'),
    text: pageSvg(page, paperTheme),
  }))
