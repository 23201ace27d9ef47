import { type RefObject, useEffect, useState } from 'react'

/** Until the page has said how wide the chart is, px. */
const START_PX = 480

/** How wide a thing is on the page, px, so that words in a drawing keep their size. */
export const useWidth = (of: RefObject<HTMLElement | null>): number => {
  const [width, setWidth] = useState(START_PX)
  useEffect(() => {
    const element = of.current
    if (!element) return undefined
    const watch = new ResizeObserver(() => {
      if (element.clientWidth > 0) setWidth(element.clientWidth)
    })
    watch.observe(element)
    return () => watch.disconnect()
  }, [of])
  return width
}
