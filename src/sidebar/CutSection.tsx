import { memo } from 'react'
import type { CutLine, CutList } from '../model/cutList'
import type { Units } from '../units/length'
import { writerFor } from '../units/writer'
import { boardWords, boughtWords, boundWords, howCut, unitOfStock, wasteWords } from './cutWords'
import { Fold } from './Fold'
import { hasMark, memberName } from './memberNames'
import { Said } from './Said'

function Marks({ marks }: { readonly marks: readonly string[] }) {
  return (
    <ul className="cuts-marks">
      {marks.map((mark) => {
        const name = memberName(mark)
        return <li key={mark}>{hasMark(mark) ? <abbr title={name}>{mark}</abbr> : name}</li>
      })}
    </ul>
  )
}

interface StopTableProps {
  readonly list: CutList
  readonly units: Units
}

/** One row a stop setting, longest first: the saw hand sets each stop once. */
function StopTable({ list, units }: StopTableProps) {
  const { onTape } = writerFor(units)
  return (
    <table>
      <thead>
        <tr>
          <th scope="col" className="cuts-number">
            Stop
          </th>
          <th scope="col" className="cuts-number">
            Count
          </th>
          <th scope="col">Members and cut</th>
        </tr>
      </thead>
      <tbody>
        {list.lines.map((line) => {
          const how = howCut(line, list.stock, units)
          return (
            <tr key={`${line.lengthMm} ${how}`}>
              <th scope="row" className="cuts-number">
                {onTape(line.lengthMm)}
              </th>
              <td className="cuts-number">{line.count}</td>
              <td>
                <Marks marks={line.marks} />{' '}
                <span className="cuts-how">
                  <Said words={how} />
                </span>
              </td>
            </tr>
          )
        })}
      </tbody>
    </table>
  )
}

interface TooLongProps {
  readonly lines: readonly CutLine[]
  readonly stock: string
  readonly units: Units
}

function TooLong({ lines, stock, units }: TooLongProps) {
  const { onTape } = writerFor(units)
  return (
    <ul className="cuts-too-long">
      {lines.map(({ count, lengthMm, marks }) => (
        <li key={`${lengthMm} ${marks.join()}`}>
          {count} x <Said words={onTape(lengthMm)} /> ({marks.map(memberName).join(', ')}): longer than any{' '}
          {unitOfStock(stock)}.
        </li>
      ))}
    </ul>
  )
}

/** One material: what to buy, what to cut, and how each board is cut. A list that did not change is not drawn again. */
export const CutSection = memo(function CutSection({ list, units }: StopTableProps) {
  const { title, stock, boards, tooLong } = list
  return (
    <section className="cuts-material" aria-label={title}>
      <h2>{title}</h2>
      <p className="cuts-buy">
        <span>
          Buy{' '}
          <b>
            <Said words={boughtWords(list, units) || 'nothing'} />
          </b>
        </span>
        <small>{wasteWords(list)}</small>
      </p>
      {tooLong.length > 0 && <TooLong lines={tooLong} stock={stock} units={units} />}
      <StopTable list={list} units={units} />
      <Fold title={`How each ${unitOfStock(stock)} is cut`}>
        <p className="cuts-bound">
          <Said words={boundWords(list, units)} />
        </p>
        <ul className="cuts-boards">
          {boards.map((board) => {
            const said = boardWords(board, units)
            return (
              <li key={said}>
                <Said words={said} />
              </li>
            )
          })}
        </ul>
      </Fold>
    </section>
  )
})
