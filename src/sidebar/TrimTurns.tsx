import type { FeedFormProps } from './feedForm'
import { SwitchField } from './SwitchField'
import { readTurns, turnsText } from './trimWords'
import { TypedField } from './TypedField'

const LABEL = 'Trim valve, turns open'

/** How far the trim valve stands open: wide, or so many turns as the valve card says. */
export function TrimTurns({ row: { trimTurns, trimTurnsAll }, onValue }: FeedFormProps) {
  const isWide = trimTurns === null
  const set = (turns: number | null) => onValue('trimTurns', LABEL, turns)
  const take = (text: string) => {
    const typed = readTurns(text, trimTurnsAll)
    return typed.ok ? set(Number(typed.value)) : typed.sentence
  }
  return (
    <div className="field-nullable">
      <SwitchField
        label="Trim valve: wide open"
        isOn={isWide}
        onSwitch={(isOn) => set(isOn ? null : trimTurnsAll / 2)}
      />
      {!isWide && (
        <TypedField
          label={LABEL}
          help="The valve card in the water run works them out, under Zones."
          shown={turnsText(trimTurns)}
          onTyped={take}
        />
      )}
    </div>
  )
}
