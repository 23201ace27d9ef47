import { allowedMpa, allowedSag, sagLength } from '../../../../evaluate/loads/allowed'
import type { Settings } from '../../../../layout/settings'
import type { RailLine, RailSpan } from '../../../../model/strength'
import { writeDecimal } from '../../../../units/writeDecimal'
import type { Writer } from '../../../../units/writer'
import { loadWords, shareUsed } from '../screenWords'
import { strengthRank } from '../shownRack'

/** A span with what it is called: counted from the row's start, what overhangs by where it does. */
export interface NamedSpan {
  readonly name: string
  readonly span: RailSpan
}

const overhangName = (index: number, count: number): string => {
  if (index === 0) return 'start'
  return index === count - 1 ? 'end' : 'overhang'
}

/** Spans between risers are numbered along the row. */
export const namedSpans = ({ spans }: RailLine): readonly NamedSpan[] => {
  let number = 0
  return spans.map((span, index) => {
    if (span.isOverhang) return { name: overhangName(index, spans.length), span }
    number += 1
    return { name: String(number), span }
  })
}

/** `span 3`, `the overhang at the start`. */
const called = ({ name, span }: NamedSpan): string => {
  if (!span.isOverhang) return `span ${name}`
  return name === 'overhang' ? 'an overhang' : `the overhang at the ${name}`
}

/** The worst by its state, then by how much of a limit it uses; undefined of a rail without spans. */
export const governing = (line: RailLine): NamedSpan | undefined =>
  namedSpans(line).reduce<NamedSpan | undefined>((worst, next) => {
    if (!worst) return next
    const ranks = strengthRank(next.span.state) - strengthRank(worst.span.state)
    return ranks > 0 || (ranks === 0 && next.span.used > worst.span.used) ? next : worst
  }, undefined)

/** Past the yield that is assumed a rail does not spring back, and its elastic sag says nothing. */
export const isBent = (
  { stressMpa }: RailSpan,
  { conduitYieldMpa }: Pick<Settings, 'conduitYieldMpa'>,
): boolean => stressMpa > conduitYieldMpa

/** A sag under so small a share of its length is not told by its share. */
const LEAST_SHARE = 5000

/** `L/307`, of its own length, an overhang's counted twice. */
const sagShare = (span: RailSpan): string => {
  const over = sagLength({ ...span, fromMm: span.fromU, toMm: span.toU }) / Math.abs(span.sagMm)
  return over > LEAST_SHARE ? `under L/${LEAST_SHARE}` : `L/${Math.floor(over)}`
}

/** Less than this is not told as a length, mm: no tape finds it. */
const LEAST_SAG_MM = 0.4

const amountWords = ({ sagMm }: RailSpan, write: Writer, share: string): string =>
  Math.abs(sagMm) < LEAST_SAG_MM ? share : `${write.exact().onTape(Math.abs(sagMm))} (${share})`

/** `7/64" (L/307)`, or that it won't come back. */
export const sagWords = (span: RailSpan, settings: Settings, write: Writer): string =>
  isBent(span, settings) ? 'folds or stays bent' : amountWords(span, write, sagShare(span))

const isBySag = (span: RailSpan, settings: Settings): boolean =>
  Math.abs(span.sagMm) / allowedSag({ ...span, fromMm: span.fromU, toMm: span.toU }, settings) >
  span.stressMpa / allowedMpa(settings)

const stressClause = ({ stressMpa }: RailSpan, settings: Settings, { stress }: Writer): string =>
  `${stress(stressMpa)}, where ${stress(allowedMpa(settings))} is allowed`

const sagClause = (span: RailSpan, settings: Settings, write: Writer): string =>
  `${write.exact().onTape(Math.abs(span.sagMm))} or ${sagShare(span)}, where L/${settings.sagOver} is allowed`

/** What a rail rests on: a hole in a riser of its own row, or a strap from the house. */
export type RestsOn = 'riser' | 'strap'

const afterWords = ({ state }: RailSpan, { proofTimes }: Settings, restsOn: RestsOn): string => {
  if (state === 'Within') return ''
  if (state === 'Too long') return ` Put ${restsOn}s closer, take a bigger conduit, or hang less.`
  return ` Hang ${writeDecimal(proofTimes, 0, 2)} times its towers on it for 24 hours before anyone relies on it.`
}

