import type { Box } from '../geometry/box'
import { boxOf } from '../geometry/box'
import type { Axis } from '../geometry/facing'
import type { Point } from '../geometry/point'
import { sides, wallAhead } from '../geometry/wallAhead'
import type { Built } from '../model/built'
import type { PartId } from '../model/ids'
import { rememberEach, rememberLast } from '../model/remember'
import { inches } from '../units/length'
import { solidsOf } from './solids'

/** What lies flatter than this is stepped over: a floor drain, a sill. Common practice, no source. */
const STEP_OVER_MM = inches(2)

/** Nobody's head reaches this: what hangs higher does not narrow an aisle. 29 CFR 1910.36(g)(1): 6 ft 8 in. */
const HEAD_MM = inches(80)

/** Something that narrows a way, as a box. */
export interface Standing {
  readonly part: PartId
  readonly box: Box
}

/** A row, and the axis that its racks are chained along, which need not be its longer side. */
export interface StandingRow extends Standing {
  readonly runsAlong: Axis
}

/** An obstacle, and how far it is from the nearest wall, mm. */
export interface Thing extends Standing {
  readonly wallMm: number
}

const rowBoxOf = rememberEach<Built, null, StandingRow | undefined>(({ rack, ...built }) => {
  const solids = rack && solidsOf(built, ['canopy', 'frame', 'foot'])
  const facesEastOrWest = rack && rack.leftFace.facing % 180 === 0
  return solids && { part: built.part, box: solids.box, runsAlong: facesEastOrWest ? 'y' : 'x' }
})

/** Each row as the box of its widest parts: leaves, bars, runners, foot plates. Asked by many rules in one evaluation. */
export const rowBoxes = rememberLast((built: readonly Built[]): readonly StandingRow[] =>
  built.flatMap((b) => rowBoxOf(b, null) ?? []),
)

const toWallMm = (box: Box, outline: readonly Point[]): number =>
  Math.min(...sides.map(([axis, sign]) => Math.abs(wallAhead(box, outline, axis, sign)?.gapMm ?? Infinity)))

const thingsOf = rememberEach<Built, readonly Point[], readonly Thing[]>((built, outline) =>
  built.bodies
    .filter(({ role }) => role === 'post' || role === 'equipment')
    .filter(({ fromMm, toMm }) => fromMm < HEAD_MM && toMm > STEP_OVER_MM)
    .map((body) => {
      const box = boxOf(body.outline)
      return { part: built.part, box, wallMm: toWallMm(box, outline) }
    }),
)

/** Posts and equipment that narrow a way at the height of a person. */
export const obstacleThings = (built: readonly Built[], outline: readonly Point[]): Thing[] =>
  built.flatMap((b) => thingsOf(b, outline))
