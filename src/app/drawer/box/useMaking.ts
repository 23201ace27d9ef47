import { useRef, useState } from 'react'
import type { Steps } from '../steps'

/** What is being made, and how far it is. */
export interface Making {
  readonly what: string
  readonly done: number
  readonly of: number
}

/** Long work in steps, with what is told of it and a stop; one at a time. */
export const useMaking = () => {
  const [making, setMaking] = useState<Making>()
  const isStopped = useRef(false)

  /** Goes through the steps between whatever else the page does; undefined where it was stopped. */
  const make = async <T>(steps: (tell: (making: Making) => void) => Steps<T>): Promise<T | undefined> => {
    isStopped.current = false
    const walk = steps(setMaking)
    for (let step = walk.next(); ; step = walk.next()) {
      if (step.done) {
        setMaking(undefined)
        return step.value
      }
      await new Promise((resolve) => setTimeout(resolve))
      if (isStopped.current) {
        setMaking(undefined)
        return undefined
      }
    }
  }
  const stop = () => {
    isStopped.current = true
  }
  return { making, make, stop }
}
