import type { ChartRows } from './chartData'
import { HeadRow } from './HeadRow'

/** The numbers of a chart in rows and columns. */
export function ChartTable({ title, table }: { readonly title: string; readonly table: ChartRows }) {
  return (
    // It scrolls, so it takes the keys that scroll it.
    <div className="chart-table" role="region" aria-label={`${title}, as a table`} tabIndex={0}>
      <table>
        <HeadRow columns={table.columns} />
        <tbody>
          {table.rows.map(([first, ...cells], row) => (
            <tr key={row}>
              <th scope="row">{first}</th>
              {cells.map((cell, column) => (
                <td key={column}>{cell}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  )
}
