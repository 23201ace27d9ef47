import { MapPin } from 'lucide-react'
import type { Evaluation } from '../../../evaluate/evaluation'
import { placesOf } from '../../../evaluate/places'
import { useWords } from '../../../sidebar/words'
import { usePlanner, usePlannerState } from '../../../store/react'
import { thousands } from '../../../units/thousands'
import { writeCount } from '../../../units/writeCount'
import { HeadRow } from '../chart/HeadRow'
import type { TakeOffLine } from '../../../evaluate/takeOff/sections'

interface LineProps {
  readonly line: TakeOffLine
  readonly evaluation: Evaluation
}

/** Points the pieces out on the plan, or clears them. */
function ShowOnPlan({ line, evaluation }: LineProps) {
  const planner = usePlanner()
  const isShown = usePlannerState((state) => state.pointedOut) === line.item
  const press = () => {
    planner.set({ pointedOut: isShown ? undefined : line.item })
    planner.say(
      isShown
        ? 'Nothing is pointed out any more'
        : `${line.words}: ${thousands(placesOf(evaluation, line.item).count)} pointed out on the plan`,
    )
  }
  return (
    <p className="take-off-show">
      <button aria-pressed={isShown} onClick={press}>
        <MapPin size={15} aria-hidden="true" /> Show on the plan
      </button>
      {isShown && <span>Ringed on the plan. Escape or a second press clears it.</span>}
    </p>
  )
}

function ByPart({ line, evaluation }: LineProps) {
  const planner = usePlanner()
  const units = usePlannerState((state) => state.units)
  const { parts } = evaluation.layout
  const { name } = useWords(parts)
  const own = parts.filter(({ id }) => line.perPart.has(id))
  return (
    <div className="chart-table take-off-parts">
      <table>
        <HeadRow columns={['Part', line.unit === 'piece' ? 'Count' : 'Of it']} />
        <tbody>
          {own.map(({ id }) => (
            <tr key={id}>
              <th scope="row">
                <button onClick={() => planner.select([id])}>{name(id)}</button>
              </th>
              <td>{writeCount(line.perPart.get(id) ?? 0, line.unit, units)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  )
}

/** What a line opens to: how it is counted, which parts bring it, and where it is. */
export function LineDetails({ line, evaluation }: LineProps) {
  const units = usePlannerState((state) => state.units)
  return (
    <section className="take-off-line" aria-label={line.words}>
      <h3>
        {line.words}: {writeCount(line.count, line.unit, units)}
      </h3>
      <p>{line.rule}</p>
      <ShowOnPlan line={line} evaluation={evaluation} />
      <ByPart line={line} evaluation={evaluation} />
    </section>
  )
}
