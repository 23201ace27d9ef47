import { memo } from 'react'
import type { CutLine, CutList } from '../model/cutList'
import type { Units } from '../units/length'
import { CutStanding } from './CutStanding'
import {
  besideWords,
  boardWords,
  boughtWords,
  costWords,
  howCut,
  isCoil,
  lengthWriter,
  ranOutWords,
  tooLongWords,
  unitOfStock,
  wasteWords,
} from '../sheets/cutWords'
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
  const length = lengthWriter(list.stock, units)
  return (
    <table>
      <thead>
        <tr>
          <th scope="col" className="cuts-number">
            {isCoil(list.stock) ? 'Length' : 'Stop'}
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
                {length(line.lengthMm)}
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

interface UnmadeProps {
  readonly lines: readonly CutLine[]
  /** Why no board makes them. */
  readonly why: string
  readonly stock: string
  readonly units: Units
}

function Unmade({ lines, why, stock, units }: UnmadeProps) {
  const length = lengthWriter(stock, units)
  if (lines.length === 0) return null
  return (
    <ul className="cuts-too-long">
      {lines.map(({ count, lengthMm, marks }) => (
        <li key={`${lengthMm} ${marks.join()}`}>
          {count} x <Said words={length(lengthMm)} /> ({marks.map(memberName).join(', ')}): {why}.
        </li>
      ))}
    </ul>
  )
}

interface CutSectionProps extends StopTableProps {
  readonly currency: string
}

/** What to buy, what it costs and what is wasted; then how good the plan is known to be. */
function Buy({ list, units, currency }: CutSectionProps) {
  return (
    <>
      <p className="cuts-buy">
        <span>
          Buy{' '}
          <b>
            <Said words={boughtWords(list, units) || 'nothing'} />
          </b>
        </span>
        <span className="cuts-cost">{costWords(list, currency)}</span>
      </p>
      <p className="cuts-beside">
        <Said words={[`${wasteWords(list)}.`, ...besideWords(list, units)].join(' ')} />
      </p>
      {list.boards.length > 0 && <CutStanding list={list} />}
    </>
  )
}

/** One material: what to buy, what to cut, and how each board is cut. A list that did not change is not drawn again. */
export const CutSection = memo(function CutSection({ list, units, currency }: CutSectionProps) {
  const { title, stock, boards, tooLong, ranOut } = list
  return (
    <section className="cuts-material" aria-label={title}>
      <h2>{title}</h2>
      <Buy list={list} units={units} currency={currency} />
      <Unmade lines={tooLong} stock={stock} why={tooLongWords(stock)} units={units} />
      <Unmade lines={ranOut} stock={stock} why={ranOutWords(stock)} units={units} />
      <StopTable list={list} units={units} />
      {boards.length > 0 && (
        <Fold title={`How each ${unitOfStock(stock)} is cut`}>
          <ul className="cuts-boards">
            {boards.map((board) => {
              const said = boardWords(board, stock, units)
              return (
                <li key={said}>
                  <Said words={said} />
                </li>
              )
            })}
          </ul>
        </Fold>
      )}
    </section>
  )
})
