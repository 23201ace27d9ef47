import { ZoomIn, ZoomOut } from 'lucide-react'
import { usePlanner } from '../store/react'
import { perform } from './deeds'
import { ZOOM } from './keys'

/** For one finger, or a hand that cannot pinch or turn a wheel (WCAG 2.2, 2.5.1). */
export function ZoomButtons() {
  const planner = usePlanner()
  const zoom = (factor: number) => () => planner.say(perform(planner, { does: 'zoom', factor }) ?? '')
  return (
    <div className="floor-plan-zoom" role="group" aria-label="Zoom">
      <button title="Zoom in" aria-label="Zoom in" onClick={zoom(ZOOM)}>
        <ZoomIn size={18} />
      </button>
      <button title="Zoom out" aria-label="Zoom out" onClick={zoom(1 / ZOOM)}>
        <ZoomOut size={18} />
      </button>
    </div>
  )
}
