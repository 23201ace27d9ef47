import type { SyntheticEvent } from 'react'
import { TypedField } from '../../sidebar/TypedField'
import { readField } from '../../sidebar/fieldText'
import { fieldNumberWords } from '../../model/fieldWords'
import type { FieldMeta } from '../../model/fields'
import type { Edited } from '../../layout/edited'
import type { Layout } from '../../layout/schema'
import { usePlanner, usePlannerState } from '../../store/react'
import { commitEdited } from '../../sidebar/commitEdited'
import { fieldWriter } from '../../sidebar/fieldText'
import { useLevelReading } from '../../store/useLevelReading'

interface SliderFieldProps {
  readonly label: string
  readonly unit: FieldMeta['unit']
  readonly value: number
  /** Ends and step of the slider, in the unit of the value; a typed number may go beyond, as far as the schema does. */
  readonly least: number
  readonly most: number
  readonly step: number
  readonly onSet: (layout: Layout, value: number) => Edited
}

const kept = (edited: Edited, before: Layout): Layout => (edited.ok ? edited.layout : before)

/** A number that can be typed or slid: shown live while it slides, one edit when it is let go. A typed number beats the slider. */
export function SliderField({ label, unit, value, least, most, step, onSet }: SliderFieldProps) {
  const planner = usePlanner()
  const units = usePlannerState((state) => state.units)
  const reading = useLevelReading()
  const written = fieldNumberWords(value, unit, fieldWriter(units, reading))
  const slidTo = (next: number) => (layout: Layout) => kept(onSet(layout, next), layout)
  /** What the slider itself stands at: the page may not have been drawn since it moved. */
  const keep = ({ currentTarget }: SyntheticEvent<HTMLInputElement>) => {
    if (planner.store.getState().preview) planner.commit(label, slidTo(Number(currentTarget.value)))
  }
  const take = (text: string) => {
    const read = readField(unit, text, units, reading)
    if (!read.ok) return read.sentence
    return commitEdited(planner, label, (layout) => onSet(layout, Number(read.value)))
  }
  return (
    <div className="water-slider">
      <TypedField label={label} shown={written} onTyped={take} />
      <input
        type="range"
        aria-label={`${label}, slider`}
        min={least}
        max={most}
        step={step}
        value={Math.min(most, Math.max(least, value))}
        aria-valuetext={written}
        onChange={(event) => planner.preview(slidTo(Number(event.target.value)))}
        onPointerUp={keep}
        onKeyUp={keep}
        onBlur={keep}
      />
    </div>
  )
}
