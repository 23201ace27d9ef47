import { useEffect, useMemo, useRef, useState } from 'react'
import { REACH_MM } from '../../../evaluate/shave/nearMisses'
import {
  shavesOf,
  type AllowedShave,
  type BlockedShave,
  type LeastCost,
  type Shaves,
} from '../../../evaluate/shave/shaves'
import type { Evaluation } from '../../../evaluate/evaluation'
import type { Layout } from '../../../layout/schema'
import { setFields } from '../../../layout/setFields'
import { commitEdited } from '../../../sidebar/commitEdited'
import { Said } from '../../../sidebar/Said'
import { useWords } from '../../../sidebar/words'
import { usePlanner, usePlannerState } from '../../../store/react'
import { useCutLists } from '../../../store/useCutLists'
import { HeadRow } from '../chart/HeadRow'
import type { Steps } from '../steps'
import { useAnswer } from '../useAnswer'
import './shave.css'
import {
  blockedWords,
  boughtWords,
  howWords,
  offWords,
  pieceWords,
  type Reader,
  savedWords,
  shaveLabel,
  toleranceWords,
  yieldWords,
} from './shaveWords'

const useReader = (parts: Layout['parts']): Reader => {
  const words = useWords(parts)
  const [units, currency] = usePlannerState((state) => [
    state.units,
    state.evaluation.layout.counter.currency,
  ])
  return { units, words, currency }
}

interface GivenProps {
  readonly layout: Layout
  readonly reader: Reader
}

interface AllowedProps extends GivenProps {
  readonly shave: AllowedShave
  /** Undefined while the bay is being looked at anew. */
  readonly onShave: ((shave: AllowedShave) => void) | undefined
}

function Allowed({ shave, layout, reader, onShave }: AllowedProps) {
  const { near, saved } = shave
  return (
    <tr>
      <th scope="row">
        <Said words={pieceWords(near, reader)} />
      </th>
      <td>
        <b>
          <Said words={offWords(near, reader)} />
        </b>
        <p>
          <Said words={yieldWords(near, reader)} />
        </p>
      </td>
      <td>
        <Said words={howWords(layout, shave, reader)} />
      </td>
      <td>
        <b>
          <Said words={savedWords(saved, near.members.stock, reader)} />
        </b>
        <p>
          <Said words={boughtWords(shave, reader)} />
        </p>
      </td>
      <td>
        <button
          aria-label={shaveLabel(shave, reader)}
          disabled={onShave === undefined}
          onClick={() => onShave?.(shave)}
        >
          Shave
        </button>
      </td>
    </tr>
  )
}

function AllowedTable(props: GivenProps & Pick<AllowedProps, 'onShave'> & Pick<Shaves, 'allowed'>) {
  const { allowed, layout, reader, onShave } = props
  return (
    <div className="chart-table shave-table" role="region" aria-label="Shaves that save" tabIndex={0}>
      <table>
        <HeadRow columns={['Piece', 'Take off', 'By', 'Saves', '']} />
        <tbody>
          {allowed.map((shave) => (
            <Allowed
              key={`${pieceWords(shave.near, reader)} ${shave.near.targetTicks} ${shave.field}`}
              shave={shave}
              layout={layout}
              reader={reader}
              onShave={onShave}
            />
          ))}
        </tbody>
      </table>
    </div>
  )
}

function Blocked({ blocked, layout, reader }: GivenProps & { readonly blocked: readonly BlockedShave[] }) {
  return (
    <section className="shave-part">
      <h3>Near misses that stay</h3>
      <ul>
        {blocked.map((each) => (
          <li key={`${pieceWords(each.near, reader)} ${each.near.targetTicks}`}>
            <b>
              <Said words={`${pieceWords(each.near, reader)}: ${offWords(each.near, reader)}`} />
            </b>{' '}
            <Said words={`(${yieldWords(each.near, reader)}).`} />
            {blockedWords(layout, each, reader).map((words) => (
              <p key={words}>
                <Said words={words} />
              </p>
            ))}
          </li>
        ))}
      </ul>
    </section>
  )
}

