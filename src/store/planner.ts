import { createStore, type StoreApi } from 'zustand/vanilla'
import { boxOf } from '../geometry/box'
import type { Point } from '../geometry/point'
import type { PlaceChange } from '../evaluate/compare/placeChanges'
import type { Evaluation } from '../evaluate/evaluation'
import { isKeyAbout } from '../checks/found'
import { beforeChecks } from '../evaluate/beforeChecks'
import { commit, emptyHistory, type History, redo, undo } from '../layout/history'
import type { Layout } from '../layout/schema'
import type { CutList } from '../model/cutList'
import type { PartId } from '../model/ids'
import type { Proof } from '../solvers/cutting/proof'
import type { Units } from '../units/length'
import type { Proving } from './proving'
import { fitted, type Size, type View } from './view'

/** Which tool holds the pointer. `place` drops the shelf item named in `placing`. */
export type ToolId = 'select' | 'hand' | 'tape' | 'place'

/** What the plan is painted by: nothing, each tower's flow, each stretch of pipe's velocity, shims under feet and bearers, or what rails carry. */
export type Paint = 'plain' | 'flow' | 'velocity' | 'shims' | 'strength'

/** What the sidebar shows: what is wrong, what is cut, the selected part or the bay, all parts. */
export type SidebarTab = 'warnings' | 'cuts' | 'part' | 'list'

/** One line for the person, with what to do about it where there is something. */
export interface Notice {
  readonly tone: 'said' | 'trouble'
  readonly text: string
  /** A way out that is offered with it: the bay as a file. */
  readonly offers?: 'file'
}

/** What was done, in words for a screen reader. */
export interface Said {
  readonly words: string
  /** Grows with each time that something is said, so that the same words are heard again. */
  readonly times: number
}

/** The document with its history, and the session round it. Only the document is ever saved or undone. */
export interface PlannerState {
  readonly layout: Layout
  readonly history: History
  /** Grows with every committed change: late answers name the revision that they are for. */
  readonly revision: number
  /** Grows with every bay that is opened in place of another. */
  readonly openings: number
  /** What a gesture would make of the layout, while it lasts. */
  readonly preview: Layout | undefined
  /** Of the preview while there is one, else of the layout. */
  readonly evaluation: Evaluation
  /** Of the layout itself, whatever is previewed. */
  readonly settled: Evaluation
  readonly selection: readonly PartId[]
  readonly tool: ToolId
  /** Shelf item to be placed, as `kind/preset`. */
  readonly placing: string | undefined
  readonly view: View
  readonly size: Size
  readonly units: Units
  readonly paint: Paint
  /** Where the pointer is on the floor. */
  readonly pointer: Point | undefined
  /** Key of the finding that is opened or jumped to. */
  readonly finding: string | undefined
  readonly notice: Notice | undefined
  /** Id of the view that is open in the drawer at the foot of the page; undefined while it is shut. */
  readonly drawer: string | undefined
  readonly sidebar: SidebarTab
  readonly said: Said
  /** What was proved of cut lists, by their keys. */
  readonly proofs: ReadonlyMap<string, Proof>
  /** Cut lists that a cheaper plan is looked for, or was until the person stopped it, by their keys. */
  readonly proving: ReadonlyMap<string, Proving>
  /** Cut lists of earlier plans that a screen holds beside the bay: they are proven too, once the bay's own are. */
  readonly earlierCuts: readonly CutList[]
  /** What the plan points out: the places of a line of the shop list or the take-off, by its item. */
  readonly pointedOut: string | undefined
  /** What the plan shows of how it differs from another: what is drawn over the floor while it is switched on. */
  readonly differing: readonly PlaceChange[] | undefined
}

export type Edit = (layout: Layout) => Layout

export interface Planner {
  readonly store: StoreApi<PlannerState>
  /** Makes an edit and keeps it under a label; nothing happens where the edit changes nothing. */
  readonly commit: (label: string, edit: Edit, selection?: readonly PartId[]) => void
  /** Shows what an edit would make of the layout, without keeping it; no edit drops the preview. */
  readonly preview: (edit: Edit | undefined) => void
  readonly undo: () => void
  readonly redo: () => void
  /** Takes another layout as the document; its history is what came with it, or none. */
  readonly open: (layout: Layout, history?: History) => void
  readonly select: (parts: readonly PartId[]) => void
  /** Says what was done to who cannot see it; no words leave the last ones. */
  readonly say: (words: string) => void
  readonly set: (session: Partial<Session>) => void
  readonly fit: () => void
}

