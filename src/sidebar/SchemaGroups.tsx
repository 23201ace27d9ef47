import type { Units } from '../units/length'
import type { FieldGroup } from './fieldList'
import { Fold } from './Fold'
import { SchemaField } from './SchemaField'

interface SchemaGroupsProps {
  readonly groups: readonly FieldGroup[]
  readonly values: Readonly<Record<string, unknown>>
  readonly units: Units
  readonly onValue: (key: string, label: string, value: unknown) => string | undefined
  /** Titles of the groups that are open at first. */
  readonly openAtFirst: readonly string[]
}

/** The fields of a schema under their headings. */
export function SchemaGroups({ groups, values, units, onValue, openAtFirst }: SchemaGroupsProps) {
  return groups.map(({ title, fields }) => (
    <Fold key={title} title={<h3>{title}</h3>} isOpen={openAtFirst.includes(title)}>
      {fields.map((field) => (
        <SchemaField
          key={field.key}
          field={field}
          value={values[field.key]}
          units={units}
          onValue={(value) => onValue(field.key, field.meta.label, value)}
        />
      ))}
    </Fold>
  ))
}
