import { stockOf } from '../catalogue/stock'
import type { StockItem } from '../catalogue/stock'
import { straightLegs } from '../geometry/legs'
import type { Built, CutRule, Stick, Tube } from '../model/built'
import { fromTicks, toTicks } from '../units/length'

/** Like pieces of one stock: one stop setting. */
export interface PieceLine {
  readonly lengthTicks: number
  readonly cut: CutRule
  readonly count: number
  /** Each once, in order of the alphabet. */
  readonly marks: readonly string[]
  /** Least of the tolerances of these pieces: all of them keep it. */
  readonly minusTicks: number
}

/** Lines of one stock by length and rule. */
export type PieceLines = ReadonlyMap<string, PieceLine>

/** Lines by catalogue key of their stock. */
export type PieceTally = ReadonlyMap<string, PieceLines>

/** A tally while it is being counted. */
type Sums = Map<string, { -readonly [K in keyof PieceLine]: PieceLine[K] }>
type Growing = Map<string, Sums>

const EXACT: CutRule = { kind: 'exact' }

const ruleKey = (cut: CutRule): string => {
  if (cut.kind === 'exact') return 'exact'
  return cut.kind === 'uncut' ? `uncut:${cut.stockMm}` : `${cut.parts}:${cut.stockMm}`
}

const lineKey = ({ lengthTicks, cut }: PieceLine): string => `${lengthTicks} ${ruleKey(cut)}`

const unite = (these: readonly string[], those: readonly string[]): readonly string[] =>
  those.every((mark) => these.includes(mark)) ? these : [...new Set([...these, ...those])].sort()

/** Counts in place: this runs for every line of every part in every frame of a drag. */
const add = (tally: Growing, stock: string, key: string, line: PieceLine): void => {
  const lines: Sums = tally.get(stock) ?? new Map()
  tally.set(stock, lines)
  const sum = lines.get(key)
  if (sum === undefined) {
    lines.set(key, { ...line })
    return
  }
  sum.count += line.count
  sum.minusTicks = Math.min(sum.minusTicks, line.minusTicks)
  sum.marks = unite(sum.marks, line.marks)
}

const stickLine = ({ lengthMm, cut, mark, minusMm }: Stick): PieceLine => ({
  lengthTicks: toTicks(lengthMm),
  cut,
  count: 1,
  marks: [mark],
  minusTicks: toTicks(minusMm),
})

/** A straight run: whole lengths of stock as they come, joined, and a rest cut to fit. */
const runLines = (lengthMm: number, { lengthsMm }: StockItem, mark: string): PieceLine[] => {
  const stockMm = Math.max(...lengthsMm)
  const stockTicks = toTicks(stockMm)
  const runTicks = toTicks(lengthMm)
  const common = { marks: [mark], minusTicks: 0 }
  return [
    {
      ...common,
      lengthTicks: stockTicks,
      cut: { kind: 'uncut', stockMm },
      count: Math.floor(runTicks / stockTicks),
    },
    { ...common, lengthTicks: runTicks % stockTicks, cut: EXACT, count: 1 },
  ]
}

/** Rigid pipe turns in a fitting, so each straight leg is its own run; what the tube has to spare goes on the last. */
const runsOf = ({ path, lengthMm }: Tube, form: StockItem['form']): number[] => {
  const legs = form === 'coil' ? [] : straightLegs(path)
  const before = legs.slice(0, -1)
  return [...before, lengthMm - before.reduce((sum, leg) => sum + leg, 0)]
}

/** The last leg of a run that is laid from its end with a piece of its own length, if it is longer than that piece. */
const firstPiece = ({ firstMm, role }: Tube, legMm: number): PieceLine | undefined =>
  firstMm !== undefined && firstMm < legMm
    ? { lengthTicks: toTicks(firstMm), cut: EXACT, count: 1, marks: [role], minusTicks: 0 }
    : undefined

const tubeLines = (tube: Tube): PieceLine[] => {
  const item = stockOf(tube.stock)
  const runs = runsOf(tube, item.form)
  const lastMm = runs.at(-1) ?? 0
  const first = firstPiece(tube, lastMm)
  if (!first) return runs.flatMap((runMm) => runLines(runMm, item, tube.role))
  const rest = runs.with(-1, lastMm - fromTicks(first.lengthTicks))
  return [first, ...rest.flatMap((runMm) => runLines(runMm, item, tube.role))]
}

const tallyBuilt = ({ sticks, tubes }: Built): PieceTally => {
  const tally: Growing = new Map()
  const keep = (stock: string, line: PieceLine): void => {
    // A length under half a tick is no piece: nothing is left to saw.
    if (line.count > 0 && line.lengthTicks > 0) add(tally, stock, lineKey(line), line)
  }
  for (const stick of sticks) keep(stick.stock, stickLine(stick))
  for (const tube of tubes) for (const line of tubeLines(tube)) keep(tube.stock, line)
  return tally
}

const known = new WeakMap<Built, PieceTally>()

const tallyOf = (built: Built): PieceTally => {
  const before = known.get(built)
  if (before !== undefined) return before
  const tally = tallyBuilt(built)
  known.set(built, tally)
  return tally
}

/** The pieces of all parts together. A part that has not changed since it was last asked is not counted again. */
export const tallyAll = (built: readonly Built[]): PieceTally => {
  const all: Growing = new Map()
  for (const each of built)
    for (const [stock, lines] of tallyOf(each)) for (const [key, line] of lines) add(all, stock, key, line)
  return all
}

/** Lines in the order of the stop: longest first, and of one length always in the same order. */
export const longestFirst = (lines: PieceLines): PieceLine[] =>
  [...lines]
    .sort(([aKey, a], [bKey, b]) => b.lengthTicks - a.lengthTicks || (aKey < bKey ? -1 : 1))
    .map(([, line]) => line)
