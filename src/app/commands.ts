import { chooseFile, type Opened, readFile, readSample, saveFile } from './files/layoutFiles'
import { readLayout } from '../layout/file'
import type { Layout } from '../layout/schema'
import type { Sample } from '../layout/samples'
import type { Notice, Planner } from '../store/planner'

/** What the bars and the keys of the page can do, apart from what is drawn on the floor. */
export interface Commands {
  readonly openFile: () => Promise<void>
  readonly takeFile: (file: File) => Promise<void>
  readonly takeSample: (sample: Sample) => Promise<void>
  /** A version kept on the device, as its text. */
  readonly takeText: (text: string) => void
  readonly takeLayout: (layout: Layout) => void
  readonly save: () => void
  readonly flipUnits: () => void
}

/** Undo does not lead back to another bay, so whoever worked on one is told where it went. */
const KEPT_WORDS = 'The bay before it is kept under Earlier versions on this device.'

const said = (...sentences: string[]): Notice => ({ tone: 'said', text: sentences.join(' ') })

export const commandsOf = (planner: Planner): Commands => {
  const { store, set } = planner
  const hasWork = () => store.getState().history.done.length > 0
  const take = (read: Opened) => {
    if (!read.ok) return set({ notice: { tone: 'trouble', text: read.sentence } })
    const leaves = hasWork() ? [KEPT_WORDS] : []
    planner.open(read.layout)
    return set({ notice: said(`“${read.layout.title}” is open.`, ...leaves) })
  }
  const takeLayout = (layout: Layout) => {
    const notice = hasWork() ? said(KEPT_WORDS) : undefined
    planner.open(layout)
    set({ notice })
  }
  const takeFile = async (file: File) => take(await readFile(file))
  return {
    takeFile,
    openFile: async () => {
      const file = await chooseFile()
      if (file) await takeFile(file)
    },
    takeSample: async (sample) => take(await readSample(sample)),
    takeText: (text) => take(readLayout(text)),
    takeLayout,
    save: () => saveFile(planner.store.getState().layout),
    flipUnits: () =>
      planner.set({ units: planner.store.getState().units === 'metric' ? 'feet-inches' : 'metric' }),
  }
}
