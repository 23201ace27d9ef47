import { writeHistory } from '../../layout/historyFile'
import { writeLayout } from '../../layout/file'
import { keepVersion, save, type Shelf } from '../../store/autosave'
import type { Planner, PlannerState } from '../../store/planner'

/** A good version is put behind the newest at most this often, so that the few that are kept reach back a while. */
const VERSION_EVERY_MS = 5 * 60_000

const OVERTAKEN =
  'Another tab saved this bay in the meantime, so this tab no longer saves over it. Download this bay as a file to keep what is here, or reload to see the other tab’s.'

/** A bay that somebody worked on, and that another one takes the place of. */
const isLeaving = (state: PlannerState, { openings, history }: PlannerState): boolean =>
  state.openings !== openings && history.done.length + history.undone.length > 0

/**
 * Keeps the open bay on the device after every commit, one save at a time, always the newest. Says so, once, where the
 * device refuses or another tab was faster. A bay that makes room for another stays behind as a version, since no undo
 * leads back to it. `seen` is the revision that this tab loaded.
 */
export const keepBay = (planner: Planner, shelf: Shelf, seen: number): (() => void) => {
  let revision = seen
  let isSaving = false
  let isWaiting = false
  let isOvertaken = false
  let wasRefused = false
  let lastVersionAt = 0

  const say = (text: string) => planner.set({ notice: { tone: 'trouble', text, offers: 'file' } })

  const putBehind = (layoutText: string, savedAt: number): Promise<void> =>
    // A version that finds no room is no trouble to anybody: the newest is safe, or its refusal was said.
    keepVersion(shelf, { layoutText, savedAt }).catch(() => undefined)

  const saveNow = async ({ layout, history }: PlannerState): Promise<void> => {
    const text = writeLayout(layout)
    const outcome = await save(shelf, revision, text, writeHistory(history))
    if (outcome.kind === 'saved') {
      revision = outcome.revision
      wasRefused = false
      if (Date.now() - lastVersionAt < VERSION_EVERY_MS) return
      lastVersionAt = Date.now()
      await putBehind(text, lastVersionAt)
    } else if (outcome.kind === 'overtaken') {
      isOvertaken = true
      say(OVERTAKEN)
    } else if (!wasRefused) {
      wasRefused = true
      say(outcome.sentence)
    }
  }

  const run = async (): Promise<void> => {
    if (isSaving) {
      isWaiting = true
      return
    }
    isSaving = true
    do {
      isWaiting = false
      await saveNow(planner.store.getState())
    } while (isWaiting && !isOvertaken)
    isSaving = false
  }

  return planner.store.subscribe((state, before) => {
    if (isLeaving(state, before)) void putBehind(writeLayout(before.layout), Date.now())
    if (state.revision !== before.revision && !isOvertaken) void run()
  })
}
