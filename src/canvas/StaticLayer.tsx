import { memo, useMemo, type RefObject } from 'react'
import { Layer, Shape } from 'react-konva/lib/ReactKonvaCore'
import { houseMarks } from '../drawing/houseMarks'
import { paint } from '../drawing/paint'
import type { House } from '../layout/house'
import type { DrawnPart } from './drawnParts'
import { drawGrid } from './grid'
import { floorTransform, type Lens } from './lens'
import { MarksShape } from './MarksShape'
import { Notes } from './Notes'
import { useSheet } from './useBitmap'

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

interface StaticLayerProps {
  readonly lens: Lens
  readonly house: House
  /** All but what is dragged; the same list for as long as all of it is the same. */
  readonly parts: readonly DrawnPart[]
  /** So much is drawn that a moving view shows the last bitmap, moved and scaled, until it rests. */
  readonly isHeavy: boolean
  /** Not where water is painted over it: then the notes lie over the paint. */
  readonly hasNotes: boolean
}

/** All that stands still. It hears nothing, and is drawn again only when the view or one of its parts changes. */
export const StaticLayer = memo(function StaticLayer(props: StaticLayerProps) {
  const { lens, house, parts, isHeavy, hasNotes } = props
  const { layer, drawing, held } = useSheet(lens, isHeavy)
  return (
    <Layer ref={layer} listening={false} {...floorTransform(drawing.view)}>
      <Ground house={house} lens={held} />
      {parts.map(({ id, box, shapes }) => (
        <MarksShape key={id} marks={shapes} box={box} lens={held} />
      ))}
      {hasNotes && <Notes house={house} lens={held} parts={parts} />}
    </Layer>
  )
})
