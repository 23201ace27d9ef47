import { offset, type Mirror } from '../../geometry/motion'
import type { Point } from '../../geometry/point'
import type { PartId } from '../../model/ids'
import type { Preset } from '../../model/partKind'
import { onFloor } from '../floor'
import { mirrorStanding } from '../footprint'
import { rowLengthMm } from './frame'
import { rackRowSchema, type RackRow } from './schema'

/** A complete row with the middle of its centreline at a place. */
export const createRow = (id: PartId, name: string, at: Point, preset: Preset<RackRow>): RackRow => {
  const part = rackRowSchema.parse({ ...preset.values, kind: 'rack-row', id, name, at: onFloor(at) })
  return { ...part, at: onFloor(offset(at, part.heading, -rowLengthMm(part) / 2, 0)) }
}

/** A mirror swaps left and right: the riser pipe's side, and a tower taken out of the first line is then out of the last. */
export const mirrorRow = (part: RackRow, mirror: Mirror): RackRow => ({
  ...mirrorStanding(part, mirror),
  riserSide: part.riserSide === 'left' ? 'right' : 'left',
  takenOut: part.takenOut
    .map((tower) => tower - 2 * (tower % part.lines) + part.lines - 1)
    .sort((a, b) => a - b),
})
