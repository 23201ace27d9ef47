import { setSettings } from '../../layout/bayEdits'
import { setField } from '../../layout/setField'
import type { Settings } from '../../layout/settings'
import type { PartId } from '../../model/ids'
import { inches } from '../../units/length'
import { SliderField } from './SliderField'

interface WaterSlidersProps {
  readonly settings: Settings
  readonly row: PartId
  readonly rowName: string
  /** How far the laterals of the row hang through between ties, mm. */
  readonly sagMm: number
}

/** What the builder may not know for certain, to be slid between the ends of what is likely. */
export function WaterSliders({ settings, row, rowName, sagMm }: WaterSlidersProps) {
  return (
    <div className="water-sliders" role="group" aria-label="What if">
      <SliderField
        label="Water temperature"
        unit="temperature"
        value={settings.waterC}
        least={5}
        most={35}
        step={0.5}
        onSet={(layout, waterC) => setSettings(layout, { waterC })}
      />
      <SliderField
        label="Tube ends level within"
        unit="length"
        value={settings.outletErrorMm}
        least={0}
        most={inches(2)}
        step={inches(1 / 16)}
        onSet={(layout, outletErrorMm) => setSettings(layout, { outletErrorMm })}
      />
      <SliderField
        label="Scatter of the tubes"
        unit="share"
        value={settings.tubeScatter}
        least={0}
        most={0.15}
        step={0.005}
        onSet={(layout, tubeScatter) => setSettings(layout, { tubeScatter })}
      />
      <SliderField
        label={`Laterals of ${rowName} sag`}
        unit="length"
        value={sagMm}
        least={0}
        most={inches(2)}
        step={inches(1 / 16)}
        onSet={(layout, mm) => setField(layout, row, 'lateralSagMm', mm)}
      />
    </div>
  )
}
