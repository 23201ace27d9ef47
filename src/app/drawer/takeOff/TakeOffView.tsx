import { useDeferredValue, useId, useMemo, useState } from 'react'
import { usePlannerState } from '../../../store/react'
import { writeCount } from '../../../units/writeCount'
import { HeadRow } from '../chart/HeadRow'
import { LineDetails } from './LineDetails'
import '../chart/chart.css'
import './takeOff.css'
import {
  foundIn,
  type TakeOffLine,
  type TakeOffSection,
  takeOffSections,
} from '../../../evaluate/takeOff/sections'

interface ListProps {
  readonly sections: readonly TakeOffSection[]
  readonly open: string | undefined
  readonly onOpen: (item: string) => void
}

function Line({ line, isOpen, onOpen }: { line: TakeOffLine; isOpen: boolean; onOpen: () => void }) {
  const units = usePlannerState((state) => state.units)
  return (
    <tr className={isOpen ? 'water-chosen' : undefined}>
      <th scope="row">
        <button aria-pressed={isOpen} onClick={onOpen}>
          {line.words}
        </button>
        {line.isWork && <i> work, nothing to buy</i>}
      </th>
      <td>{writeCount(line.count, line.unit, units)}</td>
    </tr>
  )
}

function List({ sections, open, onOpen }: ListProps) {
  return (
    <div className="chart-table take-off-list" role="region" aria-label="Counted things" tabIndex={0}>
      <table>
        <HeadRow columns={['Thing', 'Count']} />
        {sections.map(({ title, lines }) => (
          <tbody key={title}>
            <tr className="take-off-section">
              <th scope="rowgroup" colSpan={2}>
                {title}
              </th>
            </tr>
            {lines.map((line) => (
              <Line
                key={line.item}
                line={line}
                isOpen={line.item === open}
                onOpen={() => onOpen(line.item)}
              />
            ))}
          </tbody>
        ))}
      </table>
    </div>
  )
}

interface FindProps {
  readonly text: string
  readonly onText: (text: string) => void
}

function Find({ text, onText }: FindProps) {
  const id = useId()
  return (
    <div className="take-off-find">
      <label htmlFor={id}>Find</label>
      <input id={id} type="search" value={text} onChange={(event) => onText(event.target.value)} />
    </div>
  )
}

/** Everything that the bay holds, counted from what is drawn: by heading, each line with its parts, its rule and its places. */
export default function TakeOffView() {
  const evaluation = useDeferredValue(usePlannerState((state) => state.evaluation))
  const pointedOut = usePlannerState((state) => state.pointedOut)
  const [text, setText] = useState('')
  const [chosen, setChosen] = useState(pointedOut)
  const sections = useMemo(() => takeOffSections(evaluation), [evaluation])
  const found = useMemo(() => foundIn(sections, text), [sections, text])
  if (sections.length === 0)
    return <p className="water-none">Nothing to count yet: take a rack from the parts shelf.</p>
  const lines = found.flatMap((section) => section.lines)
  const open = lines.find(({ item }) => item === chosen) ?? lines[0]
  return (
    <div className="take-off">
      <div className="take-off-all">
        <Find text={text} onText={setText} />
        {open ? (
          <List sections={found} open={open.item} onOpen={setChosen} />
        ) : (
          <p className="water-none">Nothing in this bay is called “{text}”.</p>
        )}
      </div>
      {open && <LineDetails line={open} evaluation={evaluation} />}
    </div>
  )
}
