import type { Table } from '../model/table'
import { heading, tableOf, words } from '../sheets/piece'
import { piecesText } from '../sheets/sheetText'
import { type Answer, refusal } from './answer'
import type { DiffCommand } from './arguments'
import type { Section } from './fields'
import { opened, type LayoutText } from './opened'
import { jsonText, reportHead, valuesOf } from './reportJson'
import { tablesOf } from './report'
import { differenceOf } from './tables/difference'
import { type Told, toldOf } from './told'

const isAlike = (tables: readonly Table[]): boolean => tables.every(({ rows }) => rows.length === 0)

const namesOf = (before: LayoutText, after: LayoutText, was: Told, is: Told) => ({
  before: { file: before.name, title: was.plan.layout.title },
  after: { file: after.name, title: is.plan.layout.title },
})

type Names = ReturnType<typeof namesOf>

const differenceJson = (names: Names, tables: readonly Table[]): string =>
  jsonText({
    ...reportHead('difference'),
    ...names,
    isAlike: isAlike(tables),
    ...Object.fromEntries(tables.map((table) => [table.id, table.rows.map((row) => valuesOf(table, row))])),
  })

const differenceText = ({ before, after }: Names, sections: readonly Section[]): string =>
  piecesText([
    heading('Kerf & Fall: what differs'),
    words(`From ${before.title} (${before.file}) to ${after.title} (${after.file}).`),
    ...(isAlike(tablesOf(sections)) ? [words('Nothing differs.')] : []),
    ...sections.flatMap(({ onTerminal }) =>
      onTerminal && onTerminal.rows.length > 0 ? [tableOf(onTerminal)] : [],
    ),
  ])

/** What differs from one layout file to another; a difference fails nothing. */
export const diffAnswer = async (
  { format, out, units }: DiffCommand,
  before: LayoutText,
  after: LayoutText,
): Promise<Answer> => {
  const [first, second] = [await opened(before), await opened(after)]
  if (!first.ok) return refusal(first.sentence)
  if (!second.ok) return refusal(second.sentence)
  const read = units ?? second.plan.layout.settings.units
  const [was, is] = [toldOf(first.plan, read), toldOf(second.plan, read)]
  const sections = differenceOf(was, is)
  const names = namesOf(before, after, was, is)
  const [text, ending] =
    format === 'json'
      ? [differenceJson(names, tablesOf(sections)), '.json']
      : [differenceText(names, sections), '.txt']
  const files = [{ name: `difference${ending}`, text }]
  return out === undefined
    ? { print: text, files: [], note: '', code: 0 }
    : { print: '', files, note: '', code: 0 }
}
