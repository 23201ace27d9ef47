import type { Stick } from '../../model/built'
import { inches } from '../../units/length'
import { boardPiece } from './board'
import { SIDES } from './pairs'
import type { RackPlan } from './plan'
import { ACROSS, ALONG, layFrom, layMiddle, type RowPlace } from './stick'

const SPLICE_MM = inches(16)

const rackAt = ({ part }: RackPlan, u: number): number =>
  Math.min(Math.max(Math.floor(u / part.rackLengthMm), 0), part.racks - 1)

/** Both sides of the row at a distance from the centreline. */
const bothSides = (u: number, v: number, z: number): RowPlace[] =>
  SIDES.map((side) => ({ u, v: side * v, z }))

/**
 * Runners along the row, outside the risers, from the first riser's outer face to the last one's, in equal pieces.
 * Where sixteenths leave a gap, it is shared among the joints.
 */
const longRunners = (plan: RackPlan): Stick[] => {
  const { part, frame, positions, materials, lengths } = plan
  const { thickMm, wideMm } = materials.lumber
  const { count, lengthMm } = lengths.runner
  const stepMm = count > 1 ? (lengths.runnerRunMm - lengthMm) / (count - 1) : 0
  const startU = positions.insetMm - thickMm / 2
  const besideMm = lengths.crossMm / 2 + thickMm / 2
  const z = part.footPlateMm + wideMm / 2
  const runner = boardPiece(plan, 'BR', lengthMm, 'on-edge')
  const splice = boardPiece(plan, 'SP', SPLICE_MM, 'on-edge')
  const sticks: Stick[] = []
  for (let index = 0; index < count; index++) {
    const u = startU + index * stepMm
    for (const from of bothSides(u, besideMm, z))
      sticks.push(layFrom(frame, runner, from, ALONG, rackAt(plan, u + lengthMm / 2)))
    if (index === 0) continue
    for (const middle of bothSides(u, besideMm + thickMm, z))
      sticks.push(layMiddle(frame, splice, middle, ALONG, rackAt(plan, u)))
  }
  return sticks
}

/** Bearers lie flat across the long runners; short runners bear the gutters themselves. */
const bearers = (plan: RackPlan): Stick[] => {
  const piece = boardPiece(plan, 'GB', plan.lengths.bearerMm, 'flat')
  const z = plan.levels.bearerTopMm - piece.heightMm / 2
  return plan.positions.bearerU.map((u) =>
    layMiddle(plan.frame, piece, { u, v: 0, z }, ACROSS, rackAt(plan, u)),
  )
}

/** What runs along the row on the floor, and what lies on it. */
export const runnerSticks = (plan: RackPlan): Stick[] =>
  plan.part.base === 'short-runners' ? [] : [...longRunners(plan), ...bearers(plan)]
