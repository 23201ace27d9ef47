import { useId } from 'react'
import { fieldWriter, readField } from '../../../sidebar/fieldText'
import { TypedField } from '../../../sidebar/TypedField'
import { usePlanner, usePlannerState } from '../../../store/react'
import { useLevelReading } from '../../../store/useLevelReading'
import type { Grip } from './grips'

interface GripFieldProps {
  readonly grips: readonly Grip[]
  /** The same grips of the bay as it stands, which edits start from. */
  readonly still: readonly Grip[]
  readonly grip: Grip
  readonly onChoose: (id: string) => void
}

const isSame =
  ({ id }: Grip) =>
  (other: Grip): boolean =>
    other.id === id

/** Chooses what is taken up or down, and takes its level, or a drain's fall, as typed: a typed number beats the mouse. */
export function GripField({ grips, still, grip, onChoose }: GripFieldProps) {
  const planner = usePlanner()
  const units = usePlannerState((state) => state.units)
  const reading = useLevelReading()
  const id = useId()
  const writer = fieldWriter(units, reading)
  const isFall = grip.drain !== undefined
  const shown = grip.drain ? writer.fall(grip.drain.slopeMmPerM) : writer.level(grip.levelMm)
  const take = (text: string): string | undefined => {
    const from = still.find(isSame(grip))
    if (!from) return undefined
    const read = readField(isFall ? 'fall' : 'level', text, units, reading)
    if (!read.ok) return read.sentence
    const typed = Number(read.value)
    const { layout } = planner.store.getState()
    const after = from.editTyped ? from.editTyped(layout, typed) : from.edit(layout, typed)
    if (after === layout && typed !== grip.levelMm && !isFall) return 'Its neighbours leave no room for that.'
    planner.commit(grip.does, () => after)
    return undefined
  }
  return (
    <>
      <div className="water-choice">
        <label htmlFor={id}>Grip</label>
        <select id={id} value={grip.id} onChange={(event) => onChoose(event.target.value)}>
          {grips.map((each) => (
            <option key={each.id} value={each.id}>
              {each.label}
            </option>
          ))}
        </select>
      </div>
      <TypedField
        label={isFall ? 'Fall' : grip.kind === 'pit' ? 'Overflow at' : 'Level'}
        shown={shown}
        onTyped={take}
      />
    </>
  )
}
