import { type KeyboardEvent, type PointerEvent, useRef, useState } from 'react'
import { usePlanner } from '../../store/react'
import type { ParsedLength } from '../../units/parseLength'
import { LevelField } from './LevelField'
import type { LevelGesture } from './levelGesture'
import { LABEL_LEFT, WIDTH, type Placed } from './places'
import type { PoleScale } from './poleScale'

/** What a grip needs to know of the pole that it slides on. */
export interface GripOn {
  readonly scale: PoleScale
  readonly write: (levelMm: number) => string
  /** As it stands in a field: to the last digit that is kept. */
  readonly writeExactly: (levelMm: number) => string
  readonly read: (text: string) => ParsedLength
  /** The nearest level that the crew reads. */
  readonly onStep: (levelMm: number) => number
  readonly step: (levelMm: number, up: 1 | -1, isLarge: boolean) => number
  /** Takes a level in hand; the pole stays where it is until it is let go. */
  readonly take: () => LevelGesture | undefined
  readonly letGo: () => void
}

interface LevelGripProps {
  readonly at: Placed
  readonly on: GripOn
}

/** A press that moves less is no drag, px. */
const STILL_PX = 3

interface Drag {
  readonly fromY: number
  readonly fromMm: number
  readonly scale: PoleScale
  readonly gesture: LevelGesture
  toMm: number | undefined
}

/** The drag of a grip: shown while it lasts, kept on release, dropped by Escape. */
const useDrag = ({ at, on }: LevelGripProps, setStopped: (words: string) => void) => {
  const drag = useRef<Drag>(undefined)
  const end = () => {
    drag.current = undefined
    on.letGo()
  }
  return {
    onPointerDown: (event: PointerEvent<HTMLElement>) => {
      if (event.button !== 0) return
      const gesture = on.take()
      if (!gesture) return
      event.currentTarget.setPointerCapture(event.pointerId)
      setStopped('')
      drag.current = {
        fromY: event.clientY,
        fromMm: at.level.levelMm,
        scale: on.scale,
        gesture,
        toMm: undefined,
      }
    },
    onPointerMove: (event: PointerEvent<HTMLElement>) => {
      const held = drag.current
      if (!held) return
      const downPx = event.clientY - held.fromY
      if (held.toMm === undefined && Math.abs(downPx) < STILL_PX) return
      held.toMm = on.onStep(held.fromMm - downPx / held.scale.pxPerMm)
      setStopped(held.gesture.show(held.toMm))
    },
    onPointerUp: () => {
      const held = drag.current
      if (!held) return
      if (held.toMm !== undefined) setStopped(held.gesture.keep(held.toMm))
      end()
    },
    onPointerCancel: () => {
      drag.current?.gesture.drop()
      end()
    },
    /** Whether there was one to drop. */
    drop: (): boolean => {
      if (!drag.current) return false
      drag.current.gesture.drop()
      setStopped('')
      end()
      return true
    },
  }
}

const upOf = (key: string): 1 | -1 | undefined =>
  key === 'ArrowUp' ? 1 : key === 'ArrowDown' ? -1 : undefined

/** A level that is free: drag it up and down, step it with the arrow keys, or press Enter and type it. */
export function LevelGrip({ at, on }: LevelGripProps) {
  const planner = usePlanner()
  const [isTyping, setTyping] = useState(false)
  const [stopped, setStopped] = useState('')
  const { drop, ...dragging } = useDrag({ at, on }, setStopped)
  const { name, levelMm } = at.level
  const keep = (toMm: number) => {
    const gesture = on.take()
    setStopped(gesture?.keep(toMm) ?? '')
    on.letGo()
  }
  const type = (isOn: boolean) => {
    if (isOn) on.take()
    else on.letGo()
    setTyping(isOn)
  }
  const press = (event: KeyboardEvent) => {
    const up = upOf(event.key)
    if (up) keep(on.step(levelMm, up, event.shiftKey))
    else if (event.key === 'Enter') type(true)
    else if (event.key !== 'Escape' || !drop()) return
    event.preventDefault()
    event.stopPropagation()
  }
  const box = {
    top: at.y - at.highPx / 2,
    height: at.highPx,
    left: LABEL_LEFT - 4,
    width: WIDTH - LABEL_LEFT,
  }
  if (isTyping)
    return (
      <div className="pole-typed" style={box}>
        <LevelField
          name={name}
          shown={on.writeExactly(levelMm)}
          read={on.read}
          onDrop={() => type(false)}
          onLevel={(toMm) => {
            keep(toMm)
            setTyping(false)
          }}
        />
      </div>
    )
  return (
    <div
      className="pole-grip"
      role="slider"
      tabIndex={0}
      aria-orientation="vertical"
      aria-label={name}
      aria-valuenow={Math.round(levelMm)}
      aria-valuemin={Math.floor(Math.min(levelMm, on.scale.lowMm))}
      aria-valuemax={Math.ceil(Math.max(levelMm, on.scale.highMm))}
      aria-valuetext={on.write(levelMm)}
      title={`${name}: drag, arrow keys, or Enter to type`}
      style={box}
      onKeyDown={press}
      onBlur={() => setStopped('')}
      onDoubleClick={() => type(true)}
      onFocus={() => planner.set({ pointer: undefined })}
      {...dragging}
    >
      <span>{name}</span>
      <span className="pole-from">{on.write(levelMm)}</span>
      <svg className="pole-grip-mark" width="9" height="16" viewBox="0 0 9 16" aria-hidden="true">
        <path d="M1 6 4.5 1.5 8 6M1 10l3.5 4.5L8 10" />
      </svg>
      {stopped && (
        <p className="pole-stopped" role="status">
          {stopped}
        </p>
      )}
    </div>
  )
}
