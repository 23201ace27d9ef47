import type { CanvasLike } from '../../drawing/paint'
import type { Evaluation } from '../../evaluate/evaluation'
import type { Point } from '../../geometry/point'
import type { PartId } from '../../model/ids'
import type { Paint } from '../../store/planner'
import { hitIndexOf } from '../hit'
import type { Label, Slip } from '../label'
import type { Lens } from '../lens'
import { noteLabels } from '../overlayPaint'
import { shimLabels, shimNotes } from '../shims/shimNotes'
import { strengthNotes } from '../strength/strengthWords'
import { paintWater } from './paintWater'
import { rowMarks } from './rowMarks'
import { drawRowStates, rowSlips, slipBox } from './rowStates'
import { towerNotes } from './under'
import { drawExtremes, extremeLabels, ringBoxes, velocityLabels } from './waterLabels'

/** What a painted plan has over it. Asked for when the plan is painted: the first bay is drawn without it. */

/** Towers or pipes of the parts that are moved, over their own marks. In mm of floor. */
export const paintMoved = (
  ctx: CanvasLike,
  as: Paint,
  evaluation: Evaluation,
  moved: readonly PartId[],
  lens: Lens,
): void => paintWater(ctx, as, evaluation, (part) => moved.includes(part), lens)

/** States of the rows that are moved, and the rings. In px of canvas. */
export const drawOver = (
  ctx: CanvasLike,
  as: Paint,
  evaluation: Evaluation,
  moved: readonly PartId[],
  lens: Lens,
): void => {
  const marks = rowMarks(as)
  if (marks) drawRowStates(ctx, evaluation, moved, lens, marks)
  if (as === 'flow') drawExtremes(ctx, lens, evaluation)
}

/** The least and the most fed tower, the fastest stretch of each main, or the tallest foot of each row that has too much under it. */
export const labelsOver = (as: Paint, evaluation: Evaluation, lens: Lens): readonly Label[] => {
  if (as === 'flow') return extremeLabels(lens, evaluation)
  if (as === 'shims') return shimLabels(lens, evaluation)
  return as === 'velocity' ? velocityLabels(lens, evaluation) : []
}

const notesAt = (as: Paint, evaluation: Evaluation, at: Point, lens: Lens): readonly string[] => {
  if (as === 'shims') return shimNotes(evaluation, at, lens)
  if (as === 'strength') return strengthNotes(evaluation, at, lens)
  if (as !== 'flow') return []
  const part = hitIndexOf(evaluation.bay.built, null).at(at, 0)
  return towerNotes(evaluation, part, at, lens.writer)
}

/** What the tower under the pointer takes, what is under the foot there, or what the rail carries. */
export const pointerLabels = (
  as: Paint,
  evaluation: Evaluation,
  pointer: Point | undefined,
  lens: Lens,
): readonly Label[] => {
  if (!pointer) return []
  const notes = notesAt(as, evaluation, pointer, lens)
  return noteLabels(lens, pointer, notes).map((label) => ({ ...label, isFirm: true }))
}

/** Where the rows say how they fare, and where the least and the most fed tower are ringed: labels step beside. */
export const boxesOver = (
  as: Paint,
  evaluation: Evaluation,
  parts: readonly PartId[],
  lens: Lens,
): readonly Slip[] => {
  const marks = rowMarks(as)
  const slips = marks ? rowSlips(evaluation, parts, lens, marks).map(slipBox) : []
  return as === 'flow' ? [...slips, ...ringBoxes(lens, evaluation)] : slips
}
