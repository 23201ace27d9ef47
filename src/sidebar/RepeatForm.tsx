import { useState } from 'react'
import type { Heading } from '../geometry/motion'
import type { PartId } from '../model/ids'
import { repeatNow, stepWithAisle } from '../store/copying'
import { usePlanner, usePlannerState } from '../store/react'
import { ChoiceField } from './ChoiceField'
import { fieldWriter, readField, readLength } from './fieldText'
import { ways } from './placeWords'
import { TypedField } from './TypedField'

const MOST_TIMES = 100

/** Lays further sets of the same parts. The spacing offered leaves a work aisle between one set and the next. */
export function RepeatForm({ ids }: { readonly ids: readonly PartId[] }) {
  const planner = usePlanner()
  const [units, bay] = usePlannerState((state) => [state.units, state.evaluation.bay])
  const [times, setTimes] = useState(1)
  const [way, setWay] = useState<Heading>(0)
  const [typedMm, setTypedMm] = useState<number>()
  const built = bay.built.filter(({ part }) => ids.includes(part))
  const stepMm = typedMm ?? stepWithAisle(built, way, bay.settings.workAisleMm)
  const takeTimes = (text: string) => {
    const read = readField('count', text, units)
    if (!read.ok) return read.sentence
    const wanted = Number(read.value)
    if (wanted < 1 || wanted > MOST_TIMES) return `Repeat 1 to ${MOST_TIMES} times.`
    setTimes(wanted)
    return undefined
  }
  const takeStep = (text: string) => {
    const read = readLength(text, units)
    if (!read.ok) return read.sentence
    setTypedMm(Number(read.value))
    return undefined
  }
  return (
    <div className="repeat">
      <TypedField label="Times" shown={String(times)} onTyped={takeTimes} />
      <ChoiceField
        label="Towards"
        value={String(way)}
        choices={ways.map(({ heading, words }) => ({ value: String(heading), words }))}
        onChoice={(value) => setWay(ways.find(({ heading }) => String(heading) === value)?.heading ?? 0)}
      />
      <TypedField
        label="From one to the next"
        shown={fieldWriter(units).length(stepMm)}
        help={typedMm === undefined ? 'Leaves a work aisle between.' : undefined}
        onTyped={takeStep}
      />
      <button onClick={() => planner.say(repeatNow(planner, ids, times, stepMm, way))}>Repeat</button>
    </div>
  )
}
