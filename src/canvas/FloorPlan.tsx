import { lazy, Suspense, useEffect, useId, useRef, useState, type RefObject } from 'react'
import { useStore } from 'zustand'
import { boxOf } from '../geometry/box'
import type { PlannerState } from '../store/planner'
import { usePlanner, usePlannerState } from '../store/react'
import { fitted, type View } from '../store/view'
import { writerFor } from '../units/writer'
import { useCostChange } from './counter/useCostChange'
import { carriedWords } from './distances'
import { FloorStage } from './FloorStage'
import './floorPlan.css'
import { createGestures, type Gestures } from './gestures'
import { showHeld } from './keyboard'
import { keyHelp } from './keys'
import { movedIn } from './moved'
import { toolOf } from './tools/index'
import { useKeys } from './useKeys'
import { usePointing } from './usePointing'
import { flowChange } from './water/flowChange'
import { PaintSwitch } from './water/PaintSwitch'
import './water/water.css'
import { ZoomButtons } from './ZoomButtons'

// Behind the floor: the pole marks gaps that the rules found, and they come last.
const StoryPole = lazy(async () => ({ default: (await import('./pole/StoryPole')).StoryPole }))
// Asked for when the plan is painted: the first bay is drawn without it.
const PaintLegend = lazy(async () => ({ default: (await import('./water/PaintLegend')).PaintLegend }))

const isSameView = (a: View, b: View): boolean => a.x === b.x && a.y === b.y && a.pxPerMm === b.pxPerMm

/** Whether the whole house is shown, as it is at first and until somebody looks closer. */
const isFitted = ({ view, size, layout }: PlannerState): boolean =>
  isSameView(view, fitted(boxOf(layout.house.outline), size))

/** Tells the planner how large the paper is; where the whole house is shown, it stays so. */
const useSize = (paper: RefObject<HTMLElement | null>) => {
  const planner = usePlanner()
  useEffect(() => {
    const element = paper.current
    if (!element) return undefined
    const watch = new ResizeObserver(() => {
      const { clientWidth: width, clientHeight: height } = element
      if (width === 0 || height === 0) return
      const wasFitted = isFitted(planner.store.getState())
      planner.set({ size: { width, height } })
      if (wasFitted) planner.fit()
    })
    watch.observe(element)
    return () => watch.disconnect()
  }, [paper, planner])
}

/** A part taken from the shelf by key or press shows on the plan at once, and the plan takes the keys. */
const usePlacing = (paper: RefObject<HTMLElement | null>, gestures: Gestures) => {
  const planner = usePlanner()
  const placing = usePlannerState((state) => (state.tool === 'place' ? state.placing : undefined))
  useEffect(() => {
    if (placing === undefined) return undefined
    paper.current?.focus({ preventScroll: true })
    showHeld(planner, gestures)
    const letGo = () => {
      gestures.cancel()
      planner.set({ tool: 'select', placing: undefined })
    }
    // A drag from the shelf that ends anywhere else puts the part back.
    window.addEventListener('dragend', letGo)
    return () => window.removeEventListener('dragend', letGo)
  }, [paper, planner, gestures, placing])
}

/** What was done last, for who cannot see it; said twice, it is heard twice. */
function Said() {
  const { words, times } = usePlannerState((state) => state.said)
  return (
    <p className="only-heard" role="status" aria-label="Done">
      <span key={times}>{words}</span>
    </p>
  )
}

/** The live distances of what is dragged, and what the move does to the water and to the cost, for who cannot see them. */
function Carried() {
  const [layout, preview, evaluation, settled, units] = usePlannerState((state) => [
    state.layout,
    state.preview,
    state.evaluation,
    state.settled,
    state.units,
  ])
  const moved = movedIn(layout, preview)
  const writer = writerFor(units)
  const costChange = useCostChange(preview !== undefined)
  const lines = preview
    ? [
        carriedWords(evaluation, moved, writer),
        ...flowChange(settled, evaluation, moved, writer),
        ...costChange(settled, evaluation),
      ]
    : []
  const words = lines.filter(Boolean).join('. ')
  return (
    <p className="only-heard" role="status" aria-label="While dragging">
      {words}
    </p>
  )
}

/** The floor plan to scale: the story pole at its left edge, then the paper that all tools work on. */
export function FloorPlan() {
  const planner = usePlanner()
  const [gestures] = useState(() => createGestures(planner))
  const paper = useRef<HTMLDivElement>(null)
  const help = useId()
  const [tool, title, view, paint] = usePlannerState((state) => [
    state.tool,
    state.layout.title,
    state.view,
    state.paint,
  ])
  const cursor = useStore(gestures.shown, (shown) => shown.cursor)
  const pointing = usePointing(paper, gestures)
  const onKeyDown = useKeys(paper, gestures)
  useSize(paper)
  usePlacing(paper, gestures)
  return (
    <div className="floor-plan">
      <Suspense fallback={<div className="story-pole" />}>
        <StoryPole />
      </Suspense>
      <div
        ref={paper}
        className="floor-plan-paper"
        role="application"
        // For whoever drives the page from outside: floor place of the top left corner, mm, and px a mm.
        data-view={`${view.x},${view.y},${view.pxPerMm}`}
        tabIndex={0}
        aria-label={`Floor plan of ${title}`}
        aria-describedby={help}
        style={{ cursor }}
        onKeyDown={onKeyDown}
        {...pointing}
      >
        <FloorStage gestures={gestures} />
      </div>
      <ZoomButtons />
      <PaintSwitch />
      {paint !== 'plain' && (
        <Suspense>
          <PaintLegend as={paint} />
        </Suspense>
      )}
      <p id={help} className="only-heard">
        {toolOf(tool).hint}. {keyHelp.map(({ keys, does }) => `${keys}: ${does}`).join('. ')}.
      </p>
      <Said />
      <Carried />
    </div>
  )
}
