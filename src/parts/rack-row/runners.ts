import type { Stick } from '../../model/built'
import { inches } from '../../units/length'
import { boardPiece } from './board'
import { SIDES } from './pairs'
import type { RackPlan, RunnerRun } from './plan'
import { ACROSS, ALONG, layFrom, layMiddle, type RowPlace } from './stick'

const SPLICE_MM = inches(16)

const rackAt = ({ part }: RackPlan, u: number): number =>
  Math.min(Math.max(Math.floor(u / part.rackLengthMm), 0), part.racks - 1)

/** Both sides of the row at a distance from the centreline. */
const bothSides = (u: number, v: number, z: number): RowPlace[] =>
  SIDES.map((side) => ({ u, v: side * v, z }))

/** Where the pieces of a run begin. Where sixteenths leave a gap, it is shared among the joints. */
const startsOf = ({ fromU, runMm, pieces: { count, lengthMm } }: RunnerRun): number[] => {
  const stepMm = count > 1 ? (runMm - lengthMm) / (count - 1) : 0
  return Array.from({ length: count }, (_, index) => fromU + index * stepMm)
}

/** Runners along the row, outside the risers, with a splice plate over each joint but none before the first piece. */
const longRunners = (plan: RackPlan): Stick[] => {
  const { part, frame, materials, lengths } = plan
  const { thickMm, wideMm } = materials.lumber
  const besideMm = lengths.crossMm / 2 + thickMm / 2
  const z = part.footPlateMm + wideMm / 2
  const splice = boardPiece(plan, 'SP', SPLICE_MM, 'on-edge')
  const sticks: Stick[] = []
  for (const run of lengths.runners) {
    const runner = boardPiece(plan, 'BR', run.pieces.lengthMm, 'on-edge')
    for (const u of startsOf(run)) {
      const isFirst = sticks.length === 0
      for (const from of bothSides(u, besideMm, z))
        sticks.push(layFrom(frame, runner, from, ALONG, rackAt(plan, u + runner.lengthMm / 2)))
      if (isFirst) continue
      for (const middle of bothSides(u, besideMm + thickMm, z))
        sticks.push(layMiddle(frame, splice, middle, ALONG, rackAt(plan, u)))
    }
  }
  return sticks
}

/** Bearers lie flat across the long runners, or in the straps by which the house carries the row; short runners bear the gutters themselves. */
const bearers = (plan: RackPlan): Stick[] => {
  const piece = boardPiece(plan, 'GB', plan.lengths.bearerMm, 'flat')
  const z = plan.levels.bearerTopMm - piece.heightMm / 2
  return plan.positions.bearerU.map((u) =>
    layMiddle(plan.frame, piece, { u, v: 0, z }, ACROSS, rackAt(plan, u)),
  )
}

/** What runs along the row on the floor, and what the gutters lie on. */
export const runnerSticks = (plan: RackPlan): Stick[] => {
  const { base, carriedBy } = plan.part
  if (carriedBy === 'house') return bearers(plan)
  return base === 'short-runners' ? [] : [...longRunners(plan), ...bearers(plan)]
}
