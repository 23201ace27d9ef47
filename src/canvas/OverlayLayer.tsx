import { useLayoutEffect, useMemo, useRef } from 'react'
import { Group, Layer, Shape } from 'react-konva/lib/ReactKonvaCore'
import { useStore } from 'zustand'
import type { CanvasLike } from '../drawing/paint'
import type { PlaceChange } from '../evaluate/compare/placeChanges'
import type { Evaluation } from '../evaluate/evaluation'
import type { Point } from '../geometry/point'
import type { Finding } from '../model/finding'
import type { PartId } from '../model/ids'
import { rememberLast } from '../model/remember'
import type { Paint } from '../store/planner'
import { usePlannerState } from '../store/react'
import { drawNorth, drawScaleBar } from './compass'
import { useCostChange } from './counter/useCostChange'
import { useDifference } from './difference/useDifference'
import { distancesOf } from './distances'
import type { DrawnPart } from './drawnParts'
import type { Gestures } from './gestures'
import { handlesOf } from './hit'
import { cornerOf, drawLabels, type Label, type Slip } from './label'
import { floorTransform, type Lens } from './lens'
import { MarksShape } from './MarksShape'
import { nameBoxes } from './names'
import {
  distanceLabel,
  drawChosen,
  drawDistance,
  drawFinding,
  drawGuide,
  drawHandles,
  drawMarquee,
  drawMeasure,
  findingLabel,
  measureLabel,
  noteLabels,
} from './overlayPaint'
import { usePlaces } from './places/usePlaces'
import { useOverDrains } from './returns/useOverDrains'
import { RULER_PX, drawRulers } from './rulers'
import type { Overlay } from './tools/tool'
import { useFindings } from './useFindings'
import { flowChange } from './water/flowChange'
import { useOverPlan } from './water/useOverPlan'

interface Seen {
  readonly lens: Lens
  readonly evaluation: Evaluation
  /** Of the layout itself, whatever is previewed. */
  readonly settled: Evaluation
  readonly water: Paint
  /** What draws over a painted plan, once it has come. */
  readonly over: ReturnType<typeof useOverPlan>
  /** What is said of the drains, once it has come. */
  readonly drains: ReturnType<typeof useOverDrains>
  readonly selection: readonly PartId[]
  /** Parts that a gesture is changing. */
  readonly moved: readonly PartId[]
  readonly overlay: Overlay
  readonly pointer: Point | undefined
  readonly finding: string | undefined
  /** The counted thing whose places are pointed out, and what does so, once it has come. */
  readonly pointedOut: string | undefined
  readonly places: ReturnType<typeof usePlaces>
  /** How the plan differs from another, and what draws it, once it has come. */
  readonly differing: readonly PlaceChange[]
  readonly difference: ReturnType<typeof useDifference>
  readonly findingsOf: ReturnType<typeof useFindings>
  /** What the gesture does to boards, money and hours, once the prices have come. */
  readonly costChange: ReturnType<typeof useCostChange>
  /** What its labels step beside. */
  readonly names: readonly Slip[]
}

const drawGesture = (ctx: CanvasLike, { lens, overlay }: Seen) => {
  const { guides = [], marquee, measure } = overlay
  for (const guide of guides) drawGuide(ctx, lens, guide)
  if (marquee) drawMarquee(ctx, lens, marquee)
  if (measure) drawMeasure(ctx, lens, measure)
}

const gestureLabels = (seen: Seen): Label[] => {
  const { lens, evaluation, settled, moved, overlay, pointer, costChange } = seen
  const { guides = [], measure, note } = overlay
  const notes = [
    ...(note === undefined ? [] : [note]),
    ...guides.map(({ reason }) => reason),
    ...flowChange(settled, evaluation, moved, lens.writer),
    ...costChange(settled, evaluation),
  ]
  return [
    ...(measure ? [measureLabel(lens, measure)] : []),
    ...(pointer ? noteLabels(lens, pointer, notes) : []),
  ]
}

/** The scale bar with its words, from the lower left of the paper, px. */
const SCALE_PX = { wide: 250, high: 36 }

/** Words of the overlay stay clear of the rulers. */
const roomIn = rememberLast(({ size }: Lens): Slip => ({
  x0: RULER_PX.left + 4,
  y0: RULER_PX.top + 4,
  x1: size.width - 4,
  y1: size.height - 4,
}))

/** What words along the drains leave free: names on the plan, the switch of the water, north arrow and scale bar. */
const keptClear = rememberLast((names: readonly Slip[], room: Slip): readonly Slip[] => [
  ...names,
  cornerOf(room),
  { x0: room.x0, x1: room.x0 + SCALE_PX.wide, y0: room.y1 - SCALE_PX.high, y1: room.y1 },
])

/** The finding that is opened, as it now stands. */
const openedIn = ({ finding, findingsOf, evaluation }: Seen): readonly Finding[] =>
  finding === undefined ? [] : findingsOf(evaluation.bay).filter(({ key }) => key === finding)

/** What the places that are pointed out are places of. */
const placesLabels = ({ places, pointedOut, evaluation }: Seen): Label[] =>
  places && pointedOut !== undefined ? [places.placesLabel(evaluation, pointedOut)] : []

