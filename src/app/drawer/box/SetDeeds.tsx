import { Archive, Printer } from 'lucide-react'
import { sheets } from '../../../sheets'
import { download } from '../../files/download'
import { printPages } from '../../files/printPages'
import { type PaperSet } from '../../../sheets/paperSet'
import { setSteps } from './paperSet'
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

/** What becomes of the whole set. */
export function SetDeeds({ set }: { readonly set: PaperSet }) {
  const { making, make, stop } = useMaking()
  const print = async () => {
    const made = await make(setSteps(sheets, set))
    if (made) await printPages(made.flatMap(({ pages }) => pages))
  }
  const pack = async () => {
    const { crewZip, setName } = await import('../../files/sheetZip')
    const bytes = await make(crewZip({ ...set, sheets }))
    if (bytes)
      download(new Blob([bytes], { type: ZIP }), `${setName(set.plan.now.layout.title, set.issue)}.zip`)
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
    </div>
  )
}
