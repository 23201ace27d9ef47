import { lazy, Suspense, useMemo, useState } from 'react'
import { Stage } from 'react-konva/lib/ReactKonvaCore'
import { steadyList } from '../model/remember'
import { usePlannerState } from '../store/react'
import { drawnParts, type DrawnPart } from './drawnParts'
import type { Gestures } from './gestures'
import { lensOf } from './lens'
import { movedIn } from './moved'
import { OverlayLayer } from './OverlayLayer'
import { StaticLayer } from './StaticLayer'
import { useTheme } from './useTheme'

// Asked for when the plan is painted: the first bay is drawn without it.
const WaterLayer = lazy(async () => ({ default: (await import('./water/WaterLayer')).WaterLayer }))

/** From here on a whole bay takes longer to draw than a frame lasts, on a tablet without a graphics card. */
const HEAVY_TOWERS = 2000

/**
 * The floor and what lies over it: a canvas that stands still, one for the water where it is painted, and one that follows
 * the pointer.
 */
export function FloorStage({ gestures }: { readonly gestures: Gestures }) {
  const [evaluation, layout, preview, view, size, units, water] = usePlannerState((state) => [
    state.evaluation,
    state.layout,
    state.preview,
    state.view,
    state.size,
    state.units,
    state.paint,
  ])
  const theme = useTheme()
  const lens = useMemo(() => lensOf(view, size, theme, units), [view, size, theme, units])
  const moved = useMemo(() => movedIn(layout, preview), [layout, preview])
  const parts = useMemo(() => drawnParts(evaluation), [evaluation])
  const [steady] = useState(() => steadyList<DrawnPart>())
  const isMoved = new Set(moved)
  const standing = steady(parts.filter(({ id }) => !isMoved.has(id)))
  const isHeavy = evaluation.towers > HEAVY_TOWERS
  return (
    <Stage width={size.width} height={size.height} listening={false}>
      <StaticLayer
        lens={lens}
        house={evaluation.bay.house}
        parts={standing}
        isHeavy={isHeavy}
        hasNotes={water === 'plain'}
      />
      {water !== 'plain' && (
        <Suspense>
          <WaterLayer lens={lens} evaluation={evaluation} as={water} parts={standing} isHeavy={isHeavy} />
        </Suspense>
      )}
      <OverlayLayer
        lens={lens}
        gestures={gestures}
        evaluation={evaluation}
        moved={moved}
        parts={parts.filter(({ id }) => isMoved.has(id))}
        all={parts}
      />
    </Stage>
  )
}
