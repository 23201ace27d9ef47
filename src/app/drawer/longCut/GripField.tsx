import { useId } from 'react'
import { fieldWriter, readField } from '../../../sidebar/fieldText'
import { TypedField } from '../../../sidebar/TypedField'
import { usePlanner, usePlannerState } from '../../../store/react'
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
  const [units, levelsFrom] = usePlannerState((state) => [
    state.units,
    state.evaluation.layout.settings.levelsFrom,
  ])
  const id = useId()
  const writer = fieldWriter(units)
  const isFall = grip.drain !== undefined
  const shown = grip.drain ? writer.fall(grip.drain.slopeMmPerM) : writer.length(grip.levelMm)
  const take = (text: string): string | undefined => {
    const from = still.find(isSame(grip))
    if (!from) return undefined
    const read = readField(isFall ? 'fall' : 'level', text, units)
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
        // The drawing then writes levels from the benchmark's value; fields are typed from the bay's zero everywhere.
        help={levelsFrom === 'benchmark' && !isFall ? 'From the bay’s zero.' : undefined}
      />
    </>
  )
}
