import { useMemo } from 'react'
import { Group, Layer, Shape } from 'react-konva/lib/ReactKonvaCore'
import type { Evaluation } from '../../evaluate/evaluation'
import type { Paint } from '../../store/planner'
import type { DrawnPart } from '../drawnParts'
import { floorTransform, type Lens } from '../lens'
import { Notes } from '../Notes'
import { useSheet } from '../useBitmap'
import { paintWater } from './paintWater'
import { rowMarks } from './rowMarks'
import { drawRowStates } from './rowStates'

interface WaterLayerProps {
  readonly lens: Lens
  readonly evaluation: Evaluation
  readonly as: Paint
  /** All but what is dragged, which lies over this. */
  readonly parts: readonly DrawnPart[]
  readonly isHeavy: boolean
}

/** The water over all that stands still: on a canvas of its own, for every move of one row changes the flow of all. */
export function WaterLayer({ lens, evaluation, as, parts, isHeavy }: WaterLayerProps) {
  const { layer, drawing, held } = useSheet(lens, isHeavy)
  const marks = rowMarks(as)
  const ids = useMemo(() => new Set(parts.map(({ id }) => id)), [parts])
  return (
    <Layer ref={layer} listening={false}>
      <Group {...floorTransform(drawing.view)}>
        <Shape
          listening={false}
          sceneFunc={(ctx) => paintWater(ctx, as, evaluation, (part) => ids.has(part), held.current)}
        />
        <Notes house={evaluation.bay.house} lens={held} parts={parts} />
      </Group>
      {marks && (
        <Shape
          listening={false}
          sceneFunc={(ctx) => drawRowStates(ctx, evaluation, [...ids], held.current, marks)}
        />
      )}
    </Layer>
  )
}
