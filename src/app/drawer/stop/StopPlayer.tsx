import { useEffect, useId, useState } from 'react'
import type { StopMoment } from '../../../model/stopRun'

/** A moment of the run is shown for so long, ms: a minute and a half of it in all would bore. */
const SHOWN_MS = 80

const wantsStill = (): boolean => window.matchMedia('(prefers-reduced-motion: reduce)').matches

/** With reduced motion one press goes on by so many moments, and nothing moves by itself. */
const STEP = 8

export interface Playing {
  readonly index: number
  readonly isPlaying: boolean
  readonly isStill: boolean
  readonly show: (index: number) => void
  readonly press: () => void
}

/** Plays the moments once through; held at its end until it is pressed again. */
export const usePlaying = (count: number): Playing => {
  const [index, setIndex] = useState(0)
  const [isPlaying, setPlaying] = useState(false)
  const [isStill] = useState(wantsStill)
  const last = count - 1
  const isRunning = isPlaying && index < last
  useEffect(() => {
    if (!isRunning) return undefined
    const timer = setTimeout(() => setIndex((now) => Math.min(last, now + 1)), SHOWN_MS)
    return () => clearTimeout(timer)
  }, [isRunning, index, last])
  const press = () => {
    const from = index >= last ? 0 : index
    if (isStill) setIndex(index >= last ? 0 : Math.min(last, from + STEP))
    else {
      setIndex(from)
      setPlaying(!isRunning)
    }
  }
  const show = (next: number) => {
    setPlaying(false)
    setIndex(Math.min(last, Math.max(0, next)))
  }
  return { index: Math.min(index, last), isPlaying: isRunning, isStill, show, press }
}

interface StopPlayerProps {
  readonly playing: Playing
  readonly moments: readonly StopMoment[]
  readonly clock: (seconds: number) => string
}

/** Play, pause, and a slider through time whose steps grow: most happens in the first minute. */
export function StopPlayer({ playing, moments, clock }: StopPlayerProps) {
  const id = useId()
  const { index, isPlaying, isStill, show, press } = playing
  const now = clock(moments[index]?.seconds ?? 0)
  const label = isStill ? 'Step on' : isPlaying ? 'Pause' : 'Play'
  return (
    <div className="stop-player">
      <button onClick={press}>{label}</button>
      <label htmlFor={id}>After the stop</label>
      <input
        id={id}
        type="range"
        min={0}
        max={moments.length - 1}
        step={1}
        value={index}
        aria-valuetext={now}
        onChange={(event) => show(Number(event.target.value))}
      />
      <output htmlFor={id}>{now}</output>
    </div>
  )
}
