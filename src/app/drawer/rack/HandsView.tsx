import { useId, useState } from 'react'
import { travelsOf } from '../../../checks/runTravel'
import { easingsOf } from '../../../evaluate/handling/easing'
import { handlingOf, type RowHandling } from '../../../evaluate/handling/handling'
import { liftRank } from '../../../evaluate/handling/lifted'
import type { Settings } from '../../../layout/settings'
import type { PartId } from '../../../model/ids'
import { Said } from '../../../sidebar/Said'
import { StateMark } from '../../../sidebar/StateMark'
import { useWords } from '../../../sidebar/words'
import { usePlannerState } from '../../../store/react'
import { writerFor } from '../../../units/writer'
import { HeadRow } from '../chart/HeadRow'
import { PartChoice } from '../PartChoice'
import { AssumedFields } from './AssumedFields'
import './hands.css'
import { HandsPicture } from './HandsPicture'
import { people, type Person } from './handsPicture'
import { HandsTable, liftOf } from './HandsTable'
import { assumptionsOf, easingRows, heightSentences, indexWords, travelRows, verdictOf } from './handsWords'
import { useShownRack } from './useShownRack'

const FIELDS: readonly (keyof Settings)[] = ['wetTowerKg', 'grip', 'liftsAMin', 'shinMm', 'swingC']

/** Where hands and feet are is known to a quarter of an inch at best. */
const AT_HANDS = { inchParts: 4, mmParts: 1 } as const

const useHandsWriter = () =>
  writerFor(
    usePlannerState((state) => state.units),
    AT_HANDS,
  )

function RowOf({ shown, rows }: { readonly shown: PartId; readonly rows: ReadonlyMap<PartId, RowHandling> }) {
  const parts = usePlannerState((state) => state.evaluation.layout.parts)
  const { name } = useWords(parts)
  const words = (row: PartId) => [name(row), rows.get(row)?.worst?.word].filter(Boolean).join(': ')
  return <PartChoice label="Row" shown={shown} parts={[...rows.keys()]} words={words} />
}

/** What would ease the worst lift. */
function Easings({ row }: { readonly row: RowHandling }) {
  const { worst } = row
  const easings = worst ? easingRows(easingsOf(row, worst)) : []
  if (!worst || worst.word === 'Under limit' || easings.length === 0) return null
  return (
    <section>
      <h3>What would ease line {worst.line}</h3>
      <ul className="hands-eases">
        {easings.map(({ key, words, lifted }) => (
          <li key={key}>
            <span>{words}</span> <b>{indexWords(lifted)}</b>
            <StateMark word={lifted.word} rank={liftRank(lifted.word)} />
          </li>
        ))}
      </ul>
      <p className="water-note">Reach decides more than weight: aisles on both sides beat lighter towers.</p>
    </section>
  )
}

/** What moves with the air of a row and of the pipes of the bay. */
function Travel({ part }: { readonly part: PartId }) {
  const { bay, layout } = usePlannerState((state) => state.evaluation)
  const { name } = useWords(layout.parts)
  const writer = writerFor(usePlannerState((state) => state.units))
  const travels = travelsOf(bay).filter(
    (run) => run.part === part || run.what === 'main' || run.what === 'drain',
  )
  return (
    <section className="hands-travel">
      <h3>What moves when the air swings by {writer.warming(bay.settings.swingC)}</h3>
      <div className="chart-table" role="region" aria-label="What moves" tabIndex={0}>
        <table>
          <HeadRow columns={['Run', 'Of', 'Length', 'Moves', 'Room', 'So']} />
          <tbody>
            {travelRows(travels, name, writer).map((row) => (
              <tr key={row.key} title={row.of}>
                <th scope="row">{row.title}</th>
                <td>{row.of}</td>
                <td>{row.run}</td>
                <td>{row.travel}</td>
                <td>
                  {row.isOver && <StateMark word="Tight" rank={1} />} {row.room}
                </td>
                <td>{row.advice}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <p className="water-note">
        Unrestrained and held at one point.{' '}
        {[...new Set(travels.map(({ of }) => `${of.title}: ${of.source}.`))].join(' ')}
      </p>
    </section>
  )
}

function PersonChoice({
  person,
  onPerson,
}: {
  readonly person: Person
  readonly onPerson: (person: Person) => void
}) {
  const id = useId()
  const isPerson = (value: string): value is Person => Object.hasOwn(people, value)
  return (
    <div className="water-choice">
      <label htmlFor={id}>Drawn</label>
      <select
        id={id}
        value={person}
        onChange={({ target: { value } }) => {
          if (isPerson(value)) onPerson(value)
        }}
      >
        {Object.entries(people).map(([key, words]) => (
          <option key={key} value={key}>
            {words}
          </option>
        ))}
      </select>
    </div>
  )
}

function Hands({
  row,
  rows,
}: {
  readonly row: RowHandling
  readonly rows: ReadonlyMap<PartId, RowHandling>
}) {
  const writer = useHandsWriter()
  const [key, setKey] = useState<string>()
  const [person, setPerson] = useState<Person>('woman5Mm')
  const shown = liftOf(row, key)
  const verdict = verdictOf(row, writer)
  return (
    <div className="hands-view">
      <div className="hands-side">
        <RowOf shown={row.part} rows={rows} />
        <PersonChoice person={person} onPerson={setPerson} />
        <p role="status">
          {row.worst && <StateMark word={row.worst.word} rank={liftRank(row.worst.word)} />}{' '}
          <Said words={verdict} />
        </p>
        <AssumedFields keys={FIELDS} />
        {row.isWeighed && (
          <p className="water-note">The towers of this row were weighed: {writer.mass(row.loadKg)}.</p>
        )}
      </div>
      <figure className="hands-figure">
        <HandsPicture
          row={row}
          shown={shown}
          person={person}
          says={`The row from its end, to scale. ${verdict}`}
        />
        <figcaption className="water-note">
          To scale. Over each hook its lifting index from the better side: up to 1 a ring, over it a triangle,
          over 3 or out of reach a square. A dashed arm is too short.
        </figcaption>
      </figure>
      <div className="hands-told">
        <HandsTable row={row} shown={shown} onShow={setKey} writer={writer} />
        <Easings row={row} />
        <section>
          <h3>Steps and eyes</h3>
          {heightSentences(row, writer).map((words) => (
            <p key={words}>
              <Said words={words} />
            </p>
          ))}
        </section>
      </div>
      <Travel part={row.part} />
      <section className="hands-assumed">
        <h3>What these numbers assume</h3>
        <ul>
          {assumptionsOf(writer).map((words) => (
            <li key={words}>
              <Said words={words} />
            </li>
          ))}
        </ul>
      </section>
    </div>
  )
}

/** What hanging and taking down the towers of a row asks of hands and backs, and what moves with the weather. */
export default function HandsView() {
  const bay = usePlannerState((state) => state.evaluation.bay)
  const rows = handlingOf(bay)
  const chosen = useShownRack()
  const row = (chosen === undefined ? undefined : rows.get(chosen)) ?? [...rows.values()][0]
  if (!row)
    return (
      <p className="water-none">
        No towers hang in this bay yet, so nothing is lifted. Drag a rack row from the shelf to the floor.
      </p>
    )
  return <Hands key={row.part} row={row} rows={rows} />
}
