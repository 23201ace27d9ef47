import { memo, useRef, useState } from 'react'
import type { Board, CutList } from '../../../model/cutList'
import { isCoil } from '../../../sheets/cutWords'
import { Said } from '../../../sidebar/Said'
import type { Units } from '../../../units/length'
import { useSize } from '../chart/useSize'
import { BoardDrawing } from './BoardDrawing'
import { boardSaid } from '../../../sheets/saw/boardSaid'
import { CountField } from './CountField'
import { tickBoards, type Sawing } from './sawDeeds'
import { boardName } from '../../../sheets/saw/sawWords'

interface BoardProps {
  readonly board: Board
  readonly list: CutList
  readonly sawing: Sawing
  readonly units: Units
  readonly longestMm: number
  readonly widthPx: number
  /** Called before a tick, which takes the board out of the list. */
  readonly onTick: () => void
}

const tickWords = (count: number, stock: string): string => {
  const done = isCoil(stock) ? 'cut' : 'sawn'
  return count === 1 ? `${done.charAt(0).toUpperCase()}${done.slice(1)}` : `All ${count} ${done}`
}

function Ticks({
  board,
  name,
  sawing,
  onTick,
}: Pick<BoardProps, 'board' | 'sawing' | 'onTick'> & { readonly name: string }) {
  const { count } = board
  const [refused, setRefused] = useState<string>()
  const tick = (sawn: number): string | undefined => {
    if (sawn === 0) return undefined
    onTick()
    const sentence = tickBoards(sawing, board, sawn)
    setRefused(sentence)
    return sentence
  }
  return (
    <div className="saw-ticks">
      <label className="saw-tick">
        <input type="checkbox" checked={false} onChange={() => tick(count)} />
        {tickWords(count, sawing.stock)}
        <span className="only-heard">: {name}</span>
      </label>
      {count > 1 && (
        <>
          <button aria-label={`One more sawn: ${name}`} onClick={() => tick(1)}>
            One more
          </button>
          <span className="saw-how" aria-hidden="true">
            or so many:
          </span>
          <CountField label={`So many sawn: ${name}`} shown="" most={count} onCount={tick} />
        </>
      )}
      {refused !== undefined && <p role="alert">{refused}</p>}
    </div>
  )
}

const BoardItem = memo(function BoardItem(props: BoardProps) {
  const { board, list, sawing, units, onTick, ...picture } = props
  const said = boardSaid(board, list, units)
  const name = `${boardName(board, list.stock, units)}: ${said}`
  return (
    <li className="saw-board">
      <p className="saw-board-said">
        <b>{boardName(board, list.stock, units)}:</b> <Said words={said} />
      </p>
      <BoardDrawing board={board} saw={list.problem.saw} units={units} stock={list.stock} {...picture} />
      <Ticks board={board} name={name} sawing={sawing} onTick={onTick} />
    </li>
  )
})

const patternOf = ({ stockMm, isLeftover, pieces }: Board): string =>
  JSON.stringify([stockMm, isLeftover, pieces.map(({ lengthMm, count }) => [lengthMm, count])])

interface BoardListProps extends Pick<BoardProps, 'list' | 'sawing' | 'units' | 'onTick'> {
  readonly boards: readonly Board[]
}

/** Each different board drawn to scale, with the ticks of how many are sawn. */
export function BoardList({ boards, list, sawing, units, onTick }: BoardListProps) {
  const box = useRef<HTMLUListElement>(null)
  const { width } = useSize(box)
  const longestMm = Math.max(...boards.map(({ measuredMm }) => measuredMm), 1)
  return (
    <ul className="saw-boards" ref={box} aria-label={`Boards to saw, ${list.title}`}>
      {boards.map((board) => (
        <BoardItem
          key={patternOf(board)}
          {...{ board, list, sawing, units, longestMm }}
          widthPx={width}
          onTick={onTick}
        />
      ))}
    </ul>
  )
}
