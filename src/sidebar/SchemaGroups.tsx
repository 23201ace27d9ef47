import { Fragment, type ReactNode } from 'react'
import type { Units } from '../units/length'
import type { FieldGroup } from './fieldList'
import { Fold } from './Fold'
import { SchemaField } from './SchemaField'

interface SchemaGroupsProps {
  readonly groups: readonly FieldGroup[]
  readonly values: Readonly<Record<string, unknown>>
  readonly units: Units
  readonly onValue: (key: string, label: string, value: unknown) => string | undefined
  /** Forms of their own, by the key of the field that each stands for. */
  readonly forms?: Readonly<Record<string, ReactNode>>
  /** Titles of the groups that are open at first. */
  readonly openAtFirst: readonly string[]
}

/** The fields of a schema under their headings. */
export function SchemaGroups(props: SchemaGroupsProps) {
  const { groups, values, units, onValue, forms = {}, openAtFirst } = props
  return groups.map(({ title, fields }) => (
    <Fold key={title} title={<h3>{title}</h3>} isOpen={openAtFirst.includes(title)}>
      {fields.map((field) => (
        <Fragment key={field.key}>
          {forms[field.key] ?? (
            <SchemaField
              field={field}
              value={values[field.key]}
              units={units}
              onValue={(value) => onValue(field.key, field.meta.label, value)}
            />
          )}
        </Fragment>
      ))}
    </Fold>
  ))
}
