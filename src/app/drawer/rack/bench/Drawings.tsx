import { memo, useMemo, useRef } from 'react'
import type { RowSpot, StrengthState } from '../../../../model/strength'
import { useSize } from '../../chart/useSize'
import { acrossView } from './acrossView'
import { apart } from './apart'
import { BenchDrawing } from './BenchDrawing'
import { drawingSentence } from './benchWords'
import { elevation } from './elevation'
import { fitOf, sizesOf } from './fit'
import type { BenchGiven } from './given'
import { PX_PER_MM } from './glass'
import type { SagLine } from './sagLine'
import type { Drawing } from './shape'

/** Under a drawing that is longer than its box lies the bar that scrolls it, px. */
const SCROLL_PX = 14

interface Pair {
  readonly along: Drawing
  readonly across: Drawing
  readonly sag: SagLine | undefined
}

const pairOf = (given: BenchGiven, isApart: boolean, zoom: number, width: number, height: number): Pair => {
  const room = { widthMm: (width - SCROLL_PX) / PX_PER_MM, heightMm: (height - SCROLL_PX) / PX_PER_MM }
  if (isApart) return { ...apart(given, room, zoom), sag: undefined }
  const fit = fitOf(given, sizesOf(given), room, zoom)
  const along = elevation(given, fit)
  return { along, across: acrossView(given, fit), sag: along.sag }
}

interface DrawingsProps {
  readonly given: BenchGiven
  readonly name: string
  readonly isApart: boolean
  readonly zoom: number
  readonly states: ReadonlyMap<string, StrengthState>
  readonly lit: string | undefined
  readonly spot: RowSpot | undefined
  readonly onMark: (mark: string) => void
}

/** A row along and across, side by side at one scale. The one along it scrolls where it is longer than its room. */
export const Drawings = memo(function Drawings(props: DrawingsProps) {
  const { given, name, isApart, zoom, states, lit, spot, onMark } = props
  const box = useRef<HTMLDivElement>(null)
  const { width, height } = useSize(box)
  const { along, across, sag } = useMemo(
    () => pairOf(given, isApart, zoom, width, height),
    [given, isApart, zoom, width, height],
  )
  const { frame, stretch, write } = given
  const title = (view: 'along' | 'across') => drawingSentence(name, frame, stretch, view, write)
  const shared = { states, lit, spot: isApart ? undefined : spot, onMark }
  return (
    <div ref={box} className="bench-drawings">
      {/* It scrolls, so it takes the keys that scroll it. */}
      <div className="bench-sheet bench-along" role="region" aria-label="Along the row" tabIndex={0}>
        <BenchDrawing {...shared} drawing={along} title={title('along')} sag={sag} />
      </div>
      <div className="bench-sheet" role="region" aria-label="Across the row" tabIndex={0}>
        <BenchDrawing {...shared} drawing={across} title={title('across')} />
      </div>
    </div>
  )
})
