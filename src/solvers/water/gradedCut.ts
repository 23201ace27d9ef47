import type { Pipe } from './friction'
import { gradedGroups, gradedLengths, type TubeGroup, type TubeStock } from './gradedTubes'
import {
  type HeadLine,
  headLineFrom,
  headLineTaking,
  lateralDrawing,
  lateralOf,
  type TubedLateral,
} from './lateral'
import { tubeHeadM } from './tube'
import { evennessOf } from './uniformity'

/** A lateral whose tubes are still to be cut. */
export type UncutLateral = Omit<TubedLateral, 'tubes'>

export interface GradedWish {
  /** What each tower should get, m3/s. */
  readonly flowM3S: number
  /** Tube of the station with the least head over its outlet, m. */
  readonly shortestM: number
  readonly stock: TubeStock
  /** Different lengths, or colours, at most. */
  readonly mostGroups: number
  /** Lengths are whole steps, m. */
  readonly stepM: number
}

/** Groups with what comes of them. */
interface Cut {
  readonly groups: readonly TubeGroup[]
  /** Heads and draws at the inlet head that gives the towers their target on the average. */
  readonly line: HeadLine
  /** (most - least) / most of the towers' flows there. */
  readonly spread: number
}

export interface GradedCut extends Cut {
  /** Length at each station that would give every tower the same, m. */
  readonly exactM: Float64Array
}

/** Heads over the outlets with even draws, shifted so that the least of them just feeds the shortest tube. */
const evenHeads = (lateral: UncutLateral, { flowM3S, stock, shortestM }: GradedWish, nu: number) => {
  const draws = lateral.towers.map((towers) => towers * flowM3S)
  const { headM } = headLineFrom(lateralDrawing(draws, lateral.pipes, nu), 0)
  const heads = headM.map((head, station) => head - (lateral.outletM[station] ?? 0))
  const shift = tubeHeadM(flowM3S, { ...stock, lengthM: shortestM }, nu) - Math.min(...heads)
  return heads.map((head) => head + shift)
}

const towerSpread = ({ drawM3S }: HeadLine, towers: readonly number[]): number => {
  const flows = drawM3S.map((draw, station) => draw / (towers[station] ?? 1)).filter(Number.isFinite)
  return evennessOf(flows)?.spread ?? 0
}

const cutWith = (
  lateral: UncutLateral,
  groups: readonly TubeGroup[],
  { stock, flowM3S }: GradedWish,
  nu: number,
): Cut => {
  const tubes = groups.flatMap(({ count, lengthM }) => Array<Pipe>(count).fill({ ...stock, lengthM }))
  const towers = lateral.towers.reduce((sum, each) => sum + each, 0)
  const line = headLineTaking(lateralOf({ ...lateral, tubes }, nu), towers * flowM3S)
  return { groups, line, spread: towerSpread(line, lateral.towers) }
}

const withGroup = (groups: readonly TubeGroup[], index: number, change: Partial<TubeGroup>): TubeGroup[] =>
  groups.map((group, i) => (i === index ? { ...group, ...change } : group))

/** The same groups with one length a step shorter or longer. */
const lengthsBeside = (groups: readonly TubeGroup[], stepM: number): TubeGroup[][] =>
  groups.flatMap(({ lengthM }, i) =>
    [-1, 1]
      .map((steps) => Math.round(lengthM / stepM) + steps)
      .filter((steps) => steps >= 1)
      .map((steps) => withGroup(groups, i, { lengthM: steps * stepM })),
  )

/** The same groups with one station given to the neighbour. */
const boundsBeside = (groups: readonly TubeGroup[]): TubeGroup[][] =>
  groups.slice(1).flatMap((after, i) => {
    const before = groups[i]
    if (before === undefined) return []
    const moved = (by: number) =>
      withGroup(withGroup(groups, i, { count: before.count + by }), i + 1, {
        first: after.first + by,
        count: after.count - by,
      })
    return [...(before.count > 1 ? [moved(-1)] : []), ...(after.count > 1 ? [moved(1)] : [])]
  })

const shortestOf = (groups: readonly TubeGroup[]): number => Math.min(...groups.map(({ lengthM }) => lengthM))

/**
 * Goes to the best cut that differs by one length or one station, until none is better. The shortest tube may not grow:
 * longer tubes everywhere are always more even, and want more head, and that is not this choice.
 */
const improved = (lateral: UncutLateral, cut: Cut, wish: GradedWish, nu: number): Cut => {
  const shortestM = shortestOf(cut.groups)
  let best = cut
  for (;;) {
    const here = best
    for (const groups of [...lengthsBeside(here.groups, wish.stepM), ...boundsBeside(here.groups)]) {
      if (shortestOf(groups) > shortestM) continue
      const other = cutWith(lateral, groups, wish, nu)
      if (other.spread < best.spread) best = other
    }
    if (best === here) return best
  }
}

/**
 * Tubes cut by station that cancel a lateral's head line: exact, and in a few groups that a crew can cut and tell apart
 * by colour. The groups are the best ones for the head line of even flows; uneven flows bend that line a little, so
 * from there single lengths and stations are tried until no such change is better. Undefined without stations.
 */
export const gradedCut = (
  lateral: UncutLateral,
  wish: GradedWish,
  kinematicM2S: number,
): GradedCut | undefined => {
  if (lateral.pipes.length === 0) return undefined
  const { flowM3S, stock } = wish
  const headM = evenHeads(lateral, wish, kinematicM2S)
  const found = gradedGroups(headM, flowM3S, stock, kinematicM2S, wish)
  if (found === undefined) return undefined
  const first = cutWith(lateral, found.groups, wish, kinematicM2S)
  return {
    exactM: gradedLengths(headM, flowM3S, stock, kinematicM2S),
    ...improved(lateral, first, wish, kinematicM2S),
  }
}
