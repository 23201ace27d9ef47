import { useState } from 'react'
import type { SawnBoard } from '../../../layout/bench'
import { isCoil, lengthWriter } from '../../../sheets/cutWords'
import { Said } from '../../../sidebar/Said'
import type { Units } from '../../../units/length'
import { keepOffcutsOf, untickBoards, type Sawing } from './sawDeeds'
import { boardName, piecesWords } from '../../../sheets/saw/sawWords'

interface SawnBoardProps {
  readonly board: SawnBoard
  readonly sawing: Sawing
  readonly units: Units
}

function OffcutDeed({
  board,
  sawing,
  units,
  name,
  onRefused,
}: SawnBoardProps & { readonly name: string; readonly onRefused: (sentence: string | undefined) => void }) {
  const { offcutMm, count, isOffcutKept = false } = board
  if (offcutMm === undefined) return null
  const words = `${count} x ${lengthWriter(board.stock, units)(offcutMm)}`
  if (isOffcutKept) return <span className="saw-how">Offcuts ({words}) are among the leftovers.</span>
  return (
    <button
      aria-label={`Keep the offcuts, ${words}: ${name}`}
      onClick={() => onRefused(keepOffcutsOf(sawing, board))}
    >
      {isCoil(board.stock) ? `${words} left on the coil` : `${words} offcut`} to the leftovers
    </button>
  )
}

function SawnItem(props: SawnBoardProps & { readonly onUntick: () => void }) {
  const { board, sawing, units, onUntick } = props
  const [refused, setRefused] = useState<string>()
  const { count, pieces } = board
  const name = `${boardName({ ...board, isLeftover: false }, board.stock, units)}${
    pieces
      ? `: ${piecesWords(
          pieces.map((piece) => ({ ...piece, marks: [] })),
          board.stock,
          units,
        )}`
      : ''
  }`
  const back = (boards: number) => {
    onUntick()
    setRefused(untickBoards(sawing, board, boards))
  }
  return (
    <li className="saw-ticks">
      <label className="saw-tick">
        <input type="checkbox" checked onChange={() => back(count)} />
        <span>
          <span className="only-heard">Sawn: </span>
          <Said words={name} />
        </span>
      </label>
      {count > 1 && (
        <button aria-label={`Take one back: ${name}`} onClick={() => back(1)}>
          Take one back
        </button>
      )}
      <OffcutDeed {...props} name={name} onRefused={setRefused} />
      {refused !== undefined && <p role="alert">{refused}</p>}
    </li>
  )
}

interface SawnBoardsProps extends Omit<SawnBoardProps, 'board'> {
  readonly boards: readonly SawnBoard[]
  /** Called before a tick is taken off, which may take its board out of the list. */
  readonly onUntick: () => void
}

/** Boards that are ticked; a tick that was a mistake is taken off again. */
export function SawnBoards({ boards, ...props }: SawnBoardsProps) {
  if (boards.length === 0) return null
  return (
    <section className="saw-part" aria-label="Boards sawn">
      <h3>{isCoil(props.sawing.stock) ? 'Cut' : 'Sawn'}</h3>
      <ul className="saw-sawn">
        {boards.map((board) => (
          <SawnItem key={JSON.stringify({ ...board, count: 0 })} board={board} {...props} />
        ))}
      </ul>
    </section>
  )
}
