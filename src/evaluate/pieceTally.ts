import type { Bench } from '../layout/bench'
import type { Built, CutRule, Stick } from '../model/built'
import { rememberEach } from '../model/remember'
import { toTicks } from '../units/length'
import { jointsOf, runsOf } from './cutting/runs'

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

/** The pieces of one stock, and how often one is joined to the next within a run. */
export interface StockTally {
  readonly lines: PieceLines
  readonly joints: number
}

/** By catalogue key of the stock. */
export type PieceTally = ReadonlyMap<string, StockTally>

/** A tally while it is being counted. */
interface Sums {
  readonly lines: Map<string, { -readonly [K in keyof PieceLine]: PieceLine[K] }>
  joints: number
}
type Growing = Map<string, Sums>

const ruleKey = (cut: CutRule): string => {
  if (cut.kind === 'exact') return 'exact'
  return cut.kind === 'uncut' ? `uncut:${cut.stockMm}` : `${cut.parts}:${cut.stockMm}`
}

const lineKey = ({ lengthTicks, cut }: PieceLine): string => `${lengthTicks} ${ruleKey(cut)}`

const unite = (these: readonly string[], those: readonly string[]): readonly string[] =>
  those.every((mark) => these.includes(mark)) ? these : [...new Set([...these, ...those])].sort()

const sumsOf = (tally: Growing, stock: string): Sums => {
  const sums = tally.get(stock) ?? { lines: new Map(), joints: 0 }
  tally.set(stock, sums)
  return sums
}

/** Counts in place: this runs for every line of every part in every frame of a drag. */
const add = ({ lines }: Sums, key: string, line: PieceLine): void => {
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

const tallyOf = rememberEach<Built, Bench['measured'], PieceTally>(({ sticks, tubes }, measured) => {
  const tally: Growing = new Map()
  const keep = (stock: string, line: PieceLine): void => {
    // A length under half a tick is no piece: nothing is left to saw.
    if (line.lengthTicks > 0) add(sumsOf(tally, stock), lineKey(line), line)
  }
  for (const stick of sticks) keep(stick.stock, stickLine(stick))
  for (const tube of tubes)
    for (const run of runsOf(tube, measured)) {
      for (const piece of run) keep(tube.stock, { ...piece, marks: [tube.role], minusTicks: 0 })
      if (run.length > 0) sumsOf(tally, tube.stock).joints += jointsOf(run)
    }
  return tally
})

/** The pieces of all parts together. A part that has not changed since it was last asked is not counted again. */
export const tallyAll = (built: readonly Built[], measured: Bench['measured']): PieceTally => {
  const all: Growing = new Map()
  for (const each of built)
    for (const [stock, { lines, joints }] of tallyOf(each, measured)) {
      const sums = sumsOf(all, stock)
      sums.joints += joints
      for (const [key, line] of lines) add(sums, key, line)
    }
  return all
}

/** Lines in the order of the stop: longest first, and of one length always in the same order. */
export const longestFirst = (lines: PieceLines): PieceLine[] =>
  [...lines]
    .sort(([aKey, a], [bKey, b]) => b.lengthTicks - a.lengthTicks || (aKey < bKey ? -1 : 1))
    .map(([, line]) => line)