/** What governs a rail, in a sentence or two. */
export const governsWords = (
  line: RailLine,
  settings: Settings,
  write: Writer,
  restsOn: RestsOn = 'riser',
): string => {
  const worst = governing(line)
  if (!worst) return 'This rail rests on nothing.'
  const { span } = worst
  const where = `${called(worst)}, ${write.length(span.fromU)} to ${write.length(span.toU)} along,`
  if (span.used === Infinity)
    return `Nothing holds ${where} in its place: it rests on too little. Put another ${restsOn} there.`
  const under = loadWords[span.under]
  if (isBent(span, settings))
    return `Stress governs in ${where} with ${under}: ${write.stress(span.stressMpa)}, over the ${write.stress(settings.conduitYieldMpa)} that is assumed of its yield. It folds or stays bent.${afterWords(span, settings, restsOn)}`
  const governs = isBySag(span, settings)
    ? `Sag governs in ${where} with ${under}: ${sagClause(span, settings, write)}`
    : `Stress governs in ${where} with ${under}: ${stressClause(span, settings, write)}`
  return `${governs}.${afterWords(span, settings, restsOn)}`
}

/** Rows of a table that say the same, in one row under all their names. */
export interface AlikeRows<T> {
  readonly names: readonly string[]
  readonly first: T
  readonly cells: readonly string[]
}

export const alikeRows = <T>(
  rows: readonly T[],
  nameOf: (row: T) => string,
  cellsOf: (row: T) => readonly string[],
): readonly AlikeRows<T>[] => {
  const kinds = new Map<string, { names: string[]; first: T; cells: readonly string[] }>()
  for (const row of rows) {
    const cells = cellsOf(row)
    const key = cells.join('|')
    const held = kinds.get(key)
    if (held) held.names.push(nameOf(row))
    else kinds.set(key, { names: [nameOf(row)], first: row, cells })
  }
  return [...kinds.values()]
}

/** `2, 3 and 5 to 9`: three or more that follow each other are told by the first and the last. */
export const runsWords = (names: readonly string[]): string => {
  const runs: string[][] = []
  for (const name of names) {
    const last = runs.at(-1)
    if (last && Number(name) === Number(last.at(-1)) + 1) last.push(name)
    else runs.push([name])
  }
  const said = runs.flatMap((run) => (run.length > 2 ? [`${run[0]} to ${run.at(-1)}`] : run))
  return said.length > 1 ? `${said.slice(0, -1).join(', ')} and ${said.at(-1)}` : (said[0] ?? '')
}

export const spanColumns = [
  'Span',
  'Length',
  'Conduit',
  'Worst with',
  'Moment',
  'Stress',
  'Sag',
  'Used',
  'State',
]

/** The cells of a span after its name, but for its state. */
export const spanCells = ({ span }: NamedSpan, settings: Settings, write: Writer): readonly string[] =>
  span.used === Infinity
    ? [write.onTape(span.toU - span.fromU), stockWords(span.stock), '', '', '', '', 'rests on too little']
    : [
        write.onTape(span.toU - span.fromU),
        stockWords(span.stock),
        loadWords[span.under],
        write.moment(Math.abs(span.momentNmm)),
        write.stress(span.stressMpa),
        sagWords(span, settings, write),
        shareUsed(span.used),
      ]

/** `3/4 in`, of a conduit's catalogue key. */
export const stockWords = (stock: string): string => `${stock.replace('conduit-', '')} in`

export type Reaction = RailLine['reactions'][number]

export const reactionColumns = (restsOn: RestsOn): readonly string[] => [
  restsOn === 'strap' ? 'Strap' : 'Riser',
  'Along',
  'All hung',
  'At most',
  'At least',
  'Lifts',
]

/** What keeps a rail down where it lifts: a hole closes round it, a strap bears from below alone. */
export const liftWords: Readonly<Record<RestsOn, string>> = {
  riser: 'Where it lifts, its hole holds the rail down, and the riser with it by what stands on it.',
  strap: 'Where it lifts, nothing holds it down: a strap only carries.',
}

/** Under this a rail is not said to lift, N: what a hand would not feel. */
const LIFT_N = 1

export const lifts = ({ leastN }: Reaction): boolean => leastN < -LIFT_N

export const reactionCells = (reaction: Reaction, { force }: Writer): readonly string[] => [
  force(reaction.fullN),
  force(reaction.mostN),
  lifts(reaction) ? `−${force(-reaction.leastN)}` : force(Math.max(0, reaction.leastN)),
  lifts(reaction) ? 'lifts' : '',
]
