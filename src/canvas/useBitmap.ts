import type Konva from 'konva'
import { useEffect, useLayoutEffect, useRef, useState, type RefObject } from 'react'
import { toScreen } from '../store/view'
import type { Lens } from './lens'

/** A view that has not moved for so long is at rest. */
const REST_MS = 100

const isSameSheet = (a: Lens, b: Lens): boolean =>
  a.size === b.size && a.theme === b.theme && a.units === b.units

/** The lens to draw through: the one in hand, or for a heavy sheet the one of the last rest. */
export const useResting = (lens: Lens, isHeavy: boolean): Lens => {
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
export const useBitmap = (layer: RefObject<Konva.Layer | null>, held: RefObject<Lens>, lens: Lens): void => {
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
