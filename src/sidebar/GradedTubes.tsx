import { Plus, X } from 'lucide-react'
import { useState } from 'react'
import { MOST_TUBE_GROUPS } from '../parts/rack-row/schema'
import type { FeedFormProps } from './feedForm'
import { fieldWriter, readCount, readLength, type Typed } from './fieldText'
import { Said } from './Said'
import { groupLetter, nextGroup, type TubeGroups, withGroup } from './tubeGroups'
import { TypedField } from './TypedField'

interface GroupRowProps extends FeedFormProps {
  readonly group: number
  readonly onGroups: (groups: TubeGroups) => string | undefined
  readonly onDelete: () => void
}

const numberOf = (typed: Typed): number | string => (typed.ok ? Number(typed.value) : typed.sentence)

function GroupRow({ row: { gradedTubes }, units, group, onGroups, onDelete }: GroupRowProps) {
  const { stations, lengthMm } = gradedTubes[group] ?? { stations: 1, lengthMm: 0 }
  const name = `Group ${groupLetter(group)}`
  const isLast = group === gradedTubes.length - 1
  const take = (key: 'stations' | 'lengthMm', typed: Typed) => {
    const value = numberOf(typed)
    return typeof value === 'string' ? value : onGroups(withGroup(gradedTubes, group, { [key]: value }))
  }
  return (
    <div role="group" aria-label={name}>
      <span className="length-table-number">{groupLetter(group)}</span>
      <TypedField
        label={`${name}, stations`}
        isLabelHidden
        isDisabled={isLast}
        shown={isLast ? 'the rest' : String(stations)}
        onTyped={(text) => take('stations', readCount(text))}
      />
      <TypedField
        label={`${name}, cut to`}
        isLabelHidden
        shown={fieldWriter(units).onTape(lengthMm)}
        onTyped={(text) => take('lengthMm', readLength(text, units))}
      />
      <button
        className="length-table-one"
        aria-label={`Delete group ${groupLetter(group)}`}
        onClick={onDelete}
      >
        <X size={14} aria-hidden="true" />
      </button>
    </div>
  )
}

/** Tubes cut by station: groups from where the water enters, each with its length; none where all are cut alike. */
export function GradedTubes(props: FeedFormProps) {
  const { row, onValue } = props
  const groups = row.gradedTubes
  const [refusal, setRefusal] = useState<string>()
  const take = (after: TubeGroups) => onValue('gradedTubes', 'Tubes cut by station', after)
  const isAlike = groups.length === 0
  return (
    <section className="graded-tubes" aria-label="Tubes cut by station">
      <p className="field-help">
        {isAlike
          ? 'All tubes are cut alike. Cut by station they can take up what the laterals lose: longer where the water enters. The water run works out the lengths, under Tubes.'
          : 'Stations count from where the water enters, along each branch; the last group takes the rest. Microtube length then counts for nothing.'}
      </p>
      <div className="length-table" style={{ gridTemplateColumns: 'auto 1fr 1fr auto' }}>
        {!isAlike && <span />}
        {!isAlike &&
          ['Stations', 'Cut to'].map((column) => (
            <span key={column} className="length-table-head" aria-hidden="true">
              {column}
            </span>
          ))}
        {!isAlike && <span />}
        {groups.map((_, group) => (
          // Groups have no name but their place: a changed order is a changed table.
          <GroupRow
            key={group}
            {...props}
            group={group}
            onGroups={take}
            onDelete={() => setRefusal(take(groups.filter((__, index) => index !== group)))}
          />
        ))}
        <button
          className="length-table-add"
          disabled={groups.length >= MOST_TUBE_GROUPS}
          onClick={() => setRefusal(take([...groups, nextGroup(row)]))}
        >
          <Plus size={14} aria-hidden="true" /> {isAlike ? 'Cut tubes by station' : 'Add group'}
        </button>
        {refusal && (
          <p role="alert" className="field-refused">
            <Said words={refusal} />
          </p>
        )}
      </div>
    </section>
  )
}
