import { collectorChoices, type CollectorChoice, drainsLeftOut } from '../../../evaluate/returns/collectors'
import { digCautions } from '../../../model/digCautions'
import { rankOf } from '../../../model/finding'
import { Said } from '../../../sidebar/Said'
import { StateMark } from '../../../sidebar/StateMark'
import { useWords } from '../../../sidebar/words'
import { usePlannerState } from '../../../store/react'
import { useTrenchWriter } from '../longCut/LongCutDrawing'
import { inOne } from '../steps'
import { useAnswer } from '../useAnswer'
import './collectors.css'
import { choiceSentence, COLLECTOR_COLUMNS, collectorRow, pipeWords, wayWords } from './collectorWords'
import { HeadRow } from '../chart/HeadRow'

/** Choices of one way stand together under its name. */
const byWay = (
  choices: readonly CollectorChoice[],
): readonly (readonly [string, readonly CollectorChoice[]])[] => {
  const ways = new Map<string, CollectorChoice[]>()
  for (const choice of choices) {
    const way = wayWords(choice)
    ways.set(way, [...(ways.get(way) ?? []), choice])
  }
  return [...ways]
}

function Line({ choice }: { readonly choice: CollectorChoice }) {
  const writer = useTrenchWriter()
  const { pits, carries, full, fall, trench, pit, dig, pipe } = collectorRow(choice, writer)
  const isDrawn = choice.way === 'as-drawn'
  return (
    <tr className={isDrawn ? 'water-chosen' : undefined} aria-current={isDrawn}>
      <th scope="row">{pipeWords(choice, writer)}</th>
      <td>{pits}</td>
      <td>{carries}</td>
      <td>{full}</td>
      <td>
        <StateMark word={choice.state} rank={rankOf({ subject: 'drain', state: choice.state })} />
      </td>
      <td>{fall}</td>
      <td>{trench}</td>
      <td>{pit}</td>
      <td>{dig}</td>
      <td>{pipe}</td>
    </tr>
  )
}

function Choices({ choices }: { readonly choices: readonly CollectorChoice[] }) {
  return (
    <div className="chart-table collectors-table" role="region" aria-label="Pits or collectors" tabIndex={0}>
      <table>
        <HeadRow columns={['In the ground', ...COLLECTOR_COLUMNS]} />
        {byWay(choices).map(([way, all]) => (
          <tbody key={way}>
            <tr className="collectors-way">
              <th scope="rowgroup" colSpan={COLLECTOR_COLUMNS.length + 1}>
                {way}
              </th>
            </tr>
            {all.map((choice) => (
              <Line key={`${choice.pipe} ${choice.slopeMmPerM}`} choice={choice} />
            ))}
          </tbody>
        ))}
      </table>
    </div>
  )
}

/** What whoever digs the deepest of these must be told. */
function DigWords({ choices }: { readonly choices: readonly CollectorChoice[] }) {
  const units = usePlannerState((state) => state.units)
  const deepestMm = Math.max(...choices.flatMap((choice) => [choice.deepestPitMm, choice.deepestTrenchMm]))
  return (
    <div className="collectors-cautions">
      {digCautions(deepestMm, units).map((words) => (
        <p key={words}>{words}</p>
      ))}
    </div>
  )
}

/** What the comparison rests on, and what it leaves out. */
function Note() {
  return (
    <p className="water-note">
      A collector runs straight past the low ends of the drains, which come into it by short branches with
      crowns level; a drain carried on is one line under all its rows. Either ends in one pit with as much
      floor as the pits that it stands for, and as much depth under its overflow as the deepest. Each line
      starts as high as cover and branches allow and falls as the plumbing code asks of its size, or as the
      bay asks of new lines. More than half full backs up. One pit also means one place for pumps: the mains
      grow longer. Posts, footings and buried lines on the way are not looked at before a line is laid. To lay
      one, draw a drain line of that pipe past the low ends, lead the drains to it, and dig its pit.
    </p>
  )
}

/** The pits of the bay as drawn against collectors that take their drains together. */
export default function CollectorsView() {
  const { layout, bay } = usePlannerState((state) => state.evaluation)
  const { name } = useWords(layout.parts)
  const writer = useTrenchWriter()
  const { answer: choices, isCurrent } = useAnswer('bay', [bay], () => inOne(() => collectorChoices(bay)))
  const leftOut = drainsLeftOut(bay)
  if (!choices) return <p className="water-none">Laying collectors past the drains …</p>
  if (choices.length === 0)
    return (
      <p className="water-none">
        No drain of this bay comes to a pit yet, so there is nothing to compare. Lay a drain line and dig a
        pit at its low end.
      </p>
    )
  return (
    <div className={isCurrent ? 'water-view' : 'water-view water-stale'} aria-busy={!isCurrent}>
      <p className="collectors-says">
        <Said words={choiceSentence(choices, writer)} />
      </p>
      <Choices choices={choices} />
      {leftOut.length > 0 && <p>Left out, for they come to no pit: {leftOut.map(name).join(', ')}.</p>}
      {choices.length > 1 && <Note />}
      <DigWords choices={choices} />
    </div>
  )
}
