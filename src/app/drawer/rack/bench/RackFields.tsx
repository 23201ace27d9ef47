import { useMemo } from 'react'
import type { Part } from '../../../../layout/schema'
import { setField } from '../../../../layout/setField'
import { kindOf } from '../../../../parts/index'
import { commitEdited } from '../../../../sidebar/commitEdited'
import { applying, fieldList, grouped } from '../../../../sidebar/fieldList'
import { SchemaGroups } from '../../../../sidebar/SchemaGroups'
import { nameOf } from '../../../../store/partNames'
import { usePlanner, usePlannerState } from '../../../../store/react'

/** What makes the rack; its troughs and its water are set in the sidebar. */
const GROUPS = ['Frame', 'Rails', 'Row', 'Tower']

/** The fields of a row that its rack is built by, as the sidebar has them. Each that is set is one step to undo. */
export function RackFields({ row }: { readonly row: Part }) {
  const planner = usePlanner()
  const units = usePlannerState((state) => state.units)
  const kind = kindOf(row)
  const fields = useMemo(() => fieldList(kind.schema), [kind])
  const groups = useMemo(
    () =>
      grouped(applying(fields, row))
        .filter(({ title }) => GROUPS.includes(title))
        .toSorted((a, b) => GROUPS.indexOf(a.title) - GROUPS.indexOf(b.title)),
    [fields, row],
  )
  const set = (field: string, label: string, value: unknown) =>
    commitEdited(planner, `${label} of ${nameOf(row)}`, (layout) => setField(layout, row.id, field, value))
  return <SchemaGroups groups={groups} values={row} units={units} onValue={set} openAtFirst={['Frame']} />
}
