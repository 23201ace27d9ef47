import { Minus, Plus } from 'lucide-react'
import type { Views } from './arrange'
import type { BenchShown } from './useBenchShown'

/** How many times the size at which it has room. */
const ZOOMS = [1, 1.5, 2, 3, 4.5]

/** How a row is drawn. */
export interface BenchLook {
  readonly isApart: boolean
  readonly zoom: number
  /** Undefined where the room decides. */
  readonly views: Views | undefined
}

const viewWords: Readonly<Record<Views, string>> = {
  both: 'Along and across',
  along: 'Along the row',
  across: 'Across the row',
}

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
      <button aria-label="Larger" disabled={at >= ZOOMS.length - 1} onClick={() => step(1)}>
        <Plus size={16} />
      </button>
    </div>
  )
}

function RackPick({ racks, shown }: { readonly racks: number; readonly shown: BenchShown }) {
  return (
    <select
      aria-label="Drawn"
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
  )
}

interface ViewPickProps {
  readonly views: Views | undefined
  readonly onViews: (views: Views | undefined) => void
}

function ViewPick({ views, onViews }: ViewPickProps) {
  const known = Object.entries(viewWords)
  return (
    <select
      aria-label="Seen"
      value={views ?? 'room'}
      // Keys of `viewWords` are all that can be chosen beside the first.
      onChange={({ target: { value } }) => onViews(value === 'room' ? undefined : (value as Views))}
    >
      <option value="room">What fits</option>
      {known.map(([key, words]) => (
        <option key={key} value={key}>
          {words}
        </option>
      ))}
    </select>
  )
}

interface BenchToolsProps {
  readonly racks: number
  readonly shown: BenchShown
  readonly look: BenchLook
  readonly onLook: (look: BenchLook) => void
}

/** How the row is drawn: which rack, together or apart, from which sides, how large. */
export function BenchTools({ racks, shown, look, onLook }: BenchToolsProps) {
  const { isApart, zoom, views } = look
  return (
    <div className="bench-tools">
      {racks > 1 && <RackPick racks={racks} shown={shown} />}
      <div className="bench-choice" role="group" aria-label="Members">
        {[false, true].map((each) => (
          <button
            key={String(each)}
            aria-pressed={each === isApart}
            onClick={() => onLook({ ...look, isApart: each })}
          >
            {each ? 'Parts apart' : 'Together'}
          </button>
        ))}
      </div>
      <ViewPick views={views} onViews={(seen) => onLook({ ...look, views: seen })} />
      <Zoom zoom={zoom} onZoom={(times) => onLook({ ...look, zoom: times })} />
    </div>
  )
}
