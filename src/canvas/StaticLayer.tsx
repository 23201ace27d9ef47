import type Konva from 'konva'
import { useLayoutEffect, useMemo, useRef, type RefObject } from 'react'
import { Layer, Shape } from 'react-konva/lib/ReactKonvaCore'
import { benchmarkMarks, BENCHMARK_MM, houseMarks, serviceMarks } from '../drawing/houseMarks'
import { paint } from '../drawing/paint'
import { onFloor } from '../drawing/view'
import type { House } from '../layout/house'
import { steadyList } from '../model/remember'
import type { DrawnPart } from './drawnParts'
import { drawGrid } from './grid'
import { floorTransform, type Lens } from './lens'
import { MarksShape } from './MarksShape'
import { namesIn, roomyWords } from './names'

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
  /** All but what is dragged. */
  readonly parts: readonly DrawnPart[]
}

/** All that stands still. It hears nothing, and is drawn again only when the view or one of its parts changes. */
export function StaticLayer({ lens, house, parts }: StaticLayerProps) {
  const layer = useRef<Konva.Layer>(null)
  const held = useRef(lens)
  const steady = useMemo(() => steadyList<DrawnPart>(), [])
  const still = steady(parts)
  held.current = lens
  useLayoutEffect(() => {
    layer.current?.batchDraw()
  }, [lens])
  return (
    <Layer ref={layer} listening={false} {...floorTransform(lens.view)}>
      <Ground house={house} lens={held} />
      {still.map(({ id, box, shapes }) => (
        <MarksShape key={id} marks={shapes} box={box} lens={held} />
      ))}
      <Notes house={house} lens={held} parts={still} />
    </Layer>
  )
}
