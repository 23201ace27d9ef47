import { setSettings } from '../../../layout/bayEdits'
import { type Settings, settingsSchema } from '../../../layout/settings'
import { commitEdited } from '../../../sidebar/commitEdited'
import { fieldList } from '../../../sidebar/fieldList'
import { SchemaField } from '../../../sidebar/SchemaField'
import { usePlanner, usePlannerState } from '../../../store/react'

const settingsFields = fieldList(settingsSchema)

/** Assumptions of the bay that a view of racks rests on, each as its own field. */
export function AssumedFields({ keys }: { readonly keys: readonly (keyof Settings)[] }) {
  const planner = usePlanner()
  const [units, settings] = usePlannerState((state) => [state.units, state.evaluation.layout.settings])
  return settingsFields
    .filter(({ key }) => keys.some((wanted) => wanted === key))
    .map((field) => (
      <SchemaField
        key={field.key}
        field={field}
        value={Object.entries(settings).find(([key]) => key === field.key)?.[1]}
        units={units}
        onValue={(value) =>
          commitEdited(planner, field.meta.label, (layout) => setSettings(layout, { [field.key]: value }))
        }
      />
    ))
}
