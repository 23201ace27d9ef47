import { useMemo } from 'react'
import type { Part } from '../layout/schema'
import { setField } from '../layout/setField'
import { kindOf } from '../parts/index'
import { usePlanner, usePlannerState } from '../store/react'
import { commitEdited } from './commitEdited'
import { applying, fieldList, grouped } from './fieldList'
import { PartActions } from './PartActions'
import { PartReadouts } from './PartReadouts'
import { PlaceFields } from './PlaceFields'
import { feedForms } from './feedForms'
import { PumpCurveFields } from './PumpCurveFields'
import { SchemaGroups } from './SchemaGroups'
import { TowersTakenOut } from './TowersTakenOut'
import { TypedField } from './TypedField'
import { nameOf } from '../store/partNames'

/** Shown at the top of the inspector, not among the fields of its group. */
const atTheTop: ReadonlySet<string> = new Set(['name', 'locked'])

/** One part: what it comes to, what can be done with it, where it stands, and every field of its kind. */
export function PartInspector({ part }: { readonly part: Part }) {
  const planner = usePlanner()
  const units = usePlannerState((state) => state.units)
  const kind = kindOf(part)
  const fields = useMemo(() => fieldList(kind.schema).filter(({ key }) => !atTheTop.has(key)), [kind])
  const groups = useMemo(() => grouped(applying(fields, part)), [fields, part])
  const set = (field: string, label: string, value: unknown) =>
    commitEdited(planner, `${label} of ${nameOf(part)}`, (layout) => setField(layout, part.id, field, value))
  return (
    <div className="inspector">
      <h2>
        {nameOf(part)} <span>{kind.title}</span>
      </h2>
      <PartReadouts part={part} />
      <PartActions parts={[part]} />
      <div>
        <TypedField
          label="Name"
          isWide
          shown={part.name}
          onTyped={(text) => set('name', 'Name', text.trim())}
        />
        <PlaceFields part={part} units={units} onValue={set} />
        {part.kind === 'rack-row' && <TowersTakenOut row={part} />}
        <SchemaGroups
          groups={groups}
          values={part}
          units={units}
          onValue={set}
          {...(part.kind === 'rack-row' && { forms: feedForms({ row: part, units, onValue: set }) })}
          openAtFirst={groups.slice(0, 1).map(({ title }) => title)}
        />
        {part.kind === 'sump' && <PumpCurveFields key={part.id} pit={part} units={units} />}
      </div>
    </div>
  )
}
