import type { Highs } from 'highs'
import type { CuttingProblem } from '../../../../src/solvers/cutting/problem'

/*
 * Another formulation of the same problem, for a package to solve: flow along the length of a board. Points are places on a board;
 * an arc goes from where a piece begins to where it ends with its kerf, or over one unit of waste; boards of each stock flow from 0 to
 * their room. J. M. Valerio de Carvalho, "Exact Solution of Bin-Packing Problems Using Column Generation and Branch-and-Bound",
 * Annals of Operations Research 86 (1999). For exact pieces. Shares no code with the prover.
 */

const AIMS = [0, 1, 2] as const

const arcFlowText = (
  { pieces, stocks, saw }: CuttingProblem,
  aim: number,
  reached: readonly number[],
): string => {
  const { kerfTicks, trimTicks } = saw
  const room = (length: number) => (trimTicks === 0 ? length : length - trimTicks - kerfTicks) + kerfTicks
  const greatest = Math.max(...stocks.map(({ lengthTicks }) => room(lengthTicks)))
  const out: string[][] = Array.from({ length: greatest + 1 }, () => [])
  const made: string[][] = pieces.map(() => [])
  const names: string[] = []
  const arc = (name: string, from: number, to: number): void => {
    names.push(name)
    out[from]!.push(`- ${name}`)
    out[to]!.push(`+ ${name}`)
  }
  for (const [i, { lengthTicks }] of pieces.entries())
    for (let at = 0; at + lengthTicks + kerfTicks <= greatest; at += 1) {
      arc(`x${i}_${at}`, at, at + lengthTicks + kerfTicks)
      made[i]!.push(`+ x${i}_${at}`)
    }
  for (let at = 0; at < greatest; at += 1) arc(`w${at}`, at, at + 1)
  for (const [j, { lengthTicks }] of stocks.entries()) arc(`z${j}`, Math.max(0, room(lengthTicks)), 0)
  const sum = (each: number): string =>
    stocks
      .map(
        ({ lengthTicks, cost = lengthTicks }, j) => `+ ${[cost, 1, cost > 0 ? lengthTicks : 0][each]} z${j}`,
      )
      .join(' ')
  return [
    'Minimize',
    ` aim: ${sum(aim)}`,
    'Subject To',
    ...reached.map((value, each) => ` r${each}: ${sum(each)} <= ${value}`),
    ...out.map((terms, at) => ` n${at}: ${terms.join('\n ')} = 0`),
    ...pieces.map(({ count }, i) => ` p${i}: ${made[i]!.join('\n ')} >= ${count}`),
    'Bounds',
    ...stocks.map(({ most }, j) => (most === undefined ? ` z${j} >= 0` : ` 0 <= z${j} <= ${most}`)),
    'General',
    ` ${names.join('\n ')}`,
    'End',
  ].join('\n')
}

/** Cost, boards and length of the best plan, one aim after the other; undefined where the boards can't make all pieces. */
export const bestByArcFlow = (problem: CuttingProblem, highs: Highs): number[] | undefined => {
  const reached: number[] = []
  for (const aim of AIMS) {
    const { Status, ObjectiveValue } = highs.solve(arcFlowText(problem, aim, reached), {
      output_flag: false,
      mip_rel_gap: 0,
      mip_abs_gap: 0.5,
    })
    if (Status !== 'Optimal') return undefined
    reached.push(Math.round(ObjectiveValue))
  }
  return reached
}
