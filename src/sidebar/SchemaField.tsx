import { useLevelReading } from '../store/useLevelReading'
import type { Units } from '../units/length'
import { ChoiceField } from './ChoiceField'
import type { Field } from './fieldList'
import { fieldText, fieldWriter, readField } from './fieldText'
import { SwitchField } from './SwitchField'
import { TypedField } from './TypedField'

interface SchemaFieldProps {
  readonly field: Field
  readonly value: unknown
  readonly units: Units
  /** Sets the field; a refusal comes back as its sentence. */
  readonly onValue: (value: unknown) => string | undefined
}

function TypedValue({ field: { meta }, value, units, onValue }: SchemaFieldProps) {
  const reading = useLevelReading()
  const take = (text: string) => {
    const read = readField(meta.unit, text, units, reading)
    if (!read.ok) return read.sentence
    return read.value === value ? undefined : onValue(read.value)
  }
  return (
    <TypedField
      label={meta.label}
      help={meta.help}
      isWide={meta.unit === 'text'}
      shown={fieldText(meta.unit, value, fieldWriter(units, reading))}
      onTyped={take}
    />
  )
}

/** A field that the program fills while nobody does: a switch that hands it over, and the field once it is taken back. */
function NullableValue(props: SchemaFieldProps) {
  const { field, value, onValue } = props
  const isLeft = value === null
  return (
    <div className="field-nullable">
      <SwitchField
        label={`${field.meta.label}: ${field.whenNull?.toLowerCase() ?? ''}`}
        isOn={isLeft}
        onSwitch={(isOn) => onValue(isOn ? null : field.start)}
      />
      {!isLeft && <TypedValue {...props} />}
    </div>
  )
}

/** One field of a schema in the form that its unit asks for. */
export function SchemaField(props: SchemaFieldProps) {
  const { field, value, onValue } = props
  const { label, help, unit } = field.meta
  if (field.whenNull !== undefined) return <NullableValue {...props} />
  if (unit === 'switch')
    return <SwitchField label={label} help={help} isOn={value === true} onSwitch={onValue} />
  if (unit === 'choice')
    return (
      <ChoiceField
        label={label}
        help={help}
        value={String(value)}
        choices={field.choices}
        onChoice={onValue}
      />
    )
  return <TypedValue {...props} />
}
