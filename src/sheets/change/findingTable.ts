import { sentence } from '../../checks/words'
import type { FindingChange } from '../../evaluate/compare/findings'
import { said, type Table } from '../../model/table'
import type { Told } from './told'

const SINCE = { new: 'New', gone: 'Gone', changed: 'Another state' } as const

const stateSaid = (change: FindingChange): string =>
  change.kind === 'changed' ? `${change.was.state} → ${change.finding.state}` : change.finding.state

/** Warnings that one plan has and the other has not, or in another state. */
export const findingTable = ({ difference, write }: Told): Table => ({
  id: 'findings',
  title: 'Warnings that came and went',
  columns: [
    { key: 'since', title: 'Since', unit: 'text' },
    { key: 'state', title: 'State', unit: 'text', isMain: true },
    { key: 'words', title: 'Warning', unit: 'text' },
  ],
  rows: difference.findings.map((change) => ({
    key: change.finding.key,
    cells: [said(SINCE[change.kind]), said(stateSaid(change)), said(sentence(change.finding, write))],
  })),
})
