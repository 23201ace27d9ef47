import { Archive, Printer } from 'lucide-react'
import { useState } from 'react'
import type { Page } from '../../../drawing/page'
import { sheets } from '../../../sheets'
import { download } from '../../files/download'
import { exportPng, PAPER_DPI } from '../../files/exportPng'
import { printPages } from '../../files/printPages'
import { type PaperSet } from '../../../sheets/paperSet'
import { setSteps, titleOf } from './paperSet'
import { type Making, useMaking } from './useMaking'

interface ProgressProps {
  readonly making: Making
  readonly onStop: () => void
}

/** What is being made, how far it is, and a stop. */
export function Progress({ making: { title, done, of }, onStop }: ProgressProps) {
  return (
    <div className="box-bar" role="status">
      {/* First, so that it stands still under the pointer while the words after it change their length. */}
      <button onClick={onStop}>Stop</button>
      <progress value={done} max={of} aria-label={title} />
      <span>
        {title}, {done} of {of}
      </span>
    </div>
  )
}

const ZIP = 'application/zip'

/** Why a picture could not be made, for the person. */
class NoPicture extends Error {}

const pictureOf = async (page: Page): Promise<Uint8Array> => {
  const made = await exportPng(page, PAPER_DPI)
  if (!made.ok) throw new NoPicture(made.sentence)
  return new Uint8Array(await made.blob.arrayBuffer())
}

/** What becomes of the whole set. */
export function SetDeeds({ set }: { readonly set: PaperSet }) {
  const { making, make, stop } = useMaking()
  const [hasPictures, setPictures] = useState(false)
  const [refused, setRefused] = useState('')
  const print = async () => {
    const made = await make(setSteps(sheets, set))
    if (made)
      await printPages(
        made.flatMap(({ pages }) => pages),
        titleOf(set, 'papers'),
      )
  }
  const pack = async () => {
    const { crewZip, setName } = await import('../../files/sheetZip')
    setRefused('')
    try {
      const bytes = await make(crewZip({ ...set, sheets, ...(hasPictures && { picture: pictureOf }) }))
      if (bytes)
        download(new Blob([bytes], { type: ZIP }), `${setName(set.plan.now.layout.title, set.issue)}.zip`)
    } catch (error) {
      if (!(error instanceof NoPicture)) throw error
      setRefused(error.message)
    }
  }
  if (making) return <Progress making={making} onStop={stop} />
  return (
    <div className="box-bar">
      <button onClick={() => void print()}>
        <Printer size={18} /> Print the whole set
      </button>
      <button onClick={() => void pack()}>
        <Archive size={18} /> Save it as a zip
      </button>
      <label className="box-choice">
        <input
          type="checkbox"
          checked={hasPictures}
          onChange={(event) => setPictures(event.target.checked)}
        />
        PNG pictures in the zip
      </label>
      {refused !== '' && <p role="alert">{refused}</p>}
    </div>
  )
}
