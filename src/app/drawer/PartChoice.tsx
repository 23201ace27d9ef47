import { useId } from 'react'
import type { PartId } from '../../model/ids'
import { usePlanner } from '../../store/react'

interface PartChoiceProps {
  readonly label: string
  readonly shown: PartId | undefined
  readonly parts: readonly PartId[]
  /** A part as it stands in the list. */
  readonly words: (part: PartId) => string
}

/** Chooses one of several parts, which selects it on the plan too. */
export function PartChoice({ label, shown, parts, words }: PartChoiceProps) {
  const planner = usePlanner()
  const id = useId()
  return (
    <div className="water-choice">
      <label htmlFor={id}>{label}</label>
      <select id={id} value={shown} onChange={(event) => planner.select([event.target.value])}>
        {parts.map((part) => (
          <option key={part} value={part}>
            {words(part)}
          </option>
        ))}
      </select>
    </div>
  )
}
