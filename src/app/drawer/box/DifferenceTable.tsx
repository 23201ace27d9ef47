import type { Table } from '../../../model/table'
import { HeadRow } from '../chart/HeadRow'

/** More rows than this are counted below, so that a long list can be read at all. */
const MOST_ROWS = 60

/** A table of words as a paper has it, on the screen. */
export function DifferenceTable({ table: { title, columns, rows } }: { readonly table: Table }) {
  const more = rows.length - MOST_ROWS
  return (
    <section className="box-difference">
      <h3>{title}</h3>
      <div className="chart-table" role="region" aria-label={title} tabIndex={0}>
        <table>
          <HeadRow columns={columns.map((column) => column.title)} />
          <tbody>
            {rows.slice(0, MOST_ROWS).map(({ key, cells }) => {
              const [first, ...others] = cells
              return (
                <tr key={key}>
                  <th scope="row">{first?.text}</th>
                  {others.map(({ text }, index) => (
                    <td key={index}>{text}</td>
                  ))}
                </tr>
              )
            })}
          </tbody>
        </table>
      </div>
      {more > 0 && <p className="water-note">and {more} more, which the change note and the report have.</p>}
    </section>
  )
}
