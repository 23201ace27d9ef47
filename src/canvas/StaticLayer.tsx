import type Konva from 'konva'
import { memo, useLayoutEffect, useMemo, useRef, type RefObject } from 'react'
import { Layer, Shape } from 'react-konva/lib/ReactKonvaCore'
import { benchmarkMarks, BENCHMARK_MM, houseMarks, serviceMarks } from '../drawing/houseMarks'
import { paint } from '../drawing/paint'
import { onFloor } from '../drawing/view'
import type { House } from '../layout/house'
import type { DrawnPart } from './drawnParts'
import { drawGrid } from './grid'
import { floorTransform, type Lens } from './lens'
import { MarksShape } from './MarksShape'
import { namesIn, roomyWords } from './names'
import { useBitmap, useResting } from './useBitmap'

interface GroundProps {
  readonly house: House
  readonly lens: RefObject<Lens>
}

/** The house and its grid, under everything. */
function Ground({ house, lens }: GroundProps) {
  const marks = useMemo(() => houseMarks(house), [house])
  return (
    <Shape
      listening={false}
      sceneFunc={(ctx) => {
        paint(ctx, marks, lens.current.paint)
        drawGrid(ctx, lens.current, house)
      }}
    />
  )
}

/** What is buried, the benchmark, and the words of all parts, over everything that stands. */
function Notes({ house, lens, parts }: GroundProps & { readonly parts: readonly DrawnPart[] }) {
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

interface StaticLayerProps {
  readonly lens: Lens
  readonly house: House
  /** All but what is dragged; the same list for as long as all of it is the same. */
  readonly parts: readonly DrawnPart[]
  /** So much is drawn that a moving view shows the last bitmap, moved and scaled, until it rests. */
  readonly isHeavy: boolean
}

/** All that stands still. It hears nothing, and is drawn again only when the view or one of its parts changes. */
export const StaticLayer = memo(function StaticLayer({ lens, house, parts, isHeavy }: StaticLayerProps) {
  const layer = useRef<Konva.Layer>(null)
  const drawing = useResting(lens, isHeavy)
  const held = useRef(drawing)
  useLayoutEffect(() => {
    held.current = drawing
    layer.current?.batchDraw()
  }, [drawing])
  useBitmap(layer, held, lens)
  return (
    <Layer ref={layer} listening={false} {...floorTransform(drawing.view)}>
      <Ground house={house} lens={held} />
      {parts.map(({ id, box, shapes }) => (
        <MarksShape key={id} marks={shapes} box={box} lens={held} />
      ))}
      <Notes house={house} lens={held} parts={parts} />
    </Layer>
  )
})
