import { serviceMarks } from '../../drawing/houseMarks'
import { isOnPaper } from '../../drawing/view'
import type { Evaluation } from '../../evaluate/evaluation'
import { boxOf, grown, type Box } from '../../geometry/box'
import { distance, type Point } from '../../geometry/point'
import { nearestOnSegment } from '../../geometry/segment'
import type { Layout } from '../../layout/schema'
import type { TextMark } from '../../model/drawing'
import type { PartId } from '../../model/ids'
import { kindOf } from '../../parts/index'
import { legsOf } from '../../parts/points'
import { isInside, textBox, type ClearWords } from '../clearWords'
import { aroundPlace, besideRun } from './namePlaces'
import { isText } from './partShapes'

type Part = Layout['parts'][number]

/** A name as it may be lettered on the floor. */
interface Name {
  readonly mark: TextMark
  /** What the name may be cut down to where it finds no room. */
  readonly short: string
  /** The run that is named; no points where the part stands in one place. */
  readonly run: readonly Point[]
  /** May stand nearer to another run than to its own, rather than across lines or nowhere. */
  readonly isDue: boolean
  /** What stands there: words that it holds need not keep off its lines. */
  readonly bodies: readonly Box[]
}

/** More parts than this that differ by a number only are lettered at the ends of the series alone. */
const LONG_SERIES = 4

/** Parts in the middle of a long series, such as the legs of a house wall. */
const innerOfSeries = (parts: readonly Part[]): Set<PartId> => {
  const series = new Map<string, PartId[]>()
  for (const { id, name } of parts) {
    const stem = name.replace(/\s*[0-9]+$/, '')
    series.set(stem, [...(series.get(stem) ?? []), id])
  }
  return new Set([...series.values()].flatMap((ids) => (ids.length > LONG_SERIES ? ids.slice(1, -1) : [])))
}

const runOf = (part: Part): readonly Point[] => ('points' in part ? part.points : [])

const namesOf = (part: Part, { bay, marksOf }: Evaluation, ratio: number): Name[] => {
  const run = runOf(part)
  const bodies = run.length > 0 ? [] : (bay.builtOf.get(part.id)?.bodies ?? [])
  const boxes = bodies
    .filter(({ role }) => role !== 'keep-clear' && role !== 'door')
    .map(({ outline }) => boxOf(outline))
  return (marksOf.get(part.id) ?? [])
    .filter(isText)
    .filter(({ nearMm }) => isOnPaper(nearMm, ratio))
    .map((mark) => ({ mark, short: part.name || mark.text, run, isDue: false, bodies: boxes }))
}

/** What a pipe's words add to its name, such as `4 in drain pipe`; nothing for a part that stands. */
const sizeOf = (part: Part, { mark }: Name): string =>
  'points' in part && mark.text.startsWith(`${part.name}, `) ? mark.text.slice(part.name.length + 2) : ''

/** The words that more than a few of many share, if any. */
export const shared = (words: readonly string[]): string | undefined => {
  const counts = new Map<string, number>()
  for (const text of words) if (text !== '') counts.set(text, (counts.get(text) ?? 0) + 1)
  const [most] = [...counts].toSorted((a, b) => b[1] - a[1])
  return most !== undefined && most[1] > LONG_SERIES ? most[0] : undefined
}

/** Names of one kind's parts, and what is said of them all. */
interface Said {
  readonly names: readonly Name[]
  readonly notes: readonly string[]
}

const saidOf = (parts: readonly Part[], evaluation: Evaluation, ratio: number): Said => {
  const all = parts.flatMap((part) => namesOf(part, evaluation, ratio).map((name) => ({ part, name })))
  const size = shared(all.map(({ part, name }) => sizeOf(part, name)))
  const [first] = parts
  if (size === undefined || first === undefined) return { names: all.map(({ name }) => name), notes: [] }
  const names = all.map(({ part, name }) =>
    sizeOf(part, name) === size ? { ...name, mark: { ...name.mark, text: part.name } } : name,
  )
  return { names, notes: [`${kindOf(first).title}s: ${size}, unless it is written beside them.`] }
}

