import type { Evaluation } from '../../evaluate/evaluation'
import { levelEditOf, type LevelEdit, type LevelSet } from '../../evaluate/levelEdit'
import type { Level } from '../../evaluate/levelStack'
import type { Planner } from '../../store/planner'
import type { Writer } from '../../units/writer'

/** A level in hand: shown where it is wanted, then kept or put back. */
export interface LevelGesture {
  readonly level: Level
  readonly edit: LevelEdit
  /** Shows what the level would make of the bay; gives in words what stopped it. */
  readonly show: (toMm: number) => string
  /** Keeps it as one step of the history; gives in words what stopped it. */
  readonly keep: (toMm: number) => string
  readonly drop: () => void
}

/** Takes a level in hand; undefined for one that follows from others. The evaluation is of the layout itself. */
export const levelGesture = (
  planner: Planner,
  settled: Evaluation,
  level: Level,
  writer: Writer,
): LevelGesture | undefined => {
  const edit = levelEditOf(settled, level)
  if (!edit) return undefined
  const setTo = (toMm: number): LevelSet => edit.set(planner.store.getState().layout, toMm, writer)
  return {
    level,
    edit,
    show: (toMm) => {
      const { layout, stopped } = setTo(toMm)
      planner.preview(() => layout)
      return stopped
    },
    keep: (toMm) => {
      const { layout, stopped } = setTo(toMm)
      planner.commit(edit.label, () => layout)
      planner.say([edit.label, stopped].filter(Boolean).join('. '))
      return stopped
    },
    drop: () => planner.preview(undefined),
  }
}
