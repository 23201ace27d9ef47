import { useMemo, type RefObject } from 'react'
import { Shape } from 'react-konva/lib/ReactKonvaCore'
import { benchmarkMarks, BENCHMARK_MM, serviceMarks } from '../drawing/houseMarks'
import { paint } from '../drawing/paint'
import { onFloor } from '../drawing/view'
import type { House } from '../layout/house'
import type { DrawnPart } from './drawnParts'
import type { Lens } from './lens'
import { namesIn, roomyWords } from './names'

interface NotesProps {
  readonly house: House
  readonly parts: readonly DrawnPart[]
  /** Read when drawing. */
  readonly lens: RefObject<Lens>
}

/** What is buried, the benchmark, and the words of all parts, over everything that stands. */
export function Notes({ house, lens, parts }: NotesProps) {
  const services = useMemo(() => serviceMarks(house), [house])
  return (
    <Shape
      listening={false}
      sceneFunc={(ctx) => {
        const view = lens.current.paint
        paint(
          ctx,
          services.filter(({ as }) => as !== 'text'),
          view,
        )
        paint(ctx, benchmarkMarks(house, onFloor(BENCHMARK_MM, view)), view)
        paint(ctx, roomyWords([...namesIn(parts, lens.current), ...services], lens.current), view)
      }}
    />
  )
}
