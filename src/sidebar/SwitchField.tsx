interface SwitchFieldProps {
  readonly label: string
  readonly isOn: boolean
  readonly onSwitch: (isOn: boolean) => void
  readonly help?: string | undefined
}

/** On or off. */
export function SwitchField({ label, isOn, onSwitch, help }: SwitchFieldProps) {
  return (
    <div className="field-switch">
      <label>
        <input type="checkbox" checked={isOn} onChange={(event) => onSwitch(event.target.checked)} />
        {label}
      </label>
      {help && <p className="field-help">{help}</p>}
    </div>
  )
}
