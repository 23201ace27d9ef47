import { readLayout, writeLayout } from '../../layout/file'
import type { Layout } from '../../layout/schema'
import type { Sample } from '../../layout/samples'
import { download, fileName } from './download'

export type Opened =
  { readonly ok: true; readonly layout: Layout } | { readonly ok: false; readonly sentence: string }

/** Larger than any bay that the schema accepts; read no further. */
const LARGEST_BYTES = 50_000_000

const UNTOUCHED = 'Your bay is untouched.'

/** Reads a file that the person chose or dropped. */
export const readFile = async (file: File): Promise<Opened> => {
  if (file.size > LARGEST_BYTES)
    return {
      ok: false,
      sentence: `“${file.name}” is far larger than any bay, so it was not read. ${UNTOUCHED}`,
    }
  try {
    return readLayout(await file.text())
  } catch {
    return { ok: false, sentence: `“${file.name}” could not be read from the device. ${UNTOUCHED}` }
  }
}

/** Fetches one of the bays that come with the program. */
export const readSample = async (sample: Sample): Promise<Opened> => {
  try {
    const answer = await fetch(sample.file)
    if (!answer.ok) throw new Error(answer.statusText)
    return readLayout(await answer.text())
  } catch {
    return { ok: false, sentence: `The sample “${sample.title}” could not be fetched. ${UNTOUCHED}` }
  }
}

/** Lets the person choose a file, of a layout or of what `accept` names; undefined if they chose none. */
export const chooseFile = (accept = '.json,application/json'): Promise<File | undefined> =>
  new Promise((resolve) => {
    const input = document.createElement('input')
    input.type = 'file'
    input.accept = accept
    input.onchange = () => resolve(input.files?.[0])
    input.oncancel = () => resolve(undefined)
    input.click()
  })

/** Saves the layout as a file. */
export const saveFile = (layout: Layout): void =>
  download(new Blob([writeLayout(layout)], { type: 'application/json' }), fileName(layout.title, '.bay.json'))
