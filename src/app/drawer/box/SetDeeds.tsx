import { Printer } from 'lucide-react'
import { sheets } from '../../../sheets'
import { printPages } from '../../files/printPages'
import { type PaperSet, setSteps } from './paperSet'
import { useMaking } from './useMaking'

interface ProgressProps {
  readonly what: string
  readonly done: number
  readonly of: number
  readonly onStop: () => void
}

function Progress({ what, done, of, onStop }: ProgressProps) {
  return (
    <div className="box-bar" role="status">
      <progress value={done} max={of} aria-label={what} />
      <span>
        {what}, {done} of {of}
      </span>
      <button onClick={onStop}>Stop</button>
    </div>
  )
}

/** What becomes of the whole set. */
export function SetDeeds({ set }: { readonly set: PaperSet }) {
  const { making, make, stop } = useMaking()
  const print = async () => {
    const made = await make((tell) =>
      setSteps(sheets, set, ({ title }, done) => tell({ what: title, done, of: sheets.length })),
    )
    if (made) await printPages(made.flatMap(({ pages }) => pages))
  }
  if (making) return <Progress {...making} onStop={stop} />
  return (
    <div className="box-bar">
      <button onClick={() => void print()}>
        <Printer size={18} /> Print the whole set
      </button>
    </div>
  )
}
