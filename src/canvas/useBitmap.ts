import type Konva from 'konva'
import { useEffect, useLayoutEffect, useRef, useState, type RefObject } from 'react'
import { toScreen } from '../store/view'
import type { Lens } from './lens'

/** A view that has not moved for so long is at rest. */
const REST_MS = 100

const isSameSheet = (a: Lens, b: Lens): boolean =>
  a.size === b.size && a.theme === b.theme && a.units === b.units

/** The lens to draw through: the one in hand, or for a heavy sheet the one of the last rest. */
const useResting = (lens: Lens, isHeavy: boolean): Lens => {
  const [rested, setRested] = useState(lens)
  useEffect(() => {
    if (!isHeavy) return undefined
    const rest = setTimeout(() => setRested(lens), REST_MS)
    return () => clearTimeout(rest)
  }, [lens, isHeavy])
  return isHeavy && isSameSheet(rested, lens) ? rested : lens
}

/** The CSS transform that lays a sheet drawn through one lens where another would show it. */
export const bitmapTransform = (drawn: Lens, now: Lens): string => {
  if (drawn.view === now.view) return ''
  const { x, y } = toScreen(now.view, drawn.view)
  return `translate(${x}px, ${y}px) scale(${now.view.pxPerMm / drawn.view.pxPerMm})`
}

/** Keeps the layer's bitmap under the view between two drawings of it. */
const useBitmap = (layer: RefObject<Konva.Layer | null>, held: RefObject<Lens>, lens: Lens): void => {
  const now = useRef(lens)
  const drawn = useRef(lens)
  useLayoutEffect(() => {
    now.current = lens
    const canvas = layer.current?.getNativeCanvasElement()
    if (canvas) canvas.style.transform = bitmapTransform(drawn.current, lens)
  }, [layer, lens])
  useLayoutEffect(() => {
    const sheet = layer.current
    if (!sheet) return undefined
    const canvas = sheet.getNativeCanvasElement()
    canvas.style.transformOrigin = '0 0'
    const lay = () => {
      drawn.current = held.current
      canvas.style.transform = bitmapTransform(drawn.current, now.current)
    }
    sheet.on('draw', lay)
    return () => {
      sheet.off('draw', lay)
    }
  }, [layer, held])
}

/** What a layer that stands still is drawn through. */
interface Sheet {
  /** For the layer's `ref`. */
  readonly layer: RefObject<Konva.Layer | null>
  readonly drawing: Lens
  /** The same, read when drawing, so that a change of view draws again without a new shape. */
  readonly held: RefObject<Lens>
}

/**
 * A layer that is drawn again only when the view or what is on it changes. A heavy one shows its last bitmap, moved and
 * scaled, while the view moves, and is drawn when it rests.
 */
export const useSheet = (lens: Lens, isHeavy: boolean): Sheet => {
  const layer = useRef<Konva.Layer>(null)
  const drawing = useResting(lens, isHeavy)
  const held = useRef(drawing)
  useLayoutEffect(() => {
    held.current = drawing
    layer.current?.batchDraw()
  }, [drawing])
  useBitmap(layer, held, lens)
  return { layer, drawing, held }
}
