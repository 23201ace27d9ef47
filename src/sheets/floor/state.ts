import type { Words } from '../../checks/context'
import { ruleOf } from '../../checks/index'
import { findingsOf } from '../../evaluate/8-checks'
import type { Evaluation } from '../../evaluate/evaluation'
import { rankOf, type Finding } from '../../model/finding'
import { type Block, gap, heading, paragraph, stacked } from '../block'
import { findingGroups, groupWords, type FindingGroup } from './findingGroups'
import { lettered, LETTERS } from '../ink'
import type { BlockAt, Pourable } from '../pour'

/** The findings of a bay as a sheet tells them. */
export interface State {
  /** Rank 2, then rank 1, like ones together; none that the builder has accepted. */
  readonly open: readonly FindingGroup[]
  readonly mustFix: number
  readonly watch: number
  readonly accepted: readonly { readonly finding: Finding; readonly reason: string; readonly by: string }[]
}

export const stateOf = ({ bay, layout }: Evaluation): State => {
  const troubles = findingsOf(bay).filter((finding) => rankOf(finding) > 0)
  const reasons = new Map(layout.settings.accepted.map((entry) => [entry.key, entry]))
  const open = troubles.filter(({ key }) => !reasons.has(key)).toSorted((a, b) => rankOf(b) - rankOf(a))
  const mustFix = open.filter((finding) => rankOf(finding) === 2).length
  return {
    open: findingGroups(open),
    mustFix,
    watch: open.length - mustFix,
    accepted: troubles.flatMap((finding) => {
      const entry = reasons.get(finding.key)
      return entry === undefined ? [] : [{ finding, reason: entry.reason, by: entry.by }]
    }),
  }
}

/** One paragraph of the state of a plan. */
export interface StateLine extends Pourable {
  /** What this line numbers on the plan. */
  readonly group?: FindingGroup
  /** How many findings are lost with it; 0 for words about the plan as a whole. */
  readonly findings: number
  /** A sheet without this line would hide what must be mended, or what the builder has answered for. */
  readonly isDue: boolean
}

const NUMBER_MM = 6
const AFTER_MM = 0.8

/** A group of findings with the number that it bears on the plan. */
const groupBlock =
  (group: FindingGroup, number: number, write: Words): BlockAt =>
  (widthMm) => {
    const pen = rankOf(group.worst) === 2 ? 'must-fix' : 'note'
    const text = paragraph(groupWords(group, write), widthMm - NUMBER_MM, LETTERS.small, pen)
    return {
      heightMm: text.heightMm + AFTER_MM,
      draw: (left, top) => [
        lettered(`${number}`, { x: left, y: top - LETTERS.small * 0.66 }, LETTERS.small, { pen }),
        ...text.draw(left + NUMBER_MM, top),
      ],
    }
  }

const groupLine = (group: FindingGroup, number: number, write: Words): StateLine => ({
  block: groupBlock(group, number, write),
  group,
  findings: group.others.length + 1,
  isDue: rankOf(group.worst) === 2,
})

const summary = ({ mustFix, watch, accepted }: State): string =>
  `Must fix: ${mustFix}. Watch: ${watch}. Accepted: ${accepted.length}.`

const shapesNote = 'Triangle on the plan: must be mended. Diamond: watch.'

const STATE_TITLE = 'How the plan stands'
const ACCEPTED_TITLE = 'Accepted as it is'

const titled =
  (title: string): BlockAt =>
  (widthMm) =>
    heading(title, widthMm)

const headBlock =
  (state: State): BlockAt =>
  (widthMm) =>
    stacked([
      heading(STATE_TITLE, widthMm),
      paragraph(summary(state), widthMm),
      ...(state.open.length > 0 ? [paragraph(shapesNote, widthMm, LETTERS.small)] : []),
      gap(AFTER_MM),
    ])

/** A heading never stands at the foot of a room without the line that it heads. */
const headed = (head: BlockAt, title: string, [first, ...rest]: readonly StateLine[]): StateLine[] => {
  if (first === undefined) return []
  const again = titled(`${title}, continued`)
  const block: BlockAt = (widthMm) => stacked([head(widthMm), first.block(widthMm)])
  return [{ ...first, block }, ...rest.map((line) => ({ ...line, again }))]
}

/** What is wrong, without what would mend it: the builder has answered that. */
const sayAlone = (finding: Finding, write: Words): string => ruleOf(finding.rule).say(finding, write)

const acceptedLine = (
  { finding, reason, by }: State['accepted'][number],
  isLast: boolean,
  write: Words,
): StateLine => {
  const who = by === '' ? '' : ` (${by})`
  const words = `${sayAlone(finding, write)} Accepted: ${reason}${who}.`
  const block = (widthMm: number): Block =>
    stacked([paragraph(words, widthMm, LETTERS.small), gap(isLast ? 2 : AFTER_MM)])
  return { block, findings: 1, isDue: true }
}

/**
 * How the plan stands, a line a paragraph. What the builder lives with comes before what is open, since nobody will say
 * it again.
 */
export const stateLines = (state: State, write: Words): StateLine[] => {
  const { accepted, open } = state
  const last = accepted.length - 1
  const answered = accepted.map((entry, i) => acceptedLine(entry, i === last, write))
  const head = headBlock(state)
  const standing = open.map((group, i) => groupLine(group, i + 1, write))
  return [
    ...headed(titled(ACCEPTED_TITLE), ACCEPTED_TITLE, answered),
    ...(standing.length > 0
      ? headed(head, STATE_TITLE, standing)
      : [{ block: head, findings: 0, isDue: true }]),
  ]
}
