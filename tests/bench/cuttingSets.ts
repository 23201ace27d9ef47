import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { firstPlan } from '../../src/solvers/cutting/firstPlan'
import type { CuttingProblem } from '../../src/solvers/cutting/problem'
import { prove } from '../../src/solvers/cutting/prove/prove'

interface Listed {
  readonly file: string
  readonly name: string
  readonly optimum: number
}

export interface SetList {
  readonly className: string
  readonly name: string
  readonly optimum: number
  readonly problem: CuttingProblem
}

/** Number of lengths, length of a board, then a line for each length with how many there are, one where that is left out. */
const problemIn = (text: string): CuttingProblem => {
  const [, board, ...lines] = text.trim().split(/\s*\n/)
  const pieces = lines.map((line) => {
    const [lengthTicks = 1, count = 1] = line.trim().split(/\s+/).map(Number)
    return { lengthTicks, count, minusTicks: 0, rule: { kind: 'exact' as const } }
  })
  return { pieces, stocks: [{ lengthTicks: Number(board) }], saw: { kerfTicks: 0, trimTicks: 0 } }
}

/** A list's name without its number. */
const classOf = (name: string): string => name.replace(/_?(BPP)?\d+$/, '')

/** So many of each class, spread evenly over it. */
export const readSets = (folder: string, sample: number): SetList[] => {
  // Written by whoever has the sets; the bench is of no use with anything else.
  const listed = JSON.parse(readFileSync(join(folder, 'optima.json'), 'utf8')) as Listed[]
  const classes = grouped(listed)
  return [...classes].flatMap(([className, members]) => {
    const step = Math.max(1, members.length / sample)
    const chosen = members.filter((_, i) => Math.floor(i / step) !== Math.floor((i - 1) / step))
    return chosen.map(({ file, name, optimum }) => ({
      className,
      name,
      optimum,
      problem: problemIn(readFileSync(join(folder, file), 'utf8')),
    }))
  })
}

const grouped = (listed: readonly Listed[]): Map<string, Listed[]> => {
  const groups = new Map<string, Listed[]>()
  for (const each of listed) groups.set(classOf(each.name), [...(groups.get(classOf(each.name)) ?? []), each])
  return groups
}

interface Outcome {
  readonly isProven: boolean
  readonly isRight: boolean
  readonly gap: number
  readonly ms: number
}

const outcomeOf = async ({ problem, optimum }: SetList): Promise<Outcome> => {
  const [board = 1] = problem.stocks.map(({ lengthTicks }) => lengthTicks)
  const start = process.cpuUsage()
  const { plan, bound, proven } = await prove(problem, firstPlan(problem), { budget: 4e9 })
  const { user, system } = process.cpuUsage(start)
  const ms = (user + system) / 1000
  const isRight =
    bound <= optimum * board && plan.boardCount >= optimum && (!proven.cost || plan.boardCount === optimum)
  return { isProven: proven.cost, isRight, gap: plan.cost / bound - 1, ms }
}

const classRow = (className: string, outcomes: readonly Outcome[]) => {
  const times = outcomes.map(({ ms }) => ms).sort((a, b) => a - b)
  return {
    class: className,
    lists: outcomes.length,
    proven: outcomes.filter(({ isProven }) => isProven).length,
    'against the known optimum': outcomes.every(({ isRight }) => isRight) ? 'right' : 'WRONG',
    'largest gap, %': (100 * Math.max(0, ...outcomes.map(({ gap }) => gap))).toFixed(2),
    'median ms of processor': Math.round(times[times.length >> 1] ?? 0),
    'longest ms of processor': Math.round(times.at(-1) ?? 0),
  }
}

/** A row for each class: how many lists are proven, the gap of the rest, the time. */
export const tableOf = async (lists: readonly SetList[]) => {
  const outcomes = new Map<string, Outcome[]>()
  for (const list of lists)
    outcomes.set(list.className, [...(outcomes.get(list.className) ?? []), await outcomeOf(list)])
  return [...outcomes].map(([className, each]) => classRow(className, each))
}
