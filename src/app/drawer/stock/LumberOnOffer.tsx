import { useState } from 'react'
import { lumberOf } from '../../../catalogue/lumber'
import { setLumberLengths } from '../../../layout/stockEdits'
import { commitEdited } from '../../../sidebar/commitEdited'
import { readLength } from '../../../sidebar/fieldText'
import { Said } from '../../../sidebar/Said'
import { TypedField } from '../../../sidebar/TypedField'
import { usePlanner, usePlannerState } from '../../../store/react'
import { toTicks } from '../../../units/length'
import { writeStock } from '../../../units/writeStock'

/** What a common yard keeps. */
const USUAL_MM = lumberOf('lumber-2x4').lengthsMm

const has = (lengthsMm: readonly number[], mm: number): boolean =>
  lengthsMm.some((each) => toTicks(each) === toTicks(mm))

/** Which lengths of lumber the yard has: the usual ones to tick, any other to type. */
export function LumberOnOffer() {
  const planner = usePlanner()
  const [units, lumberMm] = usePlannerState((state) => [
    state.units,
    state.evaluation.layout.settings.lumberMm,
  ])
  const [refusal, setRefusal] = useState<string>()
  const set = (lengthsMm: readonly number[]): string | undefined =>
    commitEdited(planner, 'Lumber on offer', (layout) => setLumberLengths(layout, lengthsMm))
  const offered = [...USUAL_MM, ...lumberMm.filter((mm) => !has(USUAL_MM, mm))].sort((a, b) => a - b)
  const turn = (mm: number) =>
    setRefusal(
      set(has(lumberMm, mm) ? lumberMm.filter((each) => toTicks(each) !== toTicks(mm)) : [...lumberMm, mm]),
    )
  return (
    <fieldset className="stock-lengths">
      <legend>Lengths of lumber that the yard has</legend>
      <div className="stock-ticks">
        {offered.map((mm) => (
          <label key={toTicks(mm)}>
            <input type="checkbox" checked={has(lumberMm, mm)} onChange={() => turn(mm)} />
            <Said words={writeStock(mm, units)} />
          </label>
        ))}
      </div>
      <TypedField
        label="Another length"
        shown=""
        placeholder={writeStock(USUAL_MM.at(-1) ?? 0, units)}
        onTyped={(text) => {
          const read = readLength(text, units)
          return read.ok ? set([...lumberMm, Number(read.value)]) : read.sentence
        }}
      />
      {refusal && (
        <p role="alert" className="field-refused">
          <Said words={refusal} />
        </p>
      )}
    </fieldset>
  )
}
