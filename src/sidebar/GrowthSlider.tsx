import { useId } from 'react'
import { setSettings } from '../layout/bayEdits'
import type { Layout } from '../layout/schema'
import type { Settings } from '../layout/settings'
import { usePlanner, usePlannerState } from '../store/react'
import { writerFor } from '../units/writer'

const STEPS = 20

const grownTo =
  (growth: number) =>
  (layout: Layout): Layout => {
    if (layout.settings.growth === growth) return layout
    const edited = setSettings(layout, { growth })
    return edited.ok ? edited.layout : layout
  }

/** How far the crop is grown, from bare towers to full leaf: aisles narrow as it is moved. */
export function GrowthSlider({ settings: { growth, leafReachMm } }: { readonly settings: Settings }) {
  const planner = usePlanner()
  const units = usePlannerState((state) => state.units)
  const id = useId()
  const keep = () => planner.commit('Crop growth', grownTo(growth))
  return (
    <div className="growth">
      <label htmlFor={id}>Crop growth</label>
      <output htmlFor={id}>leaves {writerFor(units).onTape(growth * leafReachMm)} out</output>
      <input
        id={id}
        type="range"
        min={0}
        max={STEPS}
        step={1}
        value={Math.round(growth * STEPS)}
        aria-valuetext={`${Math.round(growth * 100)} % grown`}
        onChange={(event) => planner.preview(grownTo(Number(event.target.value) / STEPS))}
        onPointerUp={keep}
        onKeyUp={keep}
        onBlur={keep}
      />
      <span>bare</span>
      <span>full grown</span>
    </div>
  )
}
