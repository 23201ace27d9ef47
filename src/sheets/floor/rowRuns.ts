import { between, type Point } from '../../geometry/point'
import type { Built } from '../../model/built'
import type { PartId } from '../../model/ids'

/** A row of racks as a sheet measures it: its centreline from its start to its end. */
export interface RowRun {
  readonly part: PartId
  readonly from: Point
  readonly to: Point
  /** Which way the row runs on the floor. */
  readonly runs: 'x' | 'y'
}

/** Every row of racks of a bay. */
export const rowRuns = (built: readonly Built[]): RowRun[] =>
  built.flatMap(({ part, rack }) => {
    if (rack === undefined) return []
    const from = between(rack.leftFace.from, rack.rightFace.from, 0.5)
    const to = between(rack.leftFace.to, rack.rightFace.to, 0.5)
    const runs = Math.abs(to.x - from.x) > Math.abs(to.y - from.y) ? 'x' : 'y'
    return [{ part, from, to, runs }]
  })