/** What of the state is free to set: nothing here is saved or undone. */
export type Session = Pick<
  PlannerState,
  | 'tool'
  | 'placing'
  | 'view'
  | 'size'
  | 'units'
  | 'paint'
  | 'pointer'
  | 'finding'
  | 'notice'
  | 'drawer'
  | 'sidebar'
  | 'proofs'
  | 'proving'
  | 'earlierCuts'
  | 'pointedOut'
  | 'differing'
>

const START_SIZE: Size = { width: 800, height: 600 }

const fitTo = (layout: Layout, size: Size): View => fitted(boxOf(layout.house.outline), size)

/** What is known of a layout that nothing is previewed over. */
const settledOn = (layout: Layout) => {
  const settled = beforeChecks(layout)
  return { layout, preview: undefined, evaluation: settled, settled }
}

const opened = (layout: Layout, history: History, size: Size) => ({
  ...settledOn(layout),
  history,
  selection: [],
  view: fitTo(layout, size),
  units: layout.settings.units,
  finding: undefined,
  placing: undefined,
  tool: 'select' as const,
})

/** Parts of a selection that a layout still has. */
const present = (selection: readonly PartId[], layout: Layout): readonly PartId[] => {
  const ids = new Set(layout.parts.map(({ id }) => id))
  return selection.every((id) => ids.has(id)) ? selection : selection.filter((id) => ids.has(id))
}

/** Whether the opened finding names one of these parts; who turns to another part is done with it. */
const isAbout = ({ finding }: PlannerState, parts: readonly PartId[]): boolean =>
  finding !== undefined && parts.some((id) => isKeyAbout(finding, id))

/** The planner's one store. It runs without a page: screens are thin readers of it. */
export const createPlanner = (layout: Layout): Planner => {
  const store = createStore<PlannerState>(() => ({
    ...opened(layout, emptyHistory, START_SIZE),
    revision: 0,
    openings: 0,
    size: START_SIZE,
    paint: 'plain',
    pointer: undefined,
    notice: undefined,
    drawer: undefined,
    sidebar: 'warnings',
    said: { words: '', times: 0 },
    proofs: new Map(),
    proving: new Map(),
    earlierCuts: [],
    pointedOut: undefined,
    differing: undefined,
  }))
  const { getState: get, setState: set } = store

  const say = (words: string) => {
    if (words !== '') set({ said: { words, times: get().said.times + 1 } })
  }

  /** Takes a layout that the history gave back. */
  const step = (turn: typeof undo | typeof redo, done: string) => {
    const { history, layout: now, revision } = get()
    const back = turn(history, now)
    if (!back) return
    set({
      ...settledOn(back.layout),
      history: back.history,
      revision: revision + 1,
      selection: present(back.selection, back.layout),
    })
    say(`${done}: ${back.label}`)
  }

  return {
    store,
    commit: (label, edit, selection) => {
      const { layout: before, history, selection: held, revision, preview, settled, notice } = get()
      const after = edit(before)
      const kept = present(selection ?? held, after)
      if (after === before) {
        if (preview) set({ preview: undefined, evaluation: settled })
        return
      }
      set({
        ...settledOn(after),
        history: commit(history, label, before, after, held, kept),
        revision: revision + 1,
        selection: kept,
        // Who works on has read it.
        notice: notice?.tone === 'said' ? undefined : notice,
      })
    },
    preview: (edit) => {
      const { layout: now, preview, settled } = get()
      const next = edit?.(now)
      const shown = next === now ? undefined : next
      if (shown === preview) return
      set({ preview: shown, evaluation: shown ? beforeChecks(shown) : settled })
    },
    undo: () => step(undo, 'Undone'),
    redo: () => step(redo, 'Done again'),
    open: (next, history = emptyHistory) =>
      set({
        ...opened(next, history, get().size),
        revision: get().revision + 1,
        openings: get().openings + 1,
      }),
    select: (parts) =>
      set((state) => ({
        selection: present(parts, state.layout),
        finding: isAbout(state, parts) ? state.finding : undefined,
      })),
    say,
    set,
    fit: () => set({ view: fitTo(get().layout, get().size) }),
  }
}
