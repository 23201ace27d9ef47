import { tubeFlowM3S, tubeLengthM } from './tube'

/** What all tubes of a lateral share. */
export interface TubeStock {
  readonly boreM: number
  readonly lossK: number
}

/**
 * Length of tube at each station that passes the same flow at all of them, m, from the heads over their outlets. It
 * cancels the lateral's head line; 0 where the head is too small for any tube.
 */
export const gradedLengths = (
  headM: Float64Array,
  flowM3S: number,
  { boreM, lossK }: TubeStock,
  kinematicM2S: number,
): Float64Array => headM.map((head) => tubeLengthM(head, flowM3S, boreM, lossK, kinematicM2S))

/** Stations next to each other that get tubes of one length. */
export interface TubeGroup {
  readonly first: number
  readonly count: number
  readonly lengthM: number
}

export interface TubeGroups {
  readonly groups: readonly TubeGroup[]
  /** (most - least) / most of the flows at the given heads and of the target. */
  readonly spread: number
}

/** Flow of every length at every station, a station a row. */
interface Choices {
  readonly lengthM: readonly number[]
  readonly flowM3S: readonly Float64Array[]
}

const choicesFor = (
  headM: Float64Array,
  exact: Float64Array,
  stepM: number,
  stock: TubeStock,
  nu: number,
): Choices => {
  const shortest = Math.max(1, Math.floor(Math.min(...exact) / stepM))
  const longest = Math.max(shortest, Math.ceil(Math.max(...exact) / stepM))
  const lengthM = Array.from({ length: longest - shortest + 1 }, (_, i) => (shortest + i) * stepM)
  const flowsAt = (head: number) =>
    Float64Array.from(lengthM, (each) => tubeFlowM3S(head, { ...stock, lengthM: each }, nu))
  return { lengthM, flowM3S: Array.from(headM, flowsAt) }
}

/** How many stations in a row, from `first`, one length keeps between two flows. */
const runOf = ({ flowM3S }: Choices, length: number, first: number, least: number, most: number): number => {
  let station = first
  for (; station < flowM3S.length; station += 1) {
    const flow = flowM3S[station]?.[length] ?? NaN
    if (!(flow >= least && flow <= most)) break
  }
  return station - first
}

/** The length that keeps the longest run of stations, from `first`, between two flows. */
const longestRun = (choices: Choices, first: number, least: number, most: number): TubeGroup => {
  let best: TubeGroup = { first, count: 0, lengthM: 0 }
  choices.lengthM.forEach((lengthM, index) => {
    const count = runOf(choices, index, first, least, most)
    if (count > best.count) best = { first, count, lengthM }
  })
  return best
}

/**
 * Groups that keep every flow between two bounds, undefined where `mostGroups` are too few. To take the longest run
 * each time is the fewest groups: whatever another choice reaches, this one has reached too.
 */
const groupsWithin = (
  choices: Choices,
  mostGroups: number,
  least: number,
  most: number,
): readonly TubeGroup[] | undefined => {
  const groups: TubeGroup[] = []
  let first = 0
  while (first < choices.flowM3S.length) {
    const group = longestRun(choices, first, least, most)
    if (group.count === 0 || groups.length === mostGroups) return undefined
    groups.push(group)
    first += group.count
  }
  return groups
}

/**
 * The best cut of a lateral into at most `mostGroups` groups of neighbouring stations with one tube length each, in
 * whole steps of `stepM`: of all such cuts, the one whose flows, together with the target, spread least at the heads
 * given (m over each outlet). Found by moving a window over all flows that any length gives at any station, so nothing
 * is missed.
 *
 * Undefined where there are no stations, or one has no head.
 */
export const gradedGroups = (
  headM: Float64Array,
  flowM3S: number,
  stock: TubeStock,
  kinematicM2S: number,
  { mostGroups, stepM }: { readonly mostGroups: number; readonly stepM: number },
): TubeGroups | undefined => {
  const exact = gradedLengths(headM, flowM3S, stock, kinematicM2S)
  if (exact.length === 0 || Math.min(...headM) <= 0) return undefined
  const choices = choicesFor(headM, exact, stepM, stock, kinematicM2S)
  const flows = Float64Array.from([flowM3S, ...choices.flowM3S.flatMap((row) => [...row])]).sort()
  let top = flows.indexOf(flowM3S)
  let best: TubeGroups | undefined
  for (const least of flows.filter((flow) => flow <= flowM3S)) {
    for (; top < flows.length; top += 1) {
      const most = flows[top] ?? Infinity
      const spread = (most - least) / most
      if (best !== undefined && spread >= best.spread) break
      const groups = groupsWithin(choices, mostGroups, least, most)
      if (groups === undefined) continue
      best = { groups, spread }
      break
    }
  }
  return best
}
