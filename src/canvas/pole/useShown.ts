import { useEffect, useRef, useState } from 'react'
import type { Evaluation } from '../../evaluate/evaluation'
import { boxOf, middle } from '../../geometry/box'
import type { Point } from '../../geometry/point'
import type { PartId } from '../../model/ids'
import { usePlannerState } from '../../store/react'
import { hitIndexOf } from '../hit'
import { movedIn } from '../moved'

/** Where the pole stands. */
export interface Shown {
  readonly part: PartId | undefined
  readonly at: Point
  /** Of a row that is chosen, the line that was asked for. */
  readonly line?: number | undefined
  /** Whether it follows what is under the pointer, and leaves with it. */
  readonly isPointed: boolean
}

const HIT_PX = 6

const placeOf = ({ bay }: Evaluation, part: PartId | undefined): Point => {
  const body = part === undefined ? undefined : bay.builtOf.get(part)?.bodies[0]
  return body ? middle(boxOf(body.outline)) : bay.house.benchmark.at
}

/** Where a part was pointed at last: so its stack stays when the pointer goes on to the pole. */
const useLast = (part: PartId | undefined, pointer: Point | undefined) => {
  const last = useRef<{ part: PartId; at: Point }>(undefined)
  useEffect(() => {
    if (part !== undefined && pointer) last.current = { part, at: pointer }
  }, [part, pointer])
  return last
}

/** What is under the pointer, or else what is chosen, or else the first row. While something is dragged, that. */
export const useShown = (): Shown & { readonly pickLine: (line: number) => void } => {
  const [evaluation, layout, preview, selection, pointer, pxPerMm] = usePlannerState((state) => [
    state.evaluation,
    state.layout,
    state.preview,
    state.selection,
    state.pointer,
    state.view.pxPerMm,
  ])
  const { bay } = evaluation
  const [picked, setPicked] = useState<{ part: PartId; line: number }>()
  // During a drag the index would have to be made anew each frame, for what is known anyway.
  const [carried] = movedIn(layout, preview)
  const hit = pointer && !preview ? hitIndexOf(bay.built, null).at(pointer, HIT_PX / pxPerMm) : undefined
  const last = useLast(hit, pointer)
  const first = bay.built.find(({ rack }) => rack)?.part
  const part = carried ?? hit ?? selection[0] ?? (pointer ? undefined : first)
  const lastAt = last.current?.part === part ? last.current?.at : undefined
  const isPointed = pointer !== undefined && part === hit
  return {
    part,
    at: pointer ?? lastAt ?? placeOf(evaluation, part),
    ...(!isPointed && picked && picked.part === part && { line: picked.line }),
    isPointed,
    pickLine: (line) => part !== undefined && setPicked({ part, line }),
  }
}
