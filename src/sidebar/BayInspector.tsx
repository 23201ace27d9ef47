import { useMemo } from 'react'
import { renameBay, setSettings } from '../layout/bayEdits'
import { type Settings, settingsSchema } from '../layout/settings'
import { usePlanner, usePlannerState } from '../store/react'
import { inches } from '../units/length'
import { commitEdited } from './commitEdited'
import { fieldList, grouped } from './fieldList'
import { Fold } from './Fold'
import { GrowthSlider } from './GrowthSlider'
import { HouseEditor } from './HouseEditor'
import { LengthTable } from './LengthTable'
import { SchemaGroups } from './SchemaGroups'
import { TypedField } from './TypedField'

const groups = grouped(fieldList(settingsSchema))

/** Shortest first, each once, as the saw list offers them. */
const inOrder = (lengthsMm: readonly number[]): number[] => [...new Set(lengthsMm)].sort((a, b) => a - b)

function LumberLengths({ lumberMm }: Pick<Settings, 'lumberMm'>) {
  const planner = usePlanner()
  const units = usePlannerState((state) => state.units)
  const rows = useMemo(() => lumberMm.map((mm) => [mm]), [lumberMm])
  const longestMm = Math.max(...lumberMm)
  return (
    <Fold title={<h3>Lumber on offer</h3>}>
      <LengthTable
        rowName="Length"
        columns={['Length']}
        rows={rows}
        units={units}
        leastRows={1}
        newRow={() => [longestMm + inches(24)]}
        onRows={(next) =>
          commitEdited(planner, 'Lumber on offer', (layout) =>
            setSettings(layout, { lumberMm: inOrder(next.map(([mm = 0]) => mm)) }),
          )
        }
      />
    </Fold>
  )
}

/** The bay as a whole: its title, how it is used and built, and the house round it. */
export function BayInspector() {
  const planner = usePlanner()
  const [units, layout] = usePlannerState((state) => [state.units, state.evaluation.layout])
  const { settings, title, house } = layout
  const set = (key: string, label: string, value: unknown) => {
    const refusal = commitEdited(planner, label, (now) => setSettings(now, { [key]: value }))
    // Whoever changes the units of the bay wants to read it in them.
    if (key === 'units') planner.set({ units: planner.store.getState().layout.settings.units })
    return refusal
  }
  return (
    <div className="inspector">
      <h2>The bay</h2>
      <TypedField
        label="Title"
        isWide
        shown={title}
        onTyped={(text) => commitEdited(planner, 'Title of the bay', (now) => renameBay(now, text))}
      />
      <GrowthSlider settings={settings} />
      <div>
        <SchemaGroups
          groups={groups}
          values={settings}
          units={units}
          onValue={set}
          openAtFirst={['Access']}
        />
        <LumberLengths lumberMm={settings.lumberMm} />
        <HouseEditor house={house} />
      </div>
      <p className="field-help">Select a part on the floor to see and change it here.</p>
    </div>
  )
}
