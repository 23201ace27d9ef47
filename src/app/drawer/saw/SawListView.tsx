import { useDeferredValue, useId, useMemo, useRef, useState } from 'react'
import type { SawBench } from '../../../evaluate/sawn/sawBench'
import type { CutOfStock } from '../../../evaluate/sawn/whatsCut'
import type { CutList } from '../../../model/cutList'
import { boughtWords, isCoil } from '../../../sheets/cutWords'
import { Said } from '../../../sidebar/Said'
import { usePlanner, usePlannerState } from '../../../store/react'
import { useCutLists } from '../../../store/useCutLists'
import { MisfitBanner } from '../sawn/MisfitBanner'
import { BoardList } from './BoardList'
import { Offcuts } from './Offcuts'
import './saw.css'
import { SawnBoards } from './SawnBoards'
import type { Sawing } from './sawDeeds'
import { sawOrder } from '../../../sheets/saw/sawOrder'
import { sharedStops } from '../../../sheets/saw/sharedStops'
import { sharedWords, workWords } from '../../../sheets/saw/sawWords'
import { StopTable } from './StopTable'
import { useFocusKept } from './useFocusKept'
import { useSawBench } from './useSawBench'

interface MaterialProps {
  readonly list: CutList
  readonly cut: CutOfStock
  readonly saw: SawBench
}

function SharedStops({ list }: { readonly list: CutList }) {
  const units = usePlannerState((state) => state.units)
  const shared = sharedStops(list.problem.pieces)
  if (shared.length === 0) return null
  return (
    <section className="saw-part" aria-label="Stops to share">
      <h3>Two stops that could be one</h3>
      <ul>
        {shared.map((each) => (
          <li key={`${each.longMm} ${each.shortMm}`}>
            <Said words={sharedWords(each, units)} />
          </li>
        ))}
      </ul>
    </section>
  )
}

function Material({ list, cut, saw }: MaterialProps) {
  const planner = usePlanner()
  const units = usePlannerState((state) => state.units)
  const { holesOf } = saw
  const sawing = useMemo(
    (): Sawing => ({ planner, stock: list.stock, lines: list.pieces, holesOf }),
    [planner, list, holesOf],
  )
  const order = useMemo(() => sawOrder(list), [list])
  const box = useRef<HTMLElement>(null)
  const keepFocus = useFocusKept(box)
  return (
    <div className="saw-list">
      <div className="saw-side">
        <StopTable list={list} cut={cut} sawing={sawing} units={units} />
        <SharedStops list={list} />
        <Offcuts list={list} cut={cut} units={units} />
      </div>
      <section className="saw-part" aria-label="Boards" ref={box} tabIndex={-1}>
        <h3>
          {order.boards.length > 0 ? (
            <>
              {isCoil(list.stock) ? 'To cut' : 'To saw'}:{' '}
              <Said words={boughtWords(list, units) || 'leftovers only'} />
            </>
          ) : (
            `Nothing is left to ${isCoil(list.stock) ? 'cut' : 'saw'}`
          )}
        </h3>
        {order.boards.length > 0 && (
          <>
            <BoardList boards={order.boards} list={list} sawing={sawing} units={units} onTick={keepFocus} />
            <p className="saw-work">{workWords(order, list.stock)}</p>
          </>
        )}
        <SawnBoards
          boards={saw.bench.sawn.filter(({ stock }) => stock === list.stock)}
          sawing={sawing}
          units={units}
          onUntick={keepFocus}
        />
      </section>
    </div>
  )
}

/** What the saw hand works down: a material’s stops, longest first, and each different board as it is cut, to be ticked off. */
export default function SawListView() {
  const lists = useDeferredValue(useCutLists())
  const saw = useSawBench()
  const [chosen, setChosen] = useState<string>()
  const id = useId()
  const list = lists.find(({ stock }) => stock === chosen) ?? lists[0]
  const cut = saw.cut.find(({ stock }) => stock === list?.stock)
  return (
    <div className="saw">
      <MisfitBanner cut={saw.cut} />
      {list && cut ? (
        <>
          <div className="water-choice">
            <label htmlFor={id}>Material</label>
            <select id={id} value={list.stock} onChange={(event) => setChosen(event.target.value)}>
              {lists.map(({ stock, title }) => (
                <option key={stock} value={stock}>
                  {title}
                </option>
              ))}
            </select>
          </div>
          <Material key={list.stock} list={list} cut={cut} saw={saw} />
        </>
      ) : (
        <p className="water-none">Nothing to saw yet: take a rack from the parts shelf.</p>
      )}
    </div>
  )
}
