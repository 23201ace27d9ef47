import { sentence } from '../checks/words'
import { isAlike } from '../evaluate/compare/comparePlans'
import type { FindingChange } from '../evaluate/compare/findings'
import { differenceTables } from '../sheets/change/differenceTables'
import { type Told, toldOf } from '../sheets/change/told'
import { heading, tableOf, words } from '../sheets/piece'
import { sheetWords } from '../sheets/sheetWords'
import { piecesText } from '../sheets/sheetText'
import { atSaw } from '../units/precision'
import { type Answer, refusal } from './answer'
import type { DiffCommand } from './arguments'
import { clean } from '../model/table'
import { type LayoutText, opened } from './opened'
import { reportHead } from './reportJson'

/** Two plans with what they are called. */
interface Compared {
  readonly told: Told
  readonly names: Readonly<Record<'before' | 'after', { readonly file: string; readonly title: string }>>
}

const findingJson = (change: FindingChange, { was, now, units }: Told) => ({
  key: change.finding.key,
  what: change.kind,
  was: change.kind === 'changed' ? change.was.state : null,
  state: change.finding.state,
  sentence: sentence(change.finding, sheetWords(change.kind === 'gone' ? was : now, units, atSaw)),
})

/** What is not there is null, and sums have no noise. */
const plain = (_: string, value: unknown): unknown =>
  value === undefined ? null : typeof value === 'number' ? clean(value) : value

const differenceJson = ({ told, names }: Compared): string => {
  const { difference } = told
  const findings = difference.findings.map((change) => findingJson(change, told))
  const found = {
    ...reportHead('difference'),
    ...names,
    isAlike: isAlike(difference),
    ...difference,
    findings,
  }
  return `${JSON.stringify(found, plain, 2)}\n`
}

const differenceText = ({ told, names: { before, after } }: Compared): string =>
  piecesText([
    heading('Kerf & Fall: what differs'),
    words(`From ${before.title} (${before.file}) to ${after.title} (${after.file}).`),
    ...(isAlike(told.difference) ? [words('Nothing differs.')] : []),
    ...differenceTables(told).map((table) => tableOf(table)),
  ])

/** What differs from one layout file to another; a difference fails nothing. */
export const diffAnswer = async (
  { format, out, units }: DiffCommand,
  before: LayoutText,
  after: LayoutText,
): Promise<Answer> => {
  const [was, now] = [await opened(before), await opened(after)]
  if (!was.ok) return refusal(was.sentence)
  if (!now.ok) return refusal(now.sentence)
  const compared: Compared = {
    told: toldOf(was.plan, now.plan, units ?? now.plan.layout.settings.units, atSaw),
    names: {
      before: { file: before.name, title: was.plan.layout.title },
      after: { file: after.name, title: now.plan.layout.title },
    },
  }
  const [text, ending] =
    format === 'json' ? [differenceJson(compared), '.json'] : [differenceText(compared), '.txt']
  return out === undefined
    ? { print: text, files: [], note: '', code: 0 }
    : { print: '', files: [{ name: `difference${ending}`, text }], note: '', code: 0 }
}
