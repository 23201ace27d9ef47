import { chooseFile, type Opened, readFile, readSample, saveFile } from './files/layoutFiles'
import { readLayout } from '../layout/file'
import type { Layout } from '../layout/schema'
import type { Sample } from '../layout/samples'
import type { Planner, PlannerState } from '../store/planner'

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
const openWords = (title: string, { history }: PlannerState): string =>
  history.done.length > 0
    ? `“${title}” is open. The bay before it is kept under Earlier versions on this device.`
    : `“${title}” is open.`

export const commandsOf = (planner: Planner): Commands => {
  const takeLayout = (layout: Layout) => {
    const text = openWords(layout.title, planner.store.getState())
    planner.open(layout)
    planner.set({ notice: { tone: 'said', text } })
  }
  const take = (read: Opened) =>
    read.ok ? takeLayout(read.layout) : planner.set({ notice: { tone: 'trouble', text: read.sentence } })
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
