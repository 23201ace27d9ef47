import type { Point } from '../geometry/point'
import type { Axis } from './axis'
import { candidates, stringCandidates, type Candidate, type Guide } from './snapCandidates'
import { movingPoint, type Moving } from './snapMoving'
import type { SnapScene } from './snapScene'

/** How far to shift what is moved so that it lines up, and why. */
export interface Snap {
  readonly dxMm: number
  readonly dyMm: number
  readonly guides: readonly Guide[]
}

/** Nearer than this on the screen, a thing lines up. */
export const SNAP_PX = 8

export const NO_SNAP: Snap = { dxMm: 0, dyMm: 0, guides: [] }

/** Shifts that differ by less are the same: rounding, far under a tick. */
const SAME_MM = 1e-6

const nearest = (all: readonly Candidate[], withinMm: number): Candidate | undefined => {
  let near: Candidate | undefined
  let least = withinMm
  for (const candidate of all) {
    const byMm = Math.abs(candidate.shiftMm)
    if (near ? byMm < least - SAME_MM : byMm <= least) {
      near = candidate
      least = byMm
    }
  }
  return near
}

/**
 * What stands there comes first; whole steps from the wall strings lie so close together that they would always be
 * nearer, so they count only where nothing else is in reach.
 */
const along = (moving: Moving, scene: SnapScene, withinMm: number, axis: Axis): Candidate | undefined =>
  nearest(candidates(moving, scene, axis), withinMm) ??
  nearest(stringCandidates(moving, scene, axis), withinMm)

/** Lines a moving thing up along x and y, each by itself, with what is nearest within `withinMm`. */
export const snap = (moving: Moving, scene: SnapScene, withinMm: number): Snap => {
  const x = along(moving, scene, withinMm, 'x')
  const y = along(moving, scene, withinMm, 'y')
  return {
    dxMm: x?.shiftMm ?? 0,
    dyMm: y?.shiftMm ?? 0,
    guides: [x, y].flatMap((candidate) => (candidate ? [candidate.guide()] : [])),
  }
}

/** Nearer than a tick is there. */
const THERE_MM = 0.01

/** Guides tell the truth only where a thing really went: a row's end goes by whole racks, a door into its wall. */
export const keptGuides = (guides: readonly Guide[], at: Point): readonly Guide[] =>
  guides.filter(({ lines }) =>
    lines.flat().some((end) => Math.abs(end.x - at.x) < THERE_MM || Math.abs(end.y - at.y) < THERE_MM),
  )

/** Lines up a single place. */
export const snapPoint = (at: Point, scene: SnapScene, withinMm: number): Snap =>
  snap(movingPoint(at), scene, withinMm)
