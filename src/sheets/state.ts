import type { Words } from '../checks/context'
import { ruleOf } from '../checks/index'
import { sentence } from '../checks/words'
import type { Evaluation } from '../evaluate/evaluation'
import { rankOf, type Finding } from '../model/finding'
import { type Block, fitting, gap, heading, paragraph, stacked } from './block'
import { lettered, LETTERS } from './ink'

/** The findings of a bay as a sheet tells them. */
export interface State {
  /** Rank 2, then rank 1; none that the builder has accepted. */
  readonly open: readonly Finding[]
  readonly mustFix: number
  readonly watch: number
  readonly accepted: readonly { readonly finding: Finding; readonly reason: string; readonly by: string }[]
}

export const stateOf = ({ findings, layout }: Evaluation): State => {
  const troubles = findings.filter((finding) => rankOf(finding) > 0)
  const reasons = new Map(layout.settings.accepted.map((entry) => [entry.key, entry]))
  const open = troubles.filter(({ key }) => !reasons.has(key)).toSorted((a, b) => rankOf(b) - rankOf(a))
  const mustFix = open.filter((finding) => rankOf(finding) === 2).length
  return {
    open,
    mustFix,
    watch: open.length - mustFix,
    accepted: troubles.flatMap((finding) => {
      const entry = reasons.get(finding.key)
      return entry === undefined ? [] : [{ finding, reason: entry.reason, by: entry.by }]
    }),
  }
}

/** What is wrong, without what would mend it: the builder has answered that. */
const sayAlone = (finding: Finding, words: Words): string => ruleOf(finding.rule).say(finding, words)

const NUMBER_MM = 6

/** A finding with the number that it bears on the plan. */
const findingBlock = (finding: Finding, number: number, widthMm: number, words: Words): Block => {
  const pen = rankOf(finding) === 2 ? 'must-fix' : 'note'
  const text = paragraph(
    `${finding.state}. ${sentence(finding, words)}`,
    widthMm - NUMBER_MM,
    LETTERS.small,
    pen,
  )
  return {
    heightMm: text.heightMm + 0.8,
    draw: (left, top) => [
      lettered(`${number}`, { x: left, y: top - LETTERS.small * 0.66 }, LETTERS.small, { pen }),
      ...text.draw(left + NUMBER_MM, top),
    ],
  }
}

const summary = ({ mustFix, watch, accepted }: State): string =>
  `Must fix: ${mustFix}. Watch: ${watch}. Accepted: ${accepted.length}.`

/** As many blocks as fit, then how many more there are. */
const listed = (
  blocks: readonly Block[],
  widthMm: number,
  roomMm: number,
): { list: Block; shown: number } => {
  const more = (count: number) => paragraph(`and ${count} more on the screen`, widthMm, LETTERS.small)
  const shown = fitting(blocks, roomMm - more(blocks.length).heightMm)
  const left = blocks.length - shown.length
  return { list: stacked(left > 0 ? [...shown, more(left)] : shown), shown: shown.length }
}

export interface StateBlock {
  readonly block: Block
  /** Findings that are listed and so bear a number on the plan, in that order. */
  readonly numbered: readonly Finding[]
}

const shapesNote = 'Triangle on the plan: must be mended. Diamond: watch.'

/** How the plan stands: counts, then as many findings as there is room for, and how many are left out. */
export const stateBlock = (state: State, widthMm: number, roomMm: number, words: Words): StateBlock => {
  const head = stacked([
    heading('How the plan stands', widthMm),
    paragraph(summary(state), widthMm),
    ...(state.open.length > 0 ? [paragraph(shapesNote, widthMm, LETTERS.small)] : []),
    gap(0.8),
  ])
  const all = state.open.map((finding, i) => findingBlock(finding, i + 1, widthMm, words))
  const { list, shown } = listed(all, widthMm, roomMm - head.heightMm)
  return { block: stacked([head, list]), numbered: state.open.slice(0, shown) }
}

/** What the builder lives with, and why; it comes before what is open, since nobody will say it again. */
export const acceptedBlock = (state: State, widthMm: number, roomMm: number, words: Words): Block => {
  if (state.accepted.length === 0) return gap(0)
  const head = heading('Accepted as it is', widthMm)
  const all = state.accepted.map(({ finding, reason, by }) => {
    const who = by === '' ? '' : ` (${by})`
    return paragraph(`${sayAlone(finding, words)} Accepted: ${reason}${who}.`, widthMm, LETTERS.small)
  })
  return stacked([head, listed(all, widthMm, roomMm - head.heightMm).list, gap(2)])
}
