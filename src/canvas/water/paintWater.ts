import type { CanvasLike } from '../../drawing/paint'
import type { Evaluation } from '../../evaluate/evaluation'
import type { PartId } from '../../model/ids'
import type { Paint } from '../../store/planner'
import type { Lens } from '../lens'
import { paintShims } from '../shims/paintShims'
import { shimScale, tallestShimMm } from '../shims/shimScale'
import { shimSpots } from '../shims/shimSpots'
import { paintStrength } from '../strength/paintStrength'
import { strengthSpans } from '../strength/strengthSpans'
import { fastestMS, solvedLegs } from './legs'
import { paintedRows } from './painted'
import { paintLegs } from './paintLegs'
import { paintTowers } from './paintTowers'
import { velocityScale } from './scale'

type IsTaken = (part: PartId) => boolean

/** Paints the towers of the parts taken by flow, their pipes by velocity, what is under them by shims, or their rails by strength. The context's transform is in mm of floor. */
export const paintWater = (
  ctx: CanvasLike,
  as: Paint,
  evaluation: Evaluation,
  isTaken: IsTaken,
  lens: Lens,
): void => {
  if (as === 'flow')
    paintTowers(
      ctx,
      paintedRows(evaluation, lens.units).filter(({ part }) => isTaken(part)),
      lens,
    )
  if (as === 'velocity')
    paintLegs(
      ctx,
      solvedLegs(evaluation).filter(({ part }) => isTaken(part)),
      velocityScale(fastestMS(evaluation), lens.units),
      lens,
    )
  if (as === 'shims')
    paintShims(
      ctx,
      shimSpots(evaluation).filter(({ part }) => isTaken(part)),
      shimScale(tallestShimMm(evaluation), lens.units),
      lens,
    )
  if (as === 'strength')
    paintStrength(
      ctx,
      strengthSpans(evaluation).filter(({ part }) => isTaken(part)),
      lens,
    )
}
