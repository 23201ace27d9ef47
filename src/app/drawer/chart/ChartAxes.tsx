import type { ChartData } from './chartData'
import type { Plot } from './plot'

interface FrameProps {
  readonly data: ChartData
  readonly plot: Plot
}

/** The bare number of a tick: its unit stands in the axis's name. */
const tickWords = (tick: number, decimals: number): string => {
  const written = tick.toFixed(decimals)
  return Number(written) === 0 ? written.replace('-', '') : written
}

function Across({ plot: { left, right, top, bottom, yTicks } }: { readonly plot: Plot }) {
  const toY = (tick: number) => bottom + ((tick - yTicks.from) / (yTicks.to - yTicks.from)) * (top - bottom)
  return yTicks.at.map((tick) => (
    <g key={tick}>
      <path className="chart-grid" d={`M${left} ${toY(tick)}H${right}`} />
      <text className="chart-number" x={left - 6} y={toY(tick) + 4} textAnchor="end">
        {tickWords(tick, yTicks.decimals)}
      </text>
    </g>
  ))
}

function Along({ plot: { left, right, bottom, xTicks } }: { readonly plot: Plot }) {
  const toX = (tick: number) => left + ((tick - xTicks.from) / (xTicks.to - xTicks.from)) * (right - left)
  return xTicks.at.map((tick) => (
    <g key={tick}>
      <path className="chart-tick" d={`M${toX(tick)} ${bottom}v5`} />
      <text className="chart-number" x={toX(tick)} y={bottom + 17} textAnchor="middle">
        {tickWords(tick, xTicks.decimals)}
      </text>
    </g>
  ))
}

/** Axes with round numbers; the reader's unit stands in each axis's name. */
export function ChartAxes({ data: { x, y }, plot }: FrameProps) {
  const { left, right, top, bottom } = plot
  return (
    <g className="chart-axes">
      <Across plot={plot} />
      <Along plot={plot} />
      <path className="chart-frame" d={`M${left} ${top}V${bottom}H${right}`} />
      <text className="chart-axis" x={2} y={12}>
        {y.name}, {y.measure.sign}
      </text>
      <text className="chart-axis" x={right} y={bottom + 33} textAnchor="end">
        {x.name}, {x.measure.sign}
      </text>
    </g>
  )
}

/** Bands, level lines and uprights: what the lines are read against. */
export function ChartGround({ data: { bands = [], levels = [], posts = [] }, plot }: FrameProps) {
  const { left, right, top, bottom, toX, toY } = plot
  return (
    <g className="chart-ground">
      {bands.map(({ name, from, to }) => (
        <rect
          key={name}
          className="chart-band"
          x={left}
          width={right - left}
          y={toY(Math.max(from, to))}
          height={Math.abs(toY(from) - toY(to))}
        />
      ))}
      {levels.map(({ name, y, dash, side }) => (
        <g key={name} className={`chart-line chart-ink chart-${dash}`}>
          <path d={`M${left} ${toY(y)}H${right}`} />
          <text
            className="chart-level-name"
            x={right - 2}
            y={toY(y) + (side === 'above' ? -4 : 13)}
            textAnchor="end"
          >
            {name}
          </text>
        </g>
      ))}
      {posts.map(({ name, x }) => (
        <path key={`${name} ${x}`} className="chart-post" d={`M${toX(x)} ${top}V${bottom}`} />
      ))}
    </g>
  )
}
