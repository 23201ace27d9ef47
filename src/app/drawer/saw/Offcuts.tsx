import { shimStack } from '../../../catalogue/shims'
import type { CutOfStock } from '../../../evaluate/sawn/whatsCut'
import type { CutList } from '../../../model/cutList'
import { isCoil, lengthWriter } from '../../../sheets/cutWords'
import { Said } from '../../../sidebar/Said'
import { usePlannerState } from '../../../store/react'
import type { Units } from '../../../units/length'
import { keptOffcuts, offcutWords } from '../../../sheets/saw/offcuts'
import { LEAST_KEPT_MM } from '../../../sheets/saw/offcuts'

interface OffcutsProps {
  readonly list: CutList
  readonly cut: CutOfStock
  readonly units: Units
}

/** The offcuts of the plan that are worth keeping, and what for. */
export function Offcuts({ list, cut, units }: OffcutsProps) {
  const levels = usePlannerState((state) => state.evaluation.bay.levels)
  const { stock } = list
  const write = lengthWriter(stock, units)
  const kept = keptOffcuts(list.boards, write)
  const pegs = [...levels.drains.values()].reduce((sum, drain) => sum + drain.pegs.length, 0)
  const shimmedFeet = [...levels.feet.values()]
    .flat()
    .filter(({ shimMm }) => shimStack(shimMm).length > 0).length
  return (
    <section className="saw-part" aria-label="Offcuts">
      <h3>{isCoil(stock) ? 'Left on coils' : 'Offcuts to keep and mark'}</h3>
      {kept.length === 0 ? (
        <p>
          {isCoil(stock) ? 'Nothing that is left on a coil' : 'No offcut of this plan'} is{' '}
          {write(LEAST_KEPT_MM)} or longer.
        </p>
      ) : (
        <ul className="saw-offcuts">
          {kept.map(({ lengthMm, count }) => (
            <li key={lengthMm}>
              <b>
                {count} x <Said words={write(lengthMm)} />
              </b>{' '}
              {count > 1 ? 'each for ' : 'for '}
              <Said
                words={offcutWords(
                  lengthMm,
                  { stock, saw: list.problem.saw },
                  cut.lines,
                  { pegs, shimmedFeet },
                  units,
                )}
              />
            </li>
          ))}
        </ul>
      )}
    </section>
  )
}
