import type { Judged } from '../evaluate/evaluation'
import { sheets } from '../sheets/index'
import { tableCsv } from '../sheets/sheetCsv'
import { type Answer, refusal } from './answer'
import type { ReportCommand } from './arguments'
import { type Failing, failingOf, failWords } from './failing'
import type { Section } from './fields'
import { type LayoutText, opened } from './opened'
import { provedOnPaper } from './proved'
import { reportJson } from './reportJson'
import { reportText } from './reportText'
import { reportOf, tablesOf } from './report'
import { sheetAnswer } from './sheetAnswer'
import { chosenTable } from './tableChoice'

const csvAnswer = (sections: readonly Section[], { out, table }: ReportCommand): Answer => {
  const chosen = chosenTable(tablesOf(sections), table, 'the report', out !== undefined)
  if (!chosen.ok) return refusal(chosen.sentence)
  if (out === undefined) return { print: chosen.tables.map(tableCsv).join(''), files: [], note: '', code: 0 }
  const files = chosen.tables.map((each) => ({ name: `${each.id}.csv`, text: tableCsv(each) }))
  return { print: '', files, note: '', code: 0 }
}

/** The pages of all papers. */
const allPages = async (plan: Judged, command: ReportCommand, dateText: string): Promise<Answer> => {
  if (command.out === undefined)
    return refusal('The pages of all papers need a folder: name one with --out, or one paper with --sheet.')
  const paper = await provedOnPaper(plan)
  const files = sheets.flatMap((sheet) => sheetAnswer(sheet, paper, dateText, command).files)
  return { print: '', files, note: '', code: 0 }
}

const bayAnswer = (plan: Judged, command: ReportCommand, failing: Failing): Answer => {
  const sections = reportOf(plan, command.units ?? plan.layout.settings.units)
  if (command.format === 'csv') return csvAnswer(sections, command)
  const [text, name] =
    command.format === 'json'
      ? [reportJson(tablesOf(sections), failing), 'report.json']
      : [reportText(sections, failing), 'report.txt']
  return command.out === undefined
    ? { print: text, files: [], note: '', code: 0 }
    : { print: '', files: [{ name, text }], note: '', code: 0 }
}

/** An answer that there is, with what fails the plan beside it. */
const withFailing = (answer: Answer, failing: Failing): Answer => {
  if (answer.code === 2) return answer
  const fails = failing.counts.length > 0
  return { ...answer, note: fails || failing.accepted > 0 ? failWords(failing) : '', code: fails ? 1 : 0 }
}

/** What a bay's layout file comes to. `today` stands on papers where no other day is asked for. */
export const reportAnswer = async (
  command: ReportCommand,
  file: LayoutText,
  today: string,
): Promise<Answer> => {
  const bay = await opened(file)
  if (!bay.ok) return refusal(bay.sentence)
  const { plan } = bay
  const failing = failingOf(plan, command.fail)
  const dateText = command.dateText ?? today
  if (command.sheet !== undefined)
    return withFailing(sheetAnswer(command.sheet, await provedOnPaper(plan), dateText, command), failing)
  const answer =
    command.format === 'svg' ? await allPages(plan, command, dateText) : bayAnswer(plan, command, failing)
  return withFailing(answer, failing)
}

export { readArguments, type ReportCommand } from './arguments'
export { helpText } from './helpText'
export { diffAnswer } from './diff'
