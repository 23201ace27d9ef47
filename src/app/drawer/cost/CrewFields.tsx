import { setCounter } from '../../../layout/bayEdits'
import { counterSchema } from '../../../layout/counter'
import { commitEdited } from '../../../sidebar/commitEdited'
import { fieldList } from '../../../sidebar/fieldList'
import { SchemaField } from '../../../sidebar/SchemaField'
import { usePlanner, usePlannerState } from '../../../store/react'

const CREW = ['crew', 'hoursADay', 'crewFactor', 'supervision'] as const

const crewFields = fieldList(counterSchema).flatMap((field) => {
  const key = CREW.find((each) => each === field.key)
  return key === undefined ? [] : [{ key, field }]
})

/** Who builds it. */
export function CrewFields() {
  const planner = usePlanner()
  const [units, counter] = usePlannerState((state) => [state.units, state.evaluation.layout.counter])
  return (
    <div className="cost-crew">
      {crewFields.map(({ key, field }) => (
        <SchemaField
          key={key}
          field={field}
          value={counter[key]}
          units={units}
          onValue={(value) =>
            commitEdited(planner, field.meta.label, (layout) => setCounter(layout, { [key]: value }))
          }
        />
      ))}
    </div>
  )
}
