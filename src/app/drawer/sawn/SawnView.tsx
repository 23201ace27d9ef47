import { useRef, useState } from 'react'
import { stockOf } from '../../../catalogue/stock'
import type { CanRecut, CutOfStock, Right, Scrap } from '../../../evaluate/sawn/whatsCut'
import { Said } from '../../../sidebar/Said'
import { usePlanner, usePlannerState } from '../../../store/react'
import { fromTicks, type Units } from '../../../units/length'
import { writerFor } from '../../../units/writer'
import '../chart/chart.css'
import { HeadRow } from '../chart/HeadRow'
import { CountField } from '../saw/CountField'
import { CutSoFar } from '../saw/CutSoFar'
import '../saw/saw.css'
import { LEAST_KEPT_MM } from '../../../sheets/saw/offcuts'
import { acceptRecut, dropPieces, toLeftovers, type Sawing } from '../saw/sawDeeds'
import { SawnBoards } from '../saw/SawnBoards'
import { useFocusKept } from '../saw/useFocusKept'
import { useSawBench } from '../saw/useSawBench'
import { footWords, holesWords, marksWords, recutWords } from '../../../sheets/sawnWords'

interface GroupProps {
  readonly cut: CutOfStock
  readonly sawing: Sawing
  readonly units: Units
  /** Called before a deed, which may take its line off the view. */
  readonly onDeed: () => void
}

const keyOf = ({ piece, count }: Scrap): string => JSON.stringify({ ...piece, count })

/** What is said of the holes of the pieces that do for one line; each thing once. */
const holesOfLine = (rights: readonly Right[], units: Units): string =>
  [...new Set(rights.map((right) => holesWords(right, units)))].join(' ')

function RightPieces({ cut, sawing, units }: GroupProps) {
  const { onTape } = writerFor(units)
  const lines = cut.lines.filter(({ right }) => right > 0)
  if (lines.length === 0) return null
  return (
    <>
      <h4>Still right</h4>
      <div className="chart-table saw-stops" role="region" aria-label="Still right" tabIndex={0}>
        <table>
          <HeadRow columns={['Length', 'Cut', 'Of', 'Members', 'Holes']} />
          <tbody>
            {lines.map((state) => {
              const { line } = state
              const stop = onTape(fromTicks(line.lengthTicks))
              const holes = holesOfLine(
                cut.right.filter((each) => each.line === line),
                units,
              )
              return (
                <tr key={`${line.lengthTicks} ${JSON.stringify(line.cut)}`}>
                  <th scope="row">{stop}</th>
                  <td>
                    <CutSoFar state={state} cut={cut} sawing={sawing} stop={stop} />
                  </td>
                  <td>{line.count}</td>
                  <td>{marksWords(line.marks)}</td>
                  <td>
                    <Said words={holes} />
                  </td>
                </tr>
              )
            })}
          </tbody>
        </table>
      </div>
    </>
  )
}

function RecutItem({ each, sawing, units, onDeed }: Omit<GroupProps, 'cut'> & { readonly each: CanRecut }) {
  const [refused, setRefused] = useState<string>()
  const words = recutWords(each, units)
  const foot = footWords(each, units)
  const isRestKept = each.restMm >= LEAST_KEPT_MM
  const accept = (count: number): string | undefined => {
    if (count === 0) return undefined
    onDeed()
    const sentence = acceptRecut(sawing, { ...each, count })
    setRefused(sentence)
    return sentence
  }
  return (
    <li>
      <p>
        <Said words={words} /> {foot !== '' && <Said words={foot} />}
        {isRestKept && (
          <>
            {' '}
            The rest of <Said words={writerFor(units).onTape(each.restMm)} /> goes to the leftovers.
          </>
        )}
      </p>
      <span className="saw-ticks">
        <button aria-label={`Re-cut: ${words}`} onClick={() => accept(each.count)}>
          {each.count === 1 ? 'It is re-cut' : `All ${each.count} are re-cut`}
        </button>
        {each.count > 1 && (
          <>
            <span className="saw-how" aria-hidden="true">
              or so many:
            </span>
            <CountField label={`So many are re-cut: ${words}`} shown="" most={each.count} onCount={accept} />
          </>
        )}
      </span>
      {refused !== undefined && <p role="alert">{refused}</p>}
    </li>
  )
}

