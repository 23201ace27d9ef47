import { FileImage, Printer, Table2 } from 'lucide-react'
import { useState } from 'react'
import type { Page } from '../../../drawing/page'
import { pageSvg } from '../../../drawing/svg'
import { paperTheme } from '../../../drawing/theme'
import { pageFileName, sheetFileStem, tableFileName } from '../../../sheets/paperFileNames'
import { tablesIn } from '../../../sheets/piece'
import type { Sheet } from '../../../sheets/sheet'
import { tableCsv } from '../../../sheets/sheetCsv'
import { download } from '../../files/download'
import { exportPng } from '../../files/exportPng'
import { printPages } from '../../files/printPages'
import { optionsIn, type PaperSet } from './paperSet'

interface SheetDeedsProps {
  readonly sheet: Sheet
  readonly pages: readonly Page[]
  readonly set: PaperSet
}

/** Enough that a 2 mm letter is crisp on paper. */
const DPI = 200

/** Saves one file a page or a table; a browser asks once whether it may save several. */
const saveEach = (files: readonly { readonly name: string; readonly blob: Blob }[]): void => {
  for (const { name, blob } of files) download(blob, name)
}

/** What becomes of one sheet: paper, pictures, or its tables for a spreadsheet. */
export function SheetDeeds({ sheet, pages, set }: SheetDeedsProps) {
  const [refused, setRefused] = useState('')
  const stem = sheetFileStem(sheet, set.issue)
  const tables = tablesIn(sheet.pieces(set.plan, optionsIn(sheet, set)))

  const savePng = async () => {
    setRefused('')
    for (const [index, page] of pages.entries()) {
      const made = await exportPng(page, DPI)
      if (!made.ok) return setRefused(made.sentence)
      download(made.blob, pageFileName(stem, index + 1, pages.length, '.png'))
    }
  }
  const saveSvg = () =>
    saveEach(
      pages.map((page, index) => ({
        name: pageFileName(stem, index + 1, pages.length, '.svg'),
        blob: new Blob([pageSvg(page, paperTheme)], { type: 'image/svg+xml' }),
      })),
    )
  const saveCsv = () =>
    saveEach(
      tables.map((table) => ({
        name: tableFileName(stem, table.id),
        blob: new Blob([tableCsv(table)], { type: 'text/csv;charset=utf-8' }),
      })),
    )

  const isEmpty = pages.length === 0
  return (
    <>
      <button disabled={isEmpty} onClick={() => void printPages(pages)}>
        <Printer size={18} /> Print or PDF
      </button>
      <button disabled={isEmpty} onClick={() => void savePng()}>
        <FileImage size={18} /> PNG
      </button>
      <button disabled={isEmpty} onClick={saveSvg}>
        <FileImage size={18} /> SVG
      </button>
      <button disabled={tables.length === 0} onClick={saveCsv}>
        <Table2 size={18} /> CSV
      </button>
      {refused !== '' && <p role="alert">{refused}</p>}
    </>
  )
}
