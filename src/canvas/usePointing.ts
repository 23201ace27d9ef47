import { useEffect, useMemo, useRef, type DragEvent, type PointerEvent, type RefObject } from 'react'
import { SHELF_TYPE } from '../store/inHand'
import { usePlanner } from '../store/react'
import { panned, zoomedAt } from '../store/view'
import type { Gestures } from './gestures'
import { createPointing, type PagePointer } from './pointing'
import { hand } from './tools/hand'

const MIDDLE_BUTTON = 1

interface Spot {
  readonly clientX: number
  readonly clientY: number
}

const pxIn = (element: Element, { clientX, clientY }: Spot) => {
  const { left, top } = element.getBoundingClientRect()
  return { x: clientX - left, y: clientY - top }
}

type PageEvent = Spot & {
  readonly shiftKey: boolean
  readonly ctrlKey: boolean
  readonly metaKey: boolean
  readonly altKey: boolean
  readonly timeStamp: number
}

const pagePointer = (
  element: Element,
  event: PageEvent,
  { pointerId, pointerType }: { pointerId: number; pointerType: string },
): PagePointer => ({
  pointerId,
  pointerType,
  px: pxIn(element, event),
  shift: event.shiftKey,
  ctrl: event.ctrlKey || event.metaKey,
  alt: event.altKey,
  atMs: event.timeStamp,
})

/** What a drag from the shelf counts as: a mouse that has no button. */
const CARRIED = { pointerId: -1, pointerType: 'mouse' }

/** One notch of a wheel (100 px in most browsers) zooms by a sixth; a trackpad's pinch (Ctrl) is finer in px, so it counts more. */
const zoomOf = ({ deltaY, ctrlKey, deltaMode }: WheelEvent): number => {
  const px = deltaMode === WheelEvent.DOM_DELTA_PIXEL ? deltaY : deltaY * 30
  return Math.exp(-px * (ctrlKey ? 0.008 : 0.0016))
}

/** The wheel zooms at the pointer; with Shift, and sideways, it moves the paper. */
const useWheel = (paper: RefObject<HTMLElement | null>) => {
  const planner = usePlanner()
  useEffect(() => {
    const element = paper.current
    if (!element) return undefined
    const turn = (event: WheelEvent) => {
      event.preventDefault()
      const { view } = planner.store.getState()
      const isSideways = event.shiftKey || Math.abs(event.deltaX) > Math.abs(event.deltaY)
      planner.set({
        view: isSideways
          ? panned(view, -(event.deltaX || event.deltaY), 0)
          : zoomedAt(view, pxIn(element, event), zoomOf(event)),
      })
    }
    // React's own wheel listener is passive and could not keep the page from scrolling.
    element.addEventListener('wheel', turn, { passive: false })
    return () => element.removeEventListener('wheel', turn)
  }, [paper, planner])
}

/** Whether the space bar is held: then any press moves the paper. */
const useSpace = (): RefObject<boolean> => {
  const isHeld = useRef(false)
  useEffect(() => {
    const hear = ({ key, type }: KeyboardEvent) => {
      if (key === ' ') isHeld.current = type === 'keydown'
    }
    // A key that is let go over another window is never heard.
    const forget = () => {
      isHeld.current = false
    }
    window.addEventListener('keydown', hear)
    window.addEventListener('keyup', hear)
    window.addEventListener('blur', forget)
    return () => {
      window.removeEventListener('keydown', hear)
      window.removeEventListener('keyup', hear)
      window.removeEventListener('blur', forget)
    }
  }, [])
  return isHeld
}

const isOver = (element: Element, { clientX, clientY }: Spot): boolean => {
  const { left, right, top, bottom } = element.getBoundingClientRect()
  return clientX >= left && clientX < right && clientY >= top && clientY < bottom
}

/** Handlers of the paper's element: pointers, wheel, and what is dragged from the shelf. */
export const usePointing = (paper: RefObject<HTMLElement | null>, gestures: Gestures) => {
  const planner = usePlanner()
  const pointing = useMemo(() => createPointing(planner, gestures), [planner, gestures])
  const isSpaceHeld = useSpace()
  useWheel(paper)

  // A finger that takes a part off the shelf stays with the shelf's element, so it is followed over the whole page.
  useEffect(() => {
    const follow = (event: globalThis.PointerEvent) => {
      const element = paper.current
      const isShelfs = event.target instanceof Node && !element?.contains(event.target)
      if (!element || !isShelfs || event.pointerType !== 'touch' || planner.store.getState().tool !== 'place')
        return
      const pointer = pointing.pointerOf(pagePointer(element, event, event))
      if (!isOver(element, event)) gestures.cancel()
      else if (event.type === 'pointermove') gestures.move(pointer)
      else {
        gestures.press(pointer)
        gestures.release(pointer)
      }
    }
    window.addEventListener('pointermove', follow)
    window.addEventListener('pointerup', follow)
    return () => {
      window.removeEventListener('pointermove', follow)
      window.removeEventListener('pointerup', follow)
    }
  }, [paper, planner, pointing, gestures])

  const from = (event: PointerEvent<HTMLElement>) => pagePointer(event.currentTarget, event, event)
  const carried = (event: DragEvent<HTMLElement>) => pagePointer(event.currentTarget, event, CARRIED)
  const isShelfDrag = ({ dataTransfer }: DragEvent) => dataTransfer.types.includes(SHELF_TYPE)

  return {
    onPointerDown: (event: PointerEvent<HTMLElement>) => {
      if (event.button !== 0 && event.button !== MIDDLE_BUTTON) return
      event.currentTarget.setPointerCapture(event.pointerId)
      pointing.press(from(event), event.button === MIDDLE_BUTTON || isSpaceHeld.current ? hand : undefined)
    },
    onPointerMove: (event: PointerEvent<HTMLElement>) => pointing.move(from(event)),
    onPointerUp: (event: PointerEvent<HTMLElement>) => pointing.release(from(event)),
    onPointerCancel: ({ pointerId }: PointerEvent<HTMLElement>) => pointing.lose(pointerId),
    onPointerLeave: () => {
      planner.set({ pointer: undefined })
    },
    onDragOver: (event: DragEvent<HTMLElement>) => {
      if (!isShelfDrag(event)) return
      event.preventDefault()
      event.dataTransfer.dropEffect = 'copy'
      pointing.move(carried(event))
    },
    onDragLeave: (event: DragEvent<HTMLElement>) => {
      if (isShelfDrag(event)) gestures.cancel()
    },
    onDrop: (event: DragEvent<HTMLElement>) => {
      if (!isShelfDrag(event)) return
      event.preventDefault()
      planner.set({ tool: 'place', placing: event.dataTransfer.getData(SHELF_TYPE) })
      pointing.press(carried(event))
      pointing.release(carried(event))
    },
  }
}