function RecutPieces({ cut, ...props }: GroupProps) {
  if (cut.recut.length === 0) return null
  return (
    <>
      <h4>Can be re-cut</h4>
      <ul className="sawn-deeds">
        {cut.recut.map((each, index) => (
          <RecutItem key={`${keyOf(each)} ${index}`} each={each} {...props} />
        ))}
      </ul>
    </>
  )
}

function ScrapPieces({ cut, sawing, units, onDeed }: GroupProps) {
  const { onTape } = writerFor(units)
  const deed = (what: typeof dropPieces, piece: Scrap['piece']) => {
    onDeed()
    what(sawing, piece)
  }
  if (cut.scrap.length === 0) return null
  return (
    <>
      <h4>Of no use now</h4>
      <ul className="sawn-deeds">
        {cut.scrap.map((each) => {
          const piece = { ...each.piece, count: each.count }
          const name = `${piece.count} x ${onTape(piece.lengthMm)}`
          return (
            <li key={keyOf(each)}>
              <p>
                <Said words={name} /> ({marksWords(piece.marks)}): nothing that is still wanted comes of it.
              </p>
              {piece.lengthMm >= LEAST_KEPT_MM && (
                <button aria-label={`To the leftovers: ${name}`} onClick={() => deed(toLeftovers, piece)}>
                  To the leftovers
                </button>
              )}
              <button aria-label={`Off the list: ${name}`} onClick={() => deed(dropPieces, piece)}>
                Off the list
              </button>
            </li>
          )
        })}
      </ul>
    </>
  )
}

function StillToCut({ cut, units }: Pick<GroupProps, 'cut' | 'units'>) {
  const { onTape } = writerFor(units)
  const left = cut.lines.filter(({ toCut }) => toCut > 0)
  const isWaiting = cut.recut.length > 0
  if (left.length === 0)
    return (
      <p>
        {isWaiting
          ? 'Nothing more has to be cut of boards once what can be re-cut is. Until it is ticked as re-cut, the lists still buy boards for it.'
          : 'Nothing more has to be cut of boards.'}
      </p>
    )
  return (
    <>
      <h4>More to cut</h4>
      {isWaiting && (
        <p>Beside what can be re-cut. Until it is ticked as re-cut, the lists still buy boards for it too.</p>
      )}
      <ul className="sawn-more">
        {left.map(({ line, toCut }) => (
          <li key={`${line.lengthTicks} ${JSON.stringify(line.cut)}`}>
            <Said words={`${toCut} x ${onTape(fromTicks(line.lengthTicks))}`} /> {marksWords(line.marks)}
          </li>
        ))}
      </ul>
    </>
  )
}

/** Cut pieces held against the bay as it is now: still right, can be re-cut, of no use; and what more has to be cut. */
export default function SawnView() {
  const planner = usePlanner()
  const units = usePlannerState((state) => state.units)
  const { bench, cut, holesOf } = useSawBench()
  const box = useRef<HTMLDivElement>(null)
  const keepFocus = useFocusKept(box)
  const started = cut.filter(({ stock }) =>
    [...bench.cut, ...bench.sawn].some((each) => each.stock === stock),
  )
  return (
    <div className="sawn" ref={box} tabIndex={-1}>
      {started.length === 0 && (
        <p className="water-none">
          Nothing is ticked as cut yet. Tick boards or stops on the Saw list as they are sawn: cut pieces then
          stay as they are, and whatever becomes of the bay, this view says which of them still fit.
        </p>
      )}
      {started.map((each) => {
        const { stock } = each
        const sawing: Sawing = { planner, stock, lines: [], holesOf }
        const props = { cut: each, sawing, units, onDeed: keepFocus }
        return (
          <section key={stock} className="saw-part" aria-label={stockOf(stock).title}>
            <h3>{stockOf(stock).title}</h3>
            <div className="sawn-groups">
              <div className="saw-side">
                <RecutPieces {...props} />
                <ScrapPieces {...props} />
                <RightPieces {...props} />
              </div>
              <div className="saw-side">
                <StillToCut cut={each} units={units} />
                <SawnBoards
                  boards={bench.sawn.filter((board) => board.stock === stock)}
                  sawing={sawing}
                  units={units}
                  onUntick={keepFocus}
                />
              </div>
            </div>
          </section>
        )
      })}
    </div>
  )
}
