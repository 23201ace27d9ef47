import { useId } from 'react'
import type { Choice } from './fieldList'

interface ChoiceFieldProps {
  readonly label: string
  readonly value: string
  readonly choices: readonly Choice[]
  readonly onChoice: (value: string) => void
  readonly help?: string | undefined
  readonly isDisabled?: boolean
}

/** Letters that a field as narrow as a number's still shows. */
const SHORT_WORDS = 16

const isLong = (choices: readonly Choice[]): boolean =>
  choices.some(({ words }) => words.length > SHORT_WORDS)

/** One of a few. Long words get more of the width. */
export function ChoiceField({ label, value, choices, onChoice, help, isDisabled = false }: ChoiceFieldProps) {
  const id = useId()
  return (
    <div className={isLong(choices) ? 'field field-long' : 'field'}>
      <label htmlFor={id}>{label}</label>
      <select
        id={id}
        value={value}
        disabled={isDisabled}
        aria-describedby={`${id}-said`}
        onChange={(event) => onChoice(event.target.value)}
      >
        {choices.map((choice) => (
          <option key={choice.value} value={choice.value}>
            {choice.words}
          </option>
        ))}
      </select>
      <p id={`${id}-said`} className="field-help">
        {help}
      </p>
    </div>
  )
}