/** What is buried, by name; whoever digs must read these, so they come first. */
const serviceNames = ({ bay: { house } }: Evaluation): Name[] =>
  house.services.flatMap((service) =>
    serviceMarks({ ...house, services: [service] })
      .filter(isText)
      .map((mark) => ({ mark, short: mark.text, run: service.points, isDue: true, bodies: [] })),
  )

/** Names of all that is no row, what is buried first, and what is said once of many. */
const said = (evaluation: Evaluation, ratio: number): Said => {
  const { bay, layout } = evaluation
  const others = layout.parts.filter(({ id }) => bay.builtOf.get(id)?.rack === undefined)
  const inner = innerOfSeries(others.filter((part) => !('points' in part) && part.kind === 'obstacle'))
  const kinds = [...new Set(others.map(({ kind }) => kind))]
  const each = kinds.map((kind) =>
    saidOf(
      others.filter((part) => part.kind === kind && !inner.has(part.id)),
      evaluation,
      ratio,
    ),
  )
  // Short names go first: a pit's can't slide along it as a pipe's can.
  const names = each.flatMap((one) => one.names)
  const inOrder = names.toSorted((a, b) => a.mark.text.length - b.mark.text.length)
  return { names: [...serviceNames(evaluation), ...inOrder], notes: each.flatMap(({ notes }) => notes) }
}

/** Air about words that may reach over the edge of what holds them, mm of paper. */
const HELD_OVER_MM = 0.8

/** How far a place is from the nearest leg of a run; Infinity for no run. */
const fromRun = (at: Point, run: readonly Point[]): number =>
  Math.min(...legsOf(run).map(({ from, to }) => distance(nearestOnSegment(from, to, at), at)))

/** A name nearer to another run than to its own would be read as the other's. */
const isOwn = ({ at }: TextMark, run: readonly Point[], runs: readonly (readonly Point[])[]): boolean => {
  if (run.length === 0) return true
  const own = fromRun(at, run)
  return runs.every((other) => other === run || fromRun(at, other) >= own)
}

/** A name where it is clear: on what it names, else off all lines, and short rather than nowhere. */
const placed = (
  { mark, short, run, isDue, bodies }: Name,
  runs: readonly (readonly Point[])[],
  ratio: number,
  words: ClearWords,
): TextMark | undefined => {
  const boxesOf = (place: TextMark) => [textBox(place, ratio)]
  const triesOf = (text: TextMark) => {
    const near = [...besideRun(text, run, ratio), ...aroundPlace(text, ratio)]
    const own = near.filter((place) => isOwn(place, run, runs))
    return isDue ? [...own, ...near] : own
  }
  const tries = triesOf(mark)
  const held = tries.filter((place) =>
    bodies.some((body) => isInside(textBox(place, ratio), grown(body, HELD_OVER_MM * ratio))),
  )
  return (
    held.find((place) => words.take(boxesOf(place))) ??
    words.first([...tries, ...triesOf({ ...mark, text: short })], boxesOf)
  )
}

export interface NameMarks {
  readonly marks: readonly TextMark[]
  /** Names that found no room. */
  readonly leftOut: number
  /** What is said once of many. */
  readonly notes: readonly string[]
}

/** Names of all that is no row, each at its part and clear of other words. In mm of floor. */
export const nameMarks = (evaluation: Evaluation, ratio: number, words: ClearWords): NameMarks => {
  const { names, notes } = said(evaluation, ratio)
  const runs = names.map(({ run }) => run).filter((run) => run.length > 0)
  const marks = names.flatMap((name) => placed(name, runs, ratio, words) ?? [])
  return { marks, leftOut: names.length - marks.length, notes }
}
