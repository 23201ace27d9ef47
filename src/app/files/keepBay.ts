import { writeHistory } from '../../layout/historyFile'
import { writeLayout } from '../../layout/file'
import { keepVersion, save, type Shelf } from '../../store/autosave'
import type { Planner, PlannerState } from '../../store/planner'

/** A good version is put behind the newest at most this often, so that the few that are kept reach back a while. */
const VERSION_EVERY_MS = 5 * 60_000

const OVERTAKEN =
  'Another tab saved this bay in the meantime, so this tab no longer saves over it. Download this bay as a file to keep what is here, or reload to see the other tab’s.'

/**
 * Keeps the open bay on the device after every commit, one save at a time, always the newest. Says so, once, where the
 * device refuses or another tab was faster. `seen` is the revision that this tab loaded.
 */
export const keepBay = (planner: Planner, shelf: Shelf, seen: number): (() => void) => {
  let revision = seen
  let isSaving = false
  let isWaiting = false
  let isOvertaken = false
  let wasRefused = false
  let lastVersionAt = 0

  const say = (text: string) => planner.set({ notice: { tone: 'trouble', text, offers: 'file' } })

  const saveNow = async ({ layout, history }: PlannerState): Promise<void> => {
    const text = writeLayout(layout)
    const outcome = await save(shelf, revision, text, writeHistory(history))
    if (outcome.kind === 'saved') {
      revision = outcome.revision
      wasRefused = false
      if (Date.now() - lastVersionAt < VERSION_EVERY_MS) return
      lastVersionAt = Date.now()
      // The newest is safe already; a version that finds no room is no trouble to anybody.
      await keepVersion(shelf, { layoutText: text, savedAt: lastVersionAt }).catch(() => undefined)
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
    if (state.revision !== before.revision && !isOvertaken) void run()
  })
}
