import { memo, useMemo, useRef } from 'react'
import type { RowSpot, StrengthState } from '../../../../model/strength'
import type { PlotSize } from '../../chart/plot'
import { useSize } from '../../chart/useSize'
import { acrossView } from './acrossView'
import { apart } from './apart'
import { BenchDrawing } from './BenchDrawing'
import { drawingSentence } from './benchWords'
import { elevation } from './elevation'
import type { Arranged } from './arrange'
import type { BenchLook } from './BenchTools'
import { fitOf } from './fit'
import type { BenchGiven } from './given'
import { PX_PER_MM } from './glass'
import type { SagLine, Strip } from './sagLine'
import type { Drawing } from './shape'

/** Under a drawing that is longer than its box lies the bar that scrolls it, px. */
const SCROLL_PX = 14

interface Pair extends Arranged {
  readonly along: Drawing
  readonly across: Drawing
  readonly sag: SagLine | undefined
  readonly strips: readonly Strip[]
}

const pairOf = (
  given: BenchGiven,
  { isApart, zoom, views }: BenchLook,
  { width, height }: PlotSize,
): Pair => {
  const room = { widthMm: width / PX_PER_MM, heightMm: (height - SCROLL_PX) / PX_PER_MM }
  if (isApart) return { ...apart(given, room, zoom, views), sag: undefined, strips: [] }
  const fit = fitOf(given, room, zoom, views)
  const along = elevation(given, fit)
  return { ...fit, along, across: acrossView(given, fit), sag: along.sag, strips: along.strips }
}

interface DrawingsProps {
  readonly given: BenchGiven
  readonly name: string
  readonly look: BenchLook
  readonly states: ReadonlyMap<string, StrengthState>
  readonly lit: string | undefined
  readonly spot: RowSpot | undefined
  readonly onMark: (mark: string) => void
}

/** A row along and across, side by side at one scale. The one along it scrolls where it is longer than its room. */
export const Drawings = memo(function Drawings(props: DrawingsProps) {
  const { given, name, look, states, lit, spot, onMark } = props
  const box = useRef<HTMLDivElement>(null)
  const size = useSize(box)
  const { along, across, sag, strips, views, isStacked } = useMemo(
    () => pairOf(given, look, size),
    [given, look, size],
  )
  const { frame, stretch, write } = given
  const title = (view: 'along' | 'across') => drawingSentence(name, frame, stretch, view, write)
  const shared = { states, lit, spot: look.isApart ? undefined : spot, onMark }
  // Each scrolls where it is larger than its room, so it takes the keys that scroll it.
  return (
    <div ref={box} className={isStacked ? 'bench-drawings bench-stacked' : 'bench-drawings'}>
      {views !== 'across' && (
        <div className="bench-sheet bench-along" role="region" aria-label="Along the row" tabIndex={0}>
          <BenchDrawing {...shared} drawing={along} title={title('along')} sag={sag} strips={strips} />
        </div>
      )}
      {views !== 'along' && (
        <div className="bench-sheet" role="region" aria-label="Across the row" tabIndex={0}>
          <BenchDrawing {...shared} drawing={across} title={title('across')} />
        </div>
      )}
    </div>
  )
})
