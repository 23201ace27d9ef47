import { type KeyboardEvent, type PointerEvent, useRef } from 'react'
import type { LongCut } from '../../../evaluate/longCut/section'
import { usePlanner, usePlannerState } from '../../../store/react'
import { LEADER_PX } from './CutPitPart'
import type { CutScale } from './cutScale'
import { FALL_GRIP_PX, type Grip, onStep, STEPS } from './grips'
import { useTrenchWriter } from './LongCutDrawing'
import { LEAST_TARGET_PX, levelWords } from './pitWords'

interface CutGripsProps {
  readonly cut: LongCut
  readonly scale: CutScale
  /** As they stand in what is shown; `still` as they stand in the bay itself, which edits start from. */
  readonly grips: readonly Grip[]
  readonly still: readonly Grip[]
  readonly chosen: string | undefined
  readonly onChoose: (id: string) => void
}

interface Place {
  readonly left: number
  readonly top: number
  readonly width?: number
}

/** Where each grip lies over the drawing: a level's over its words, the others at their own place. */
const placesOf = ({ cut, scale, grips }: CutGripsProps): ReadonlyMap<string, Place> => {
  const words = cut.pit ? levelWords(cut.pit, scale) : []
  const wordsAt = (grip: Grip) => words.find(({ level }) => grip.id === `level-${cut.pit?.part}-${level}`)
  return new Map(
    grips.map((grip): [string, Place] => {
      const word = wordsAt(grip)
      if (word) return [grip.id, { left: scale.right + LEADER_PX - 3, top: word.at, width: 134 }]
      if (grip.kind === 'pit')
        return [grip.id, { left: scale.xOf(grip.sMm), top: scale.yOf(cut.pit?.facts.rimMm ?? 0) - 20 }]
      if (grip.kind === 'fall')
        return [grip.id, { left: scale.xOf(grip.sMm) + FALL_GRIP_PX, top: scale.yOf(grip.levelMm) }]
      return [grip.id, { left: scale.xOf(grip.sMm), top: scale.yOf(grip.levelMm) }]
    }),
  )
}

/** What a drag began from: the pointer's place and the level of the grip then. */
interface Drag {
  readonly grip: Grip
  readonly startY: number
}

function useDeeds({ still, scale, onChoose }: CutGripsProps) {
  const planner = usePlanner()
  const units = usePlannerState((state) => state.units)
  const drag = useRef<Drag | undefined>(undefined)
  const edited = useRef<{ readonly grip: Grip; readonly levelMm: number } | undefined>(undefined)
  const stillOf = (id: string) => still.find((grip) => grip.id === id)

  const show = (grip: Grip, levelMm: number) => {
    edited.current = { grip, levelMm }
    planner.preview((layout) => grip.edit(layout, levelMm))
  }
  const keep = () => {
    const done = edited.current
    drag.current = edited.current = undefined
    if (done && planner.store.getState().preview)
      planner.commit(done.grip.does, (layout) => done.grip.edit(layout, done.levelMm))
  }
  const drop = () => {
    drag.current = edited.current = undefined
    planner.preview(undefined)
  }
  const mmOf = (px: number) => px / (scale.pxPerMm * scale.times)

  return {
    down: (id: string) => (event: PointerEvent<HTMLElement>) => {
      const grip = stillOf(id)
      if (!grip || event.button !== 0) return
      event.currentTarget.setPointerCapture(event.pointerId)
      onChoose(id)
      drag.current = { grip, startY: event.clientY }
    },
    move: ({ clientY }: PointerEvent) => {
      const held = drag.current
      if (!held) return
      show(held.grip, onStep(held.grip.levelMm - mmOf(clientY - held.startY), units))
    },
    keep,
    drop,
    press: (shown: Grip) => (event: KeyboardEvent) => {
      if (event.key === 'Escape' && edited.current) {
        // The page's own Escape must not also drop the selection.
        event.stopPropagation()
        return drop()
      }
      const way = event.key === 'ArrowUp' ? 1 : event.key === 'ArrowDown' ? -1 : 0
      const grip = stillOf(shown.id)
      if (way === 0 || !grip) return
      event.preventDefault()
      event.stopPropagation()
      const { fine, coarse } = STEPS[units]
      show(grip, shown.levelMm + way * (event.shiftKey ? coarse : fine))
    },
  }
}

/** Ends of what the slider says, mm either side of where a grip stands. */
const REACH_MM = 1000

/** What can be taken up and down on the section, over the drawing: by mouse, finger or arrow keys. */
export function CutGrips(props: CutGripsProps) {
  const { grips, chosen, onChoose } = props
  const writer = useTrenchWriter()
  const places = placesOf(props)
  const { down, move, keep, drop, press } = useDeeds(props)
  return grips.map((grip) => {
    const { left = 0, top = 0, width } = places.get(grip.id) ?? {}
    return (
      <div
        key={grip.id}
        className={`cut-grip cut-grip-${grip.kind}`}
        data-chosen={grip.id === chosen}
        role="slider"
        tabIndex={0}
        aria-orientation="vertical"
        aria-label={grip.label}
        aria-valuenow={Math.round(grip.levelMm)}
        aria-valuemin={Math.round(grip.levelMm - REACH_MM)}
        aria-valuemax={Math.round(grip.levelMm + REACH_MM)}
        aria-valuetext={
          grip.drain
            ? `${writer.fall(grip.drain.slopeMmPerM)}, low end at ${writer.level(grip.levelMm)}`
            : writer.level(grip.levelMm)
        }
        style={{ left, top, width: width ?? LEAST_TARGET_PX }}
        onFocus={() => onChoose(grip.id)}
        onPointerDown={down(grip.id)}
        onPointerMove={move}
        onPointerUp={keep}
        onPointerCancel={drop}
        onKeyDown={press(grip)}
        onKeyUp={({ key }) => (key === 'ArrowUp' || key === 'ArrowDown') && keep()}
        onBlur={keep}
      />
    )
  })
}
