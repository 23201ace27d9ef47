import { type RefObject, useEffect, useState } from 'react'
import type { PlotSize } from './plot'

/** Until the page has said how large the chart is, px. */
const START: PlotSize = { width: 480, height: 190 }

/** How large a thing is on the page, px, so that words in a drawing keep their size. */
export const useSize = (of: RefObject<HTMLElement | null>): PlotSize => {
  const [size, setSize] = useState(START)
  useEffect(() => {
    const element = of.current
    if (!element) return undefined
    const watch = new ResizeObserver(() => {
      const { clientWidth: width, clientHeight: height } = element
      if (width > 0 && height > 0) setSize({ width, height })
    })
    watch.observe(element)
    return () => watch.disconnect()
  }, [of])
  return size
}
