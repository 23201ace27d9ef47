import { useMemo, useState } from 'react'
import { pricesOf } from '../../catalogue/priceBook/knownPrice'
import { compareFeeds, type FeedChoice } from '../../evaluate/water/compareFeeds'
import type { Part } from '../../layout/schema'
import { setFields } from '../../layout/setFields'
import { commitEdited } from '../../sidebar/commitEdited'
import { StateMark } from '../../sidebar/StateMark'
import { usePlanner, usePlannerState } from '../../store/react'
import { nameOf } from '../../store/partNames'
import { writerFor } from '../../units/writer'
import { flowRank } from './bayWater'
import { feedName, feedRow } from './feedRows'
import { NoRow, RowChoice } from './RowChoice'
import { inOne } from './steps'
import { useAnswer } from './useAnswer'
import { useShownRow } from './useShownRow'
import { HeadRow } from './chart/HeadRow'

type Row = Part & { readonly kind: 'rack-row' }

interface LineProps {
  readonly choice: FeedChoice
  readonly onTake: () => void
}

function Line({ choice, onTake }: LineProps) {
  const [units, currency] = usePlannerState((state) => [
    state.units,
    state.evaluation.layout.counter.currency,
  ])
  const { alone, isChosen } = choice
  const { spread, least, head, pieces, pipe, price } = feedRow(choice, writerFor(units), currency)
  return (
    <tr className={isChosen ? 'water-chosen' : undefined} aria-current={isChosen}>
      <th scope="row">{feedName(choice)}</th>
      <td>{spread}</td>
      <td>
        <StateMark word={alone.state} rank={flowRank(alone.state)} />
      </td>
      <td>{least}</td>
      <td>{head}</td>
      <td>{pieces}</td>
      <td>{pipe}</td>
      <td>{price}</td>
      <td>
        {isChosen ? (
          <b>As drawn</b>
        ) : (
          <button aria-label={`Feed it so: ${feedName(choice)}`} onClick={onTake}>
            Feed it so
          </button>
        )}
      </td>
    </tr>
  )
}

const COLUMNS = [
  'Feed',
  'Spread',
  'State',
  'Least tower',
  'Head wanted',
  'Pieces',
  'Pipe',
  'Price',
  '',
] as const

interface ChoicesProps {
  readonly row: Row
  readonly choices: readonly FeedChoice[]
}

function Choices({ row, choices }: ChoicesProps) {
  const planner = usePlanner()
  const take = (choice: FeedChoice) =>
    commitEdited(planner, `${feedName(choice)} for ${nameOf(row)}`, (layout) =>
      setFields(layout, [{ part: row.id, values: choice.values }]),
    )
  return (
    <div className="chart-table water-feeds" role="region" aria-label="Feeds of the row" tabIndex={0}>
      <table>
        <HeadRow columns={COLUMNS} />
        <tbody>
          {choices.map((choice) => (
            <Line key={feedName(choice)} choice={choice} onTake={() => take(choice)} />
          ))}
        </tbody>
      </table>
    </div>
  )
}

function FeedsOf({ row }: { readonly row: Row }) {
  const [bay, counter, flow, units] = usePlannerState((state) => [
    state.evaluation.bay,
    state.evaluation.layout.counter,
    state.evaluation.layout.settings.targetLph,
    state.units,
  ])
  const [isBoth, setIsBoth] = useState(false)
  const priceOf = useMemo(() => pricesOf(counter), [counter])
  const { answer, isCurrent } = useAnswer(row.id, [row, bay, priceOf], () =>
    inOne(() => compareFeeds(row, bay, priceOf)),
  )
  if (!answer) return <p className="water-none">Trying every feed of {nameOf(row)} …</p>
  if (answer.length === 0) return <p className="water-none">{nameOf(row)} has no towers to feed.</p>
  const shown = answer.filter(({ isOffered, isChosen }) => isBoth || isOffered || isChosen)
  return (
    <div className={isCurrent ? 'water-view' : 'water-view water-stale'} aria-busy={!isCurrent}>
      <p>
        Each is the row alone in its place, with a mean tower at {writerFor(units).flow(flow)} and its valves
        wide open. Head wanted is over the tube ends, where water comes in. Prices are as the price book has
        them: placeholders, until you put your own.
      </p>
      <Choices row={row} choices={shown} />
      <label className="water-toggle">
        <input type="checkbox" checked={isBoth} onChange={(event) => setIsBoth(event.target.checked)} /> Show
        the other family of pipe too, which takes other fittings
      </label>
    </div>
  )
}

/** Straight against split, side by side: every way of feeding one row, with what it takes. */
export default function FeedsView() {
  const parts = usePlannerState((state) => state.evaluation.layout.parts)
  const shown = useShownRow()
  const row = parts.find((part): part is Row => part.id === shown && part.kind === 'rack-row')
  if (!row) return <NoRow />
  return (
    <div className="water-view">
      <RowChoice shown={row.id} />
      <FeedsOf row={row} />
    </div>
  )
}
