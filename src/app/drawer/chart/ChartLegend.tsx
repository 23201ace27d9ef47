import type { ChartData } from './chartData'
import { markAt } from './ChartMarks'

/** What each line and band of a chart is. A single line is named by the axis. */
export function ChartLegend({ data: { lines, bands = [], reachName } }: { readonly data: ChartData }) {
  if (lines.length + bands.length < 2) return null
  return (
    <ul className="chart-legend">
      {lines.map(({ name, dash, ink, marks }) => (
        <li key={name}>
          <svg width="34" height="12" aria-hidden="true" className={`chart-line chart-${ink} chart-${dash}`}>
            <path d="M1 6H33" />
            {marks && <path className="chart-mark" d={markAt(marks.shape, 17, 6)} />}
          </svg>
          {name}
        </li>
      ))}
      {reachName !== undefined && (
        <li>
          <svg width="20" height="12" aria-hidden="true" className="chart-water">
            <rect className="chart-reach" width="20" height="12" />
          </svg>
          {reachName}
        </li>
      )}
      {bands.map(({ name }) => (
        <li key={name}>
          <svg width="20" height="12" aria-hidden="true">
            <rect className="chart-band" width="20" height="12" />
          </svg>
          {name}
        </li>
      ))}
    </ul>
  )
}
