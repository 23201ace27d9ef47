import type { RefusedMend, RowMend } from '../../../evaluate/strengthMends/mends'
import { rackRowIn, type RowValues } from '../../../evaluate/strengthMends/rowTrial'
import type { RowStrength } from '../../../model/strength'
import { Said } from '../../../sidebar/Said'
import { StateMark } from '../../../sidebar/StateMark'
import { HeadRow } from '../chart/HeadRow'
import {
  changeWords,
  effectsOf,
  lostWords,
  mendLabel,
  type Reader,
  refusedWords,
  takesWords,
} from './mendsWords'
import type { MendsOfBay } from './useMends'

interface GivenProps {
  readonly found: MendsOfBay
  readonly reader: Reader
}

/** Undefined while the bay is being looked at anew. */
type OnMend = ((mend: RowMend) => void) | undefined

const keyOf = (values: RowValues): string => JSON.stringify(values)

function Changes({ found, reader, values }: GivenProps & { readonly values: RowValues }) {
  const row = rackRowIn(found.layout, found.mends.rows[0] ?? '')
  if (!row) return null
  return changeWords(row, values, reader).map((words) => (
    <span key={words} className="mends-change">
      <Said words={words} />
    </span>
  ))
}

/** What ailed, before and after, of the first of the rows: the others are built like it. */
function Effects({ found, reader, after }: GivenProps & { readonly after: RowStrength | undefined }) {
  const [before] = found.mends.now
  if (!before || !after) return null
  return (
    <ul className="mends-effects">
      {effectsOf(before, after, reader, found.layout.settings).map((effect) => (
        <li key={effect.what}>
          {effect.what}: <Said words={effect.before === undefined ? 'stays' : `${effect.before} to`} />{' '}
          <b>
            <Said words={effect.after} />
          </b>{' '}
          <StateMark word={effect.state} rank={effect.rank} />
        </li>
      ))}
    </ul>
  )
}

function Offered({ found, reader, mend, onMend }: GivenProps & { mend: RowMend; onMend: OnMend }) {
  const { values, after, takes, towersLost } = mend
  return (
    <tr>
      <th scope="row">
        <Changes found={found} reader={reader} values={values} />
      </th>
      <td>
        <Effects found={found} reader={reader} after={after[0]} />
      </td>
      <td>
        <b>
          <Said words={takesWords(takes, reader.currency)} />
        </b>
        {towersLost > 0 && <p>{lostWords(towersLost)}</p>}
      </td>
      <td>
        <button aria-label={mendLabel(mend, reader)} disabled={!onMend} onClick={() => onMend?.(mend)}>
          Mend
        </button>
      </td>
    </tr>
  )
}

interface OfferedTableProps extends GivenProps {
  readonly title: string
  readonly mends: readonly RowMend[]
  readonly onMend: OnMend
}

function OfferedTable({ title, mends, ...given }: OfferedTableProps) {
  return (
    <section className="mends-part">
      <h3>{title}</h3>
      <div className="chart-table mends-table" role="region" aria-label={title} tabIndex={0}>
        <table>
          <HeadRow columns={['Change', 'What it does', 'Costs', '']} />
          <tbody>
            {mends.map((mend) => (
              <Offered key={keyOf(mend.values)} mend={mend} {...given} />
            ))}
          </tbody>
        </table>
      </div>
    </section>
  )
}

function Refused({ found, reader, refused }: GivenProps & { readonly refused: readonly RefusedMend[] }) {
  return (
    <section className="mends-part">
      <h3>Would ease it, but not in this bay</h3>
      <ul className="mends-refused">
        {refused.map((each) => (
          <li key={keyOf(each.values)}>
            <b>
              <Changes found={found} reader={reader} values={each.values} />
            </b>
            <p>
              <Said words={refusedWords(each, reader)} />
            </p>
          </li>
        ))}
      </ul>
    </section>
  )
}

/** What mends all, what only eases, and what the bay does not allow. */
export function MendsFound({ found, reader, onMend }: GivenProps & { onMend: OnMend }) {
  const { mending, easing, refused } = found.mends
  return (
    <>
      {mending.length > 0 && (
        <OfferedTable title="Mends all, cheapest first" mends={mending} {...{ found, reader, onMend }} />
      )}
      {easing.length > 0 && (
        <OfferedTable title="Eases it, but not all" mends={easing} {...{ found, reader, onMend }} />
      )}
      {refused.length > 0 && <Refused found={found} reader={reader} refused={refused} />}
    </>
  )
}
