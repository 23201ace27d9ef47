import { strToU8, Zip, ZipDeflate } from 'fflate'
import type { Page } from '../../drawing/page'
import { writeLayout } from '../../layout/file'
import { failingOf, USUAL_FAILS } from '../../report/failing'
import { type FolderOfSet, readMe } from '../../report/readMe'
import { reportJson } from '../../report/reportJson'
import { reportOf, tablesOf } from '../../report/report'
import { pageFileName, plainName, sheetFileStem } from '../../sheets/paperFileNames'
import { pagesOf } from '../../sheets/pagesOf'
import { optionsIn, type PaperSet, planFor } from '../../sheets/paperSet'
import { tablesIn } from '../../sheets/piece'
import type { Sheet } from '../../sheets/sheet'
import { pageFiles, tableFiles } from '../../sheets/sheetFiles'
import type { Units } from '../../units/length'
import { isDrawing, pageDxf } from './sheetDxf'

/** A set of papers that is to be packed; its units are those of the report too. */
export interface PackedSet extends PaperSet {
  readonly sheets: readonly Sheet[]
  /** Makes a page a PNG picture; without it there are none. */
  readonly picture?: (page: Page) => Promise<Uint8Array>
}

/** Told before each sheet; `done` of `of` are packed. */
export interface PackStep {
  readonly title: string
  readonly done: number
  readonly of: number
}

/** The first day that a zip can name, by the clock on the wall wherever it is packed: the same set is the same bytes. */
const SOME_DAY = new Date(1980, 0, 1)

interface PackedFile {
  readonly name: string
  readonly bytes: Uint8Array
}

const words = (name: string, text: string): PackedFile => ({ name, bytes: strToU8(text) })

/** Takes files one by one, so that the work is spread over the sheets, and gives them back as one. */
const packer = () => {
  const chunks: Uint8Array[] = []
  let trouble: Error | undefined
  const zip = new Zip((error, chunk) => {
    if (error) trouble = error
    else chunks.push(chunk)
  })
  return {
    add: ({ name, bytes }: PackedFile): void => {
      const file = new ZipDeflate(name, { level: 6 })
      file.mtime = SOME_DAY
      zip.add(file)
      file.push(bytes, true)
    },
    end: (): Uint8Array<ArrayBuffer> => {
      zip.end()
      if (trouble) throw trouble
      const all = new Uint8Array(chunks.reduce((sum, { length }) => sum + length, 0))
      let at = 0
      for (const chunk of chunks) {
        all.set(chunk, at)
        at += chunk.length
      }
      return all
    },
  }
}

const drawings = (stem: string, pages: readonly Page[], units: Units): PackedFile[] =>
  pages.flatMap((page, index) =>
    isDrawing(page) ? [words(pageFileName(stem, index + 1, pages.length, '.dxf'), pageDxf(page, units))] : [],
  )

/** A page a step: whoever walks the steps may stop between two of them. */
async function* pictures(
  stem: string,
  pages: readonly Page[],
  picture: PackedSet['picture'],
  step: PackStep,
): AsyncGenerator<PackStep, PackedFile[]> {
  const made: PackedFile[] = []
  if (picture === undefined) return made
  for (const [index, page] of pages.entries()) {
    yield step
    made.push({ name: pageFileName(stem, index + 1, pages.length, '.png'), bytes: await picture(page) })
  }
  return made
}

interface SheetFiles {
  readonly pages: number
  readonly files: readonly PackedFile[]
}

/** All that one sheet comes to. */
async function* filesOf(sheet: Sheet, set: PackedSet, step: PackStep): AsyncGenerator<PackStep, SheetFiles> {
  const options = optionsIn(sheet, set)
  const stem = sheetFileStem(sheet, options.issue)
  const pages = pagesOf(sheet, set.plan, options)
  const tables = tablesIn(sheet.pieces(set.plan, options))
  return {
    pages: pages.length,
    files: [
      ...pageFiles(stem, pages).map(({ name, text }) => words(name, text)),
      ...(yield* pictures(stem, pages, set.picture, step)),
      ...tableFiles(stem, tables).map(({ name, text }) => words(name, text)),
      ...drawings(stem, pages, options.units),
    ],
  }
}

/** `kestrel-bend-farm-house-2-issue-3`: what the set is called, and the one folder that it unpacks to. */
export const setName = (title: string, issue: string): string => {
  const number = plainName(issue)
  return `${plainName(title) || 'bay'}-${/^\d/.test(number) ? 'issue-' : ''}${number || 'draft'}`.toLowerCase()
}

/**
 * Packs a set of papers as one zip, a sheet a step: pages, tables and drawings of each in a folder of its own, the layout, the
 * report and a word on what is what. Whoever walks the steps may stop between two of them. The same set gives the same bytes.
 */
export async function* crewZip(set: PackedSet): AsyncGenerator<PackStep, Uint8Array<ArrayBuffer>> {
  const { plan, sheets, units, issue, dateText } = set
  const { layout } = plan.now
  const root = setName(layout.title, issue)
  const zip = packer()
  const folders: FolderOfSet[] = []
  for (const [index, sheet] of sheets.entries()) {
    const step = { title: sheet.title, done: index, of: sheets.length + 1 }
    yield step
    const plan = yield* planFor(sheet, set, sheets, step)
    const { pages, files } = yield* filesOf(sheet, { ...set, plan }, step)
    if (files.length === 0) continue
    const folder = `${String(folders.length + 1).padStart(2, '0')}-${sheet.code}-${sheet.id}`
    folders.push({ folder, sheet, pages })
    for (const { name, bytes } of files) zip.add({ name: `${root}/${folder}/${name}`, bytes })
  }
  yield { title: 'The plan in numbers', done: sheets.length, of: sheets.length + 1 }
  const [layoutFile, reportFile] = [
    `${plainName(layout.title).toLowerCase() || 'bay'}.bay.json`,
    'report.json',
  ]
  const report = reportJson(tablesOf(reportOf(plan.now, units)), failingOf(plan.now, USUAL_FAILS))
  zip.add(words(`${root}/${layoutFile}`, writeLayout(layout)))
  zip.add(words(`${root}/${reportFile}`, report))
  const about = readMe({ title: layout.title, issue, dateText, folders, layoutFile, reportFile })
  zip.add(words(`${root}/README.txt`, about))
  return zip.end()
}
