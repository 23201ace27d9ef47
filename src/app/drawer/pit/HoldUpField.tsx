import { setSettings } from '../../../layout/bayEdits'
import { settingsSchema } from '../../../layout/settings'
import { commitEdited } from '../../../sidebar/commitEdited'
import { fieldList } from '../../../sidebar/fieldList'
import { SchemaField } from '../../../sidebar/SchemaField'
import { usePlanner, usePlannerState } from '../../../store/react'

const holdUp = fieldList(settingsSchema).find(({ key }) => key === 'towerHoldUpL')

/** What a tower lets go, as it is reckoned with: measured, or the assumption that the program starts from. */
export function HoldUpField() {
  const planner = usePlanner()
  const [units, towerHoldUpL] = usePlannerState((state) => [
    state.units,
    state.evaluation.layout.settings.towerHoldUpL,
  ])
  if (!holdUp) return null
  const isAssumed = towerHoldUpL === holdUp.start
  return (
    <div className="pit-hold-up">
      <SchemaField
        field={holdUp}
        value={towerHoldUpL}
        units={units}
        onValue={(value) =>
          commitEdited(planner, holdUp.meta.label, (layout) =>
            setSettings(layout, { towerHoldUpL: Number(value) }),
          )
        }
      />
      <p>
        <b>{isAssumed ? 'Assumed.' : 'Measured.'}</b>{' '}
        {isAssumed
          ? 'The towers are most of what comes home, so it is worth a bucket.'
          : 'Typed for this bay.'}
      </p>
    </div>
  )
}
