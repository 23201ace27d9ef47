import { memo, type RefObject } from 'react'
import { Shape } from 'react-konva/lib/ReactKonvaCore'
import { overlaps, type Box } from '../geometry/box'
import { paint } from '../drawing/paint'
import type { Mark } from '../model/drawing'
import type { Lens } from './lens'

interface MarksShapeProps {
  readonly marks: readonly Mark[]
  /** Nothing of the marks lies outside, but for words; undefined draws them wherever they are. */
  readonly box: Box | undefined
  /** Read when drawing, so that a change of view draws again without a new shape. */
  readonly lens: RefObject<Lens>
}

/** Marks of one part as one shape, left out while they are off the screen. */
export const MarksShape = memo(function MarksShape({ marks, box, lens }: MarksShapeProps) {
  return (
    <Shape
      listening={false}
      perfectDrawEnabled={false}
      sceneFunc={(ctx) => {
        const { paint: view } = lens.current
        if (!box || overlaps(box, view.within)) paint(ctx, marks, view)
      }}
    />
  )
})
