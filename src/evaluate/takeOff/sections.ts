import { countRule, pieceRule } from '../../catalogue/countRules'
import type { Evaluation } from '../evaluation'
import { pieceLines, stockAndMark } from './pieces'
import type { CountGroup, CountLine } from '../../model/countLine'
import { bySize } from '../../units/bySize'
import { hasMark, memberTitle } from '../../model/memberNames'

/** A line as it is read: what it is called and how it is counted. */
export interface TakeOffLine extends CountLine {
  readonly words: string
  readonly rule: string
}

export interface TakeOffSection {
  readonly title: string
  readonly lines: readonly TakeOffLine[]
}

/** The headings, in the order in which a bay goes up. */
const SECTIONS: readonly (readonly [title: string, ...groups: CountGroup[]])[] = [
  ['Growing', 'growing'],
  ['Feet', 'feet'],
  ['Lumber and conduit', 'lumber', 'conduit'],
  ['Gutters', 'gutter'],
  ['Drains', 'drain'],
  ['Water', 'water'],
  ['Pit', 'pit'],
  ['Fasteners', 'fasteners'],
]

/** `Riser, plain hole (RS-p), 2x4`; of a run of pipe `Lateral, 3/4 in poly pipe`. */
const pieceLine = (line: CountLine): TakeOffLine => {
  const [, mark = ''] = stockAndMark(line.item)
  const marked = hasMark(mark) ? ` (${mark})` : ''
  return { ...line, words: `${memberTitle(mark)}${marked}, ${line.title}`, rule: pieceRule(mark) }
}

const countedLine = (line: CountLine): TakeOffLine => ({
  ...line,
  words: line.title,
  rule: countRule(line.item),
})

const byStock = (a: TakeOffLine, b: TakeOffLine): number => (a.item < b.item ? -1 : 1)

const byWords = (a: TakeOffLine, b: TakeOffLine): number => bySize(a.words, b.words)

/** All that the bay holds, cut pieces before counted things under each heading; headings without a line are left out. */
export const takeOffSections = ({ bay, counts }: Evaluation): readonly TakeOffSection[] => {
  const pieces = pieceLines([...bay.built, ...bay.joinedPipes])
    .map(pieceLine)
    .sort(byStock)
  const lines = [...pieces, ...counts.map(countedLine).sort(byWords)]
  return SECTIONS.map(([title, ...groups]) => ({
    title,
    lines: lines.filter(({ group }) => groups.includes(group)),
  })).filter((section) => section.lines.length > 0)
}

/** Lines that have every word of what is looked for, under their headings. */
export const foundIn = (sections: readonly TakeOffSection[], text: string): readonly TakeOffSection[] => {
  const wanted = text.toLowerCase().split(/\s+/).filter(Boolean)
  if (wanted.length === 0) return sections
  const isFound = ({ words }: TakeOffLine, title: string) => {
    const said = `${words} ${title}`.toLowerCase()
    return wanted.every((word) => said.includes(word))
  }
  return sections
    .map(({ title, lines }) => ({ title, lines: lines.filter((line) => isFound(line, title)) }))
    .filter(({ lines }) => lines.length > 0)
}
