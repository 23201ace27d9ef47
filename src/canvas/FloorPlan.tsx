import { useEffect, useId, useRef, useState, type RefObject } from 'react'
import { useStore } from 'zustand'
import { usePlanner, usePlannerState } from '../store/react'
import { writerFor } from '../units/writer'
import { carriedWords } from './distances'
import { FloorStage } from './FloorStage'
import './floorPlan.css'
import { createGestures, type Gestures } from './gestures'
import { showHeld } from './keyboard'
import { keyHelp } from './keys'
import { movedIn } from './moved'
import { StoryPole } from './StoryPole'
import { toolOf } from './tools/index'
import { useKeys } from './useKeys'
import { usePointing } from './usePointing'
import { ZoomButtons } from './ZoomButtons'

/** Tells the planner how large the paper is; the first time, it shows the whole house. */
const useSize = (paper: RefObject<HTMLElement | null>) => {
  const planner = usePlanner()
  useEffect(() => {
    const element = paper.current
    if (!element) return undefined
    let isFirst = true
    const watch = new ResizeObserver(() => {
      const { clientWidth: width, clientHeight: height } = element
      if (width === 0 || height === 0) return
      planner.set({ size: { width, height } })
      if (isFirst) planner.fit()
      isFirst = false
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

/** The live distances of what is dragged, for who cannot see them. */
function Carried() {
  const [layout, preview, evaluation, units] = usePlannerState((state) => [
    state.layout,
    state.preview,
    state.evaluation,
    state.units,
  ])
  const words = preview ? carriedWords(evaluation, movedIn(layout, preview), writerFor(units)) : ''
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
  const [tool, title, view] = usePlannerState((state) => [state.tool, state.layout.title, state.view])
  const cursor = useStore(gestures.shown, (shown) => shown.cursor)
  const pointing = usePointing(paper, gestures)
  const onKeyDown = useKeys(paper, gestures)
  useSize(paper)
  usePlacing(paper, gestures)
  return (
    <div className="floor-plan">
      <StoryPole />
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
      <p id={help} className="only-heard">
        {toolOf(tool).hint}. {keyHelp.map(({ keys, does }) => `${keys}: ${does}`).join('. ')}.
      </p>
      <Said />
      <Carried />
    </div>
  )
}
