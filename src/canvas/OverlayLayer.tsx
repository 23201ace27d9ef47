import { useMemo, useRef } from 'react'
import { Group, Layer, Shape } from 'react-konva/lib/ReactKonvaCore'
import { useStore } from 'zustand'
import type { CanvasLike } from '../drawing/paint'
import type { Evaluation } from '../evaluate/evaluation'
import type { Point } from '../geometry/point'
import type { PartId } from '../model/ids'
import { usePlannerState } from '../store/react'
import { drawNorth, drawScaleBar } from './compass'
import { distancesOf } from './distances'
import type { DrawnPart } from './drawnParts'
import type { Gestures } from './gestures'
import { handlesOf } from './hit'
import { floorTransform, type Lens } from './lens'
import { MarksShape } from './MarksShape'
import {
  drawChosen,
  drawDistance,
  drawFinding,
  drawGuide,
  drawHandles,
  drawMarquee,
  drawMeasure,
  drawNotes,
} from './overlayPaint'
import { drawRulers } from './rulers'
import type { Overlay } from './tools/tool'

interface Seen {
  readonly lens: Lens
  readonly evaluation: Evaluation
  readonly selection: readonly PartId[]
  /** Parts that a gesture is changing. */
  readonly moved: readonly PartId[]
  readonly overlay: Overlay
  readonly pointer: Point | undefined
  readonly finding: string | undefined
}

const drawGesture = (ctx: CanvasLike, { lens, overlay, pointer }: Seen) => {
  const { guides = [], marquee, measure, note } = overlay
  for (const guide of guides) drawGuide(ctx, lens, guide)
  if (marquee) drawMarquee(ctx, lens, marquee)
  if (measure) drawMeasure(ctx, lens, measure)
  const notes = [...(note === undefined ? [] : [note]), ...guides.map(({ reason }) => reason)]
  if (pointer) drawNotes(ctx, lens, pointer, notes)
}

/** Everything over the floor: what is chosen, its distances, the gesture, the opened finding, and the frame. */
const drawOverlay = (ctx: CanvasLike, seen: Seen) => {
  const { lens, evaluation, selection, moved } = seen
  const isMoving = moved.length > 0
  drawChosen(ctx, lens, evaluation, isMoving ? moved : selection)
  if (!isMoving) drawHandles(ctx, lens, handlesOf(evaluation.layout, selection))
  for (const distance of distancesOf(evaluation, isMoving ? moved : selection, lens.writer))
    drawDistance(ctx, lens, distance)
  const finding = evaluation.findings.find(({ key }) => key === seen.finding)
  if (finding) drawFinding(ctx, lens, finding)
  drawGesture(ctx, seen)
  drawNorth(ctx, lens, evaluation.bay.house.northDegrees)
  drawScaleBar(ctx, lens)
  drawRulers(ctx, lens, evaluation.bay.house, seen.pointer)
}

interface OverlayLayerProps {
  readonly lens: Lens
  readonly gestures: Gestures
  readonly evaluation: Evaluation
  readonly moved: readonly PartId[]
  /** What is dragged. */
  readonly parts: readonly DrawnPart[]
}

/** What changes with every move of the pointer, on a canvas of its own over the floor. */
export function OverlayLayer({ lens, gestures, evaluation, moved, parts }: OverlayLayerProps) {
  const [selection, pointer, finding] = usePlannerState((state) => [
    state.selection,
    state.pointer,
    state.finding,
  ])
  const overlay = useStore(gestures.shown, (shown) => shown.overlay)
  const held = useRef(lens)
  held.current = lens
  const marks = useMemo(
    () => parts.map((part) => ({ ...part, all: [...part.shapes, ...part.words] })),
    [parts],
  )
  const seen: Seen = { lens, evaluation, selection, moved, overlay, pointer, finding }
  return (
    <Layer listening={false}>
      <Group {...floorTransform(lens.view)}>
        {marks.map(({ id, box, all }) => (
          <MarksShape key={id} marks={all} box={box} lens={held} />
        ))}
      </Group>
      <Shape listening={false} sceneFunc={(ctx) => drawOverlay(ctx, seen)} />
    </Layer>
  )
}
