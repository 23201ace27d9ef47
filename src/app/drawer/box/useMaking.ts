import { useRef, useState } from 'react'

/** What is being made, and how far it is. */
export interface Making {
  readonly title: string
  readonly done: number
  readonly of: number
}

/** Work that tells before each step what comes next. */
type WorkInSteps<T> = Generator<Making, T> | AsyncGenerator<Making, T>

/** Long work in steps, with what is told of it and a stop; one at a time. */
export const useMaking = () => {
  const [making, setMaking] = useState<Making>()
  const isStopped = useRef(false)

  /** Goes through the steps between whatever else the page does; undefined where it was stopped. */
  const make = async <T>(steps: WorkInSteps<T>): Promise<T | undefined> => {
    isStopped.current = false
    try {
      let step = await steps.next()
      while (!step.done && !isStopped.current) {
        setMaking(step.value)
        // The page must come to draw what is told, and to hear a press of the stop.
        await new Promise((resolve) => setTimeout(resolve))
        step = await steps.next()
      }
      return step.done ? step.value : undefined
    } finally {
      setMaking(undefined)
    }
  }
  const stop = () => {
    isStopped.current = true
  }
  return { making, make, stop }
}
