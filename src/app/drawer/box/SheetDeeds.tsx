import { FileImage, Printer, Ruler, Table2 } from 'lucide-react'
import { useState } from 'react'
import type { Page } from '../../../drawing/page'
import { pageFileName, sheetFileStem } from '../../../sheets/paperFileNames'
import { tablesIn } from '../../../sheets/piece'
import type { Sheet } from '../../../sheets/sheet'
import { pageFiles, tableFiles, type TextFile } from '../../../sheets/sheetFiles'
import { download } from '../../files/download'
import { exportPng, PAPER_DPI } from '../../files/exportPng'
import { printPages } from '../../files/printPages'
import { optionsIn, type PaperSet } from '../../../sheets/paperSet'
import { titleOf } from './paperSet'

interface SheetDeedsProps {
  readonly sheet: Sheet
  readonly pages: readonly Page[]
  readonly set: PaperSet
}

/** Saves one file a page or a table; a browser asks once whether it may save several. */
const saveEach = (files: readonly TextFile[], type: string): void => {
  for (const { name, text } of files) download(new Blob([text], { type }), name)
}

/** What becomes of one sheet: paper, pictures, or its tables for a spreadsheet. */
export function SheetDeeds({ sheet, pages, set }: SheetDeedsProps) {
  const [refused, setRefused] = useState('')
  const stem = sheetFileStem(sheet, set.issue)
  const tables = tablesIn(sheet.pieces(set.plan, optionsIn(sheet, set)))

  const savePng = async () => {
    setRefused('')
    for (const [index, page] of pages.entries()) {
      const made = await exportPng(page, PAPER_DPI)
      if (!made.ok) return setRefused(made.sentence)
      download(made.blob, pageFileName(stem, index + 1, pages.length, '.png'))
    }
  }
  const saveSvg = () => saveEach(pageFiles(stem, pages), 'image/svg+xml')
  const saveCsv = () => saveEach(tableFiles(stem, tables), 'text/csv;charset=utf-8')
  const saveDxf = async () => {
    setRefused('')
    const { isDrawing, pageDxf } = await import('../../files/sheetDxf')
    const drawn = pages.filter(isDrawing)
    if (drawn.length === 0) return setRefused('This sheet has no drawing to scale.')
    return saveEach(
      drawn.map((page, index) => ({
        name: pageFileName(stem, index + 1, drawn.length, '.dxf'),
        text: pageDxf(page, optionsIn(sheet, set).units),
      })),
      'image/vnd.dxf',
    )
  }

  const isEmpty = pages.length === 0
  return (
    <>
      <button disabled={isEmpty} onClick={() => void printPages(pages, titleOf(set, sheet.title))}>
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
      <button disabled={isEmpty} onClick={() => void saveDxf()}>
        <Ruler size={18} /> DXF
      </button>
      {refused !== '' && <p role="alert">{refused}</p>}
    </>
  )
}
