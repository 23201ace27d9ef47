import { shimStack } from '../../../catalogue/shims'
import type { CutOfStock } from '../../../evaluate/sawn/whatsCut'
import type { CutList } from '../../../model/cutList'
import { Said } from '../../../sidebar/Said'
import { usePlannerState } from '../../../store/react'
import type { Units } from '../../../units/length'
import { writerFor } from '../../../units/writer'
import { keptOffcuts, offcutWords } from './offcuts'
import { LEAST_KEPT_MM } from './sawDeeds'

interface OffcutsProps {
  readonly list: CutList
  readonly cut: CutOfStock
  readonly units: Units
}

/** The offcuts of the plan that are worth keeping, and what for. */
export function Offcuts({ list, cut, units }: OffcutsProps) {
  const levels = usePlannerState((state) => state.evaluation.bay.levels)
  const { onTape } = writerFor(units)
  const kept = keptOffcuts(list.boards, onTape)
  const pegs = [...levels.drains.values()].reduce((sum, drain) => sum + drain.pegs.length, 0)
  const shimmedFeet = [...levels.feet.values()]
    .flat()
    .filter(({ shimMm }) => shimStack(shimMm).length > 0).length
  return (
    <section className="saw-part" aria-label="Offcuts">
      <h3>Offcuts to keep and mark</h3>
      {kept.length === 0 ? (
        <p>No offcut of this plan is {onTape(LEAST_KEPT_MM)} or longer.</p>
      ) : (
        <ul className="saw-offcuts">
          {kept.map(({ lengthMm, count }) => (
            <li key={lengthMm}>
              <b>
                {count} x <Said words={onTape(lengthMm)} />
              </b>{' '}
              <Said words={offcutWords(lengthMm, list.stock, cut.lines, { pegs, shimmedFeet }, units)} />
            </li>
          ))}
        </ul>
      )}
    </section>
  )
}
