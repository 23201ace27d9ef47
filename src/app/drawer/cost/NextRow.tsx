import { useState } from 'react'
import type { Evaluation } from '../../../evaluate/evaluation'
import { nextRow, rowLike } from '../../../evaluate/shop/nextRow'
import type { PartId } from '../../../model/ids'
import { nameOf } from '../../../store/partNames'
import { usePlannerState } from '../../../store/react'
import { inOne } from '../steps'
import { useAnswer } from '../useAnswer'
import { nextRowAssumed, nextRowEach, nextRowWords } from './costWords'

interface AnswerProps {
  readonly settled: Evaluation
  readonly like: PartId
  readonly name: string
}

function Answer({ settled, like, name }: AnswerProps) {
  const { layout } = settled
  const { answer } = useAnswer(`next ${like}`, [settled], () =>
    inOne(() => ({ row: nextRow(layout, settled, like) })),
  )
  if (!answer) return <p className="water-none">Counting one row more …</p>
  const { row } = answer
  if (!row) return <p>The bay holds no more parts.</p>
  const { currency } = layout.counter
  return (
    <>
      <p className="cost-next">
        {nextRowWords(row, name, currency)} Bought, that is {nextRowEach(row, currency)} a tower.
      </p>
      <p className="water-note">{nextRowAssumed(row, name)}</p>
    </>
  )
}

/** What one more row costs: like the one that is chosen, or the longest. Found when it is asked for. */
export function NextRow() {
  const [settled, selection] = usePlannerState((state) => [state.settled, state.selection])
  const [asked, setAsked] = useState<{ readonly of: Evaluation; readonly like: PartId }>()
  const like = rowLike(settled, selection)
  const part = settled.layout.parts.find(({ id }) => id === like)
  if (like === undefined || !part) return null
  const name = nameOf(part)
  return (
    <section className="cost-part">
      <h3>The next row</h3>
      {asked?.of === settled && asked.like === like ? (
        <Answer settled={settled} like={like} name={name} />
      ) : (
        <p>
          <button onClick={() => setAsked({ of: settled, like })}>
            What does one more row like {name} cost?
          </button>
        </p>
      )}
    </section>
  )
}