/** Falls, flows and pegs along the drains, under all that follows the pointer; gives what they cover. */
const drawReturns = (ctx: CanvasLike, seen: Seen): readonly Slip[] => {
  const { lens, evaluation, drains, selection, moved, pointer, names, water } = seen
  if (!drains) return []
  const chosen = drains.chosenDrains(evaluation, selection, moved.length > 0 ? undefined : pointer, lens)
  const tags = drains.laidTags(evaluation, water, lens, chosen, roomIn(lens), keptClear(names, roomIn(lens)))
  drains.drawDrains(ctx, evaluation, lens, tags)
  return tags.map(({ slip }) => slip)
}

/** Everything over the floor: what is chosen, its distances, the gesture, the opened finding, and the frame. */
const drawOverlay = (ctx: CanvasLike, seen: Seen) => {
  const { lens, evaluation, water, over, selection, moved } = seen
  const isMoving = moved.length > 0
  const isRead = !isMoving && !seen.overlay.measure
  const chosen = isMoving ? moved : selection
  const distances = distancesOf(evaluation, chosen, lens.writer)
  const findings = openedIn(seen)
  over?.drawOver(ctx, water, evaluation, moved, lens)
  const tags = drawReturns(ctx, seen)
  drawChosen(ctx, lens, evaluation, chosen)
  if (!isMoving) drawHandles(ctx, lens, handlesOf(evaluation.layout, selection))
  for (const distance of distances) drawDistance(ctx, lens, distance)
  for (const finding of findings) drawFinding(ctx, lens, finding)
  if (seen.pointedOut !== undefined) seen.places?.drawPlaces(ctx, evaluation, seen.pointedOut, lens)
  seen.difference?.drawDifference(ctx, seen.differing, lens)
  drawGesture(ctx, seen)
  const labels = [
    ...((isRead && over?.pointerLabels(water, evaluation, seen.pointer, lens)) || []),
    ...distances.map((distance) => distanceLabel(lens, distance)),
    ...findings.map((finding) => findingLabel(lens, finding)),
    ...gestureLabels(seen),
    ...placesLabels(seen),
    ...(seen.difference?.differenceLabels(seen.differing, lens) ?? []),
    ...(over?.labelsOver(water, evaluation, lens) ?? []),
  ]
  drawNorth(ctx, lens, evaluation.bay.house.northDegrees)
  drawScaleBar(ctx, lens)
  drawLabels(ctx, labels, lens.theme, roomIn(lens), [...seen.names, ...tags])
  drawRulers(ctx, lens, evaluation.bay.house, seen.pointer)
}

const NONE: readonly PlaceChange[] = []

interface OverlayLayerProps {
  readonly lens: Lens
  readonly gestures: Gestures
  readonly evaluation: Evaluation
  readonly moved: readonly PartId[]
  /** What is dragged. */
  readonly parts: readonly DrawnPart[]
  /** Everything on the floor, for its names. */
  readonly all: readonly DrawnPart[]
}

/** What changes with every move of the pointer, on a canvas of its own over the floor. */
export function OverlayLayer({ lens, gestures, evaluation, moved, parts, all }: OverlayLayerProps) {
  const [settled, water, selection, pointer, finding, pointedOut, differing = NONE] = usePlannerState(
    (state) => [
      state.settled,
      state.paint,
      state.selection,
      state.pointer,
      state.finding,
      state.pointedOut,
      state.differing,
    ],
  )
  const overlay = useStore(gestures.shown, (shown) => shown.overlay)
  const held = useRef(lens)
  useLayoutEffect(() => {
    held.current = lens
  }, [lens])
  const over = useOverPlan(water !== 'plain')
  const drains = useOverDrains()
  const findingsOf = useFindings()
  const difference = useDifference(differing.length > 0)
  const places = usePlaces(pointedOut !== undefined)
  const costChange = useCostChange(moved.length > 0)
  const names = useMemo(() => {
    const ids = all.map(({ id }) => id)
    return [...nameBoxes(all, lens), ...(over?.boxesOver(water, evaluation, ids, lens) ?? [])]
  }, [all, lens, evaluation, water, over])
  const seen: Seen = {
    lens,
    evaluation,
    settled,
    water,
    over,
    drains,
    selection,
    moved,
    overlay,
    pointer,
    finding,
    pointedOut,
    places,
    differing,
    difference,
    findingsOf,
    costChange,
    names,
  }
  return (
    <Layer listening={false}>
      <Group {...floorTransform(lens.view)}>
        {parts.map(({ id, box, shapes }) => (
          <MarksShape key={id} marks={shapes} box={box} lens={held} />
        ))}
        {over && (
          <Shape
            listening={false}
            sceneFunc={(ctx) => over.paintMoved(ctx, water, evaluation, moved, lens)}
          />
        )}
        {parts.map(({ id, box, words }) => (
          <MarksShape key={id} marks={words} box={box} lens={held} />
        ))}
      </Group>
      <Shape listening={false} sceneFunc={(ctx) => drawOverlay(ctx, seen)} />
    </Layer>
  )
}