function Found({
  found,
  layout,
  reader,
  onShave,
}: GivenProps & Pick<AllowedProps, 'onShave'> & { readonly found: Shaves }) {
  const { allowed, blocked, tolerances } = found
  return (
    <>
      {allowed.length > 0 ? (
        <AllowedTable allowed={allowed} layout={layout} reader={reader} onShave={onShave} />
      ) : (
        <p>
          {blocked.length > 0
            ? 'Lengths of this bay are near one more a board, but none can be shaved.'
            : 'No length of this bay is near one more a board: there is nothing to shave.'}
        </p>
      )}
      {blocked.length > 0 && <Blocked blocked={blocked} layout={layout} reader={reader} />}
      {tolerances.length > 0 && (
        <section className="shave-part">
          <h3>Shaved already, within tolerance</h3>
          <ul>
            {tolerances.map((save) => (
              <li key={`${save.stock} ${save.lengthTicks}`}>
                <Said words={toleranceWords(save, reader)} />
              </li>
            ))}
          </ul>
        </section>
      )}
    </>
  )
}

/** What is found, and the layout that it was found in: while a new one is looked at, the last is told of its own. */
function* askOf(evaluation: Evaluation, leastCost: LeastCost): Steps<{ found: Shaves; layout: Layout }> {
  return { found: yield* shavesOf(evaluation, leastCost), layout: evaluation.layout }
}

/** The cheapest plans that are known; the very same function until a cheaper one is. */
const useLeastCost = (): LeastCost => {
  const costs = useCutLists()
    .map(({ key, cost }) => `${key} ${cost}`)
    .join('\n')
  return useMemo(() => {
    const known = new Map(
      costs.split('\n').map((line) => {
        const at = line.lastIndexOf(' ')
        return [line.slice(0, at), Number(line.slice(at + 1))] as const
      }),
    )
    return ({ key, cost }) => known.get(key) ?? cost
  }, [costs])
}

/** Every length that is a little over one more a board: what it would save to take that off, and one press to do it. */
export default function ShaveView() {
  const planner = usePlanner()
  const evaluation = usePlannerState((state) => state.evaluation)
  const leastCost = useLeastCost()
  const reader = useReader(evaluation.layout.parts)
  const [done, setDone] = useState({ words: '' })
  const says = useRef<HTMLParagraphElement>(null)
  const { answer, isCurrent } = useAnswer('bay', [evaluation, leastCost], () => askOf(evaluation, leastCost))
  const shave = (each: AllowedShave) => {
    const label = shaveLabel(each, reader)
    const refused = commitEdited(planner, label, (layout) => setFields(layout, each.changes))
    setDone({ words: refused ?? `${label}: done. Undo takes it back.` })
  }
  useEffect(() => {
    // The button goes with its line, and the focus must not.
    if (done.words !== '') says.current?.focus()
  }, [done])
  return (
    <div className={isCurrent ? 'water-view shave' : 'water-view shave water-stale'} aria-busy={!isCurrent}>
      <p ref={says} tabIndex={-1} role="status">
        <Said words={done.words} />
      </p>
      <p>
        A length that is up to {reader.words.onTape(REACH_MM)} too long for a board to give one more of it is
        tried shorter: the bay is worked out, cut and checked again, and a shave is offered only where that
        saves and no warning is new or worse. Savings are told between first plans; the Cuts tab goes on to
        look for a cheaper one. Prices are those of the price book: placeholders, until you put your own.
      </p>
      {answer ? (
        <Found
          found={answer.found}
          layout={answer.layout}
          reader={reader}
          onShave={isCurrent ? shave : undefined}
        />
      ) : (
        <p className="water-none">Holding every length against the boards …</p>
      )}
    </div>
  )
}
