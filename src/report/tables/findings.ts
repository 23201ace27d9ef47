import { quantityWords } from '../../checks/measuredWords'
import { ruleOf } from '../../checks/index'
import { sentence } from '../../checks/words'
import type { Quantity } from '../../model/finding'
import { said } from '../../model/table'
import { stoodFindings, type Stood } from '../failing'
import { type Field, numberCell, numberField, quiet, sectionOf, textField, type Section } from '../fields'
import type { Told } from '../told'

/** A measured number with its own unit beside it: what a column of many rules is in differs from row to row. */
const quantityFields = (
  key: string,
  title: string,
  of: (stood: Stood) => Quantity,
  told: Told,
): readonly Field<Stood>[] => [
  {
    ...textField<Stood>(`${key}`, title, (stood) => quantityWords(of(stood), told.words)),
    cell: (stood) => numberCell(of(stood).value, () => quantityWords(of(stood), told.words)),
    isQuiet: true,
  },
  quiet(textField(`${key}Unit`, `${title}, unit`, (stood) => of(stood).unit)),
]

const fieldsOf = (told: Told): readonly Field<Stood>[] => {
  const { words } = told
  return [
    textField('state', 'State', ({ finding }) => finding.state),
    textField('sentence', 'What is wrong', ({ finding }) => sentence(finding, words)),
    {
      ...textField<Stood>('standing', 'Standing', () => ''),
      cell: ({ accepted }) =>
        accepted === undefined
          ? { value: 'open', text: 'open' }
          : { value: 'accepted', text: `accepted: ${accepted.reason}` },
    },
    quiet(textField('reason', 'Reason', ({ accepted }) => accepted?.reason ?? '')),
    quiet(textField('acceptedBy', 'Accepted by', ({ accepted }) => accepted?.by ?? '')),
    quiet(textField('subject', 'Subject', ({ finding }) => finding.subject)),
    quiet(textField('rule', 'Rule', ({ finding }) => finding.rule)),
    quiet(textField('ruleTitle', 'Rule in words', ({ finding }) => ruleOf(finding.rule).title)),
    quiet(textField('parts', 'Parts', ({ finding }) => finding.parts.join(' '))),
    quiet(textField('names', 'Names', ({ finding }) => finding.parts.map(words.name).join(', '))),
    ...quantityFields('measured', 'Measured', ({ finding }) => finding.measured, told),
    ...quantityFields('limit', 'Limit', ({ finding }) => finding.limit, told),
    quiet(numberField('xMm', 'East', 'mm', words.length, ({ finding }) => finding.at.x)),
    quiet(numberField('yMm', 'North', 'mm', words.length, ({ finding }) => finding.at.y)),
    quiet({ ...textField<Stood>('key', 'Key', () => ''), cell: ({ finding }) => said(finding.key) }),
  ]
}

/** All that warns, accepted or not, what must be mended first. */
export const findingsSection = (told: Told): Section =>
  sectionOf({
    id: 'findings',
    title: 'Findings',
    fields: fieldsOf(told),
    items: stoodFindings(told.plan),
    keyOf: ({ finding }) => finding.key,
  })
