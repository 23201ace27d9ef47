import { chosenOptions } from '../sheets/chosenOptions'
import { pagesOf } from '../sheets/pagesOf'
import { sheetFileStem } from '../sheets/paperFileNames'
import { tablesIn, type Piece } from '../sheets/piece'
import type { PlanOnPaper, Sheet, SheetOptions } from '../sheets/sheet'
import { CHANGE_NOTE, withStates } from '../sheets/sheetStates'
import { sheets } from '../sheets/index'
import { tableCsv } from '../sheets/sheetCsv'
import { pageFiles, tableFiles, type TextFile } from '../sheets/sheetFiles'
import { piecesText } from '../sheets/sheetText'
import { type Answer, refusal } from './answer'
import type { ReportCommand } from './arguments'
import { issueWords } from '../layout/issues'
import { sheetJson } from './sheetJson'
import { chosenTable } from './tableChoice'

type Asked = Pick<ReportCommand, 'format' | 'out' | 'table' | 'units' | 'paper'>

const printed = (print: string): Answer => ({ print, files: [], note: '', code: 0 })
const written = (files: readonly TextFile[]): Answer => ({ print: '', files, note: '', code: 0 })

const svgAnswer = (
  sheet: Sheet,
  plan: PlanOnPaper,
  options: SheetOptions,
  out: string | undefined,
): Answer => {
  const files = pageFiles(sheetFileStem(sheet, options.issue), pagesOf(sheet, plan, options))
  if (out !== undefined) return written(files)
  const [first, more] = files
  if (first === undefined)
    return refusal(`This plan needs no ${sheet.title.toLowerCase()}, so there is no page.`)
  return more === undefined
    ? printed(first.text)
    : refusal(
        `The ${sheet.title.toLowerCase()} has ${files.length} pages; name a folder for them with --out.`,
      )
}

const csvAnswer = (sheet: Sheet, pieces: readonly Piece[], stem: string, { out, table }: Asked): Answer => {
  const chosen = chosenTable(tablesIn(pieces), table, `the ${sheet.title.toLowerCase()}`, out !== undefined)
  if (!chosen.ok) return refusal(chosen.sentence)
  if (out === undefined) return printed(chosen.tables.map(tableCsv).join(''))
  return written(tableFiles(stem, chosen.tables))
}

const textOf = (
  title: string,
  sheet: Sheet,
  pieces: readonly Piece[],
  { issue, dateText }: SheetOptions,
): string => {
  const head = piecesText([
    {
      as: 'heading',
      level: 1,
      text: `${title}: ${sheet.title} (${sheet.code}), held by: ${sheet.reader.toLowerCase()}`,
    },
    { as: 'words', tone: 'plain', text: `Issue ${issue}, ${dateText}.` },
  ])
  return `${head}\n${pieces.length === 0 ? 'This plan needs no such paper.\n' : piecesText(pieces)}`
}

/** One paper in the format that is asked for. */
export const sheetAnswer = (sheet: Sheet, bare: PlanOnPaper, dateText: string, asked: Asked): Answer => {
  const { format, out, units, paper } = asked
  const { layout } = bare.now
  const optionsOf = (each: Sheet): SheetOptions =>
    chosenOptions(each, layout, { dateText, issue: issueWords(layout), units, paper })
  const options = optionsOf(sheet)
  const plan = sheet.id === CHANGE_NOTE ? withStates(bare, sheets, optionsOf) : bare
  if (format === 'svg') return svgAnswer(sheet, plan, options, out)
  const pieces = sheet.pieces(plan, options)
  const stem = sheetFileStem(sheet, options.issue)
  if (format === 'csv') return csvAnswer(sheet, pieces, stem, asked)
  const { title } = layout
  const text =
    format === 'json' ? sheetJson(title, sheet, pieces, options) : textOf(title, sheet, pieces, options)
  return out === undefined
    ? printed(text)
    : written([{ name: `${stem}${format === 'json' ? '.json' : '.txt'}`, text }])
}
