import { emptyBay } from '../../layout/empty'
import { readLayout } from '../../layout/file'
import { emptyHistory, type History } from '../../layout/history'
import { readHistory } from '../../layout/historyFile'
import { samples } from '../../layout/samples'
import type { Layout } from '../../layout/schema'
import { load, loadVersions, type Shelf } from '../../store/autosave'
import { feet } from '../../units/length'
import { readSample } from './layoutFiles'

/** What the program starts with. */
export interface Start {
  readonly layout: Layout
  readonly history: History
  /** Revision under which the device holds it. */
  readonly seen: number
  readonly isSample: boolean
  /** What the person must know, if anything went wrong. */
  readonly trouble: string | undefined
}

const bare = (): Layout => emptyBay(feet(30), feet(96), 'New bay')

const sampleStart = async (seen: number, trouble: string | undefined): Promise<Start> => {
  const [first] = samples
  const read = first && (await readSample(first))
  const layout = read?.ok ? read.layout : bare()
  return { layout, history: emptyHistory, seen, isSample: read?.ok === true, trouble }
}

/** The newest kept version that still reads. */
const lastGood = async (shelf: Shelf): Promise<Layout | undefined> => {
  for (const { layoutText } of await loadVersions(shelf)) {
    const read = readLayout(layoutText)
    if (read.ok) return read.layout
  }
  return undefined
}

const DAMAGED = 'The bay kept on this device could not be read'

/** The bay that was open last, an earlier version where that one is damaged, or the sample on a first visit. */
export const startBay = async (shelf: Shelf): Promise<Start> => {
  const saved = await load(shelf)
  if (!saved) return sampleStart(0, undefined)
  const read = readLayout(saved.layoutText)
  if (read.ok) {
    const history = readHistory(saved.historyText, read.layout)
    return { layout: read.layout, history, seen: saved.revision, isSample: false, trouble: undefined }
  }
  const good = await lastGood(shelf)
  if (!good)
    return sampleStart(saved.revision, `${DAMAGED}, and no earlier version was kept; this is the sample bay.`)
  const trouble = `${DAMAGED}, so the last good version before it was opened.`
  return { layout: good, history: emptyHistory, seen: saved.revision, isSample: false, trouble }
}
