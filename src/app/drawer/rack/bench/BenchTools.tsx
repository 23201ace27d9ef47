import { Minus, Plus } from 'lucide-react'
import { useId } from 'react'
import type { BenchShown } from './useBenchShown'

/** How many times the size at which it has room. */
const ZOOMS = [1, 1.5, 2, 3, 4.5]

interface ZoomProps {
  readonly zoom: number
  readonly onZoom: (zoom: number) => void
}

function Zoom({ zoom, onZoom }: ZoomProps) {
  const at = ZOOMS.indexOf(zoom)
  const step = (by: number) => onZoom(ZOOMS[at + by] ?? zoom)
  return (
    <div className="bench-choice" role="group" aria-label="Size of the drawing">
      <button aria-label="Smaller" disabled={at <= 0} onClick={() => step(-1)}>
        <Minus size={16} />
      </button>
      <output aria-label="Times the size that has room">× {zoom}</output>
      <button aria-label="Larger" disabled={at >= ZOOMS.length - 1} onClick={() => step(1)}>
        <Plus size={16} />
      </button>
    </div>
  )
}

function RackPick({ racks, shown }: { readonly racks: number; readonly shown: BenchShown }) {
  const id = useId()
  return (
    <div className="bench-pick">
      <label htmlFor={id}>Drawn</label>
      <select
        id={id}
        value={shown.stretch.rack ?? 'row'}
        onChange={({ target: { value } }) => shown.showRack(value === 'row' ? undefined : Number(value))}
      >
        <option value="row">Whole row</option>
        {Array.from({ length: racks }, (_, index) => (
          <option key={index} value={index + 1}>
            Rack {index + 1} of {racks}
          </option>
        ))}
      </select>
    </div>
  )
}

interface BenchToolsProps extends ZoomProps {
  readonly racks: number
  readonly shown: BenchShown
  readonly isApart: boolean
  readonly onApart: (isApart: boolean) => void
  readonly note: string
}

/** How the row is drawn: which rack, together or apart, how large. */
export function BenchTools({ racks, shown, isApart, onApart, zoom, onZoom, note }: BenchToolsProps) {
  return (
    <div className="bench-tools">
      {racks > 1 && <RackPick racks={racks} shown={shown} />}
      <div className="bench-choice" role="group" aria-label="Members">
        {[false, true].map((each) => (
          <button key={String(each)} aria-pressed={each === isApart} onClick={() => onApart(each)}>
            {each ? 'Parts apart' : 'Together'}
          </button>
        ))}
      </div>
      <Zoom zoom={zoom} onZoom={onZoom} />
      <p className="bench-note">{note}</p>
    </div>
  )
}
