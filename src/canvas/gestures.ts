import { createStore, type StoreApi } from 'zustand/vanilla'
import type { Planner } from '../store/planner'
import { toolOf } from './tools/index'
import type { Commit, Gesture, Overlay, Pointer, Step, Tool, ToolContext } from './tools/tool'

/** What the canvas shows of the gesture under way, beside the planner's preview. */
export interface Shown {
  readonly overlay: Overlay
  readonly cursor: string
  readonly isBusy: boolean
}

/** Hands the pointer to the tool that holds it, and the tool's answer to the planner. It knows no page. */
export interface Gestures {
  readonly shown: StoreApi<Shown>
  /** `over` takes the press in place of the chosen tool, as a held space bar does. */
  readonly press: (pointer: Pointer, over?: Tool) => void
  readonly move: (pointer: Pointer) => void
  readonly release: (pointer: Pointer) => void
  /** Drops the gesture as if it had never begun. True where there was one. */
  readonly cancel: () => boolean
  readonly isBusy: () => boolean
}

const idle = (tool: Tool): Shown => ({ overlay: {}, cursor: tool.cursor, isBusy: false })

export const createGestures = (planner: Planner): Gestures => {
  const { store } = planner
  let gesture: Gesture | undefined
  const current = () => toolOf(store.getState().tool)
  const shown = createStore<Shown>(() => idle(current()))

  const context = (): ToolContext => {
    const { layout, settled, selection, placing, view, units } = store.getState()
    return { layout, evaluation: settled, selection, placing, view, units }
  }

  const keepCommit = ({ label, edit, selection }: Commit) => {
    const { revision } = store.getState()
    planner.commit(label, edit, selection)
    if (store.getState().revision !== revision) planner.say(label)
  }

  const keep = ({ commit, selection, tool, view }: Step) => {
    if (commit) keepCommit(commit)
    if (selection) planner.select(selection)
    if (view) planner.set({ view })
    if (tool) planner.set(tool === 'place' ? { tool } : { tool, placing: undefined })
  }

  const take = (step: Step) => {
    gesture = step.gesture
    const { preview } = store.getState()
    if (!step.commit && (step.preview || preview)) planner.preview(step.preview)
    keep(step)
    shown.setState({
      overlay: step.overlay ?? {},
      cursor: step.cursor ?? current().cursor,
      isBusy: gesture !== undefined,
    })
  }

  // Another tool, another bay or an undo ends what was under way.
  store.subscribe((now, before) => {
    if (now.tool === before.tool && now.revision === before.revision) return
    gesture = undefined
    shown.setState(idle(current()))
  })

  return {
    shown,
    press: (pointer, over) => {
      const again = over ? undefined : gesture?.press
      take(again ? again(pointer, context()) : (over ?? current()).begin(pointer, context()))
    },
    move: (pointer) => take(gesture ? gesture.move(pointer, context()) : current().hover(pointer, context())),
    release: (pointer) => {
      if (gesture) take(gesture.end(pointer, context()))
    },
    cancel: () => {
      const wasBusy = gesture !== undefined || store.getState().preview !== undefined
      take({})
      return wasBusy
    },
    isBusy: () => gesture !== undefined,
  }
}
