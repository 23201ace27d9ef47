import type { ChartData, ChartLevel, ChartLine } from './chartData'
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

/** Within so much of an end of the plot a name stands, px. */
const NAME_PX = 120

/** Of the two ends of a level line, the one that the lines of the chart leave more room at. */
const freerEnd = (
  y: number,
  lines: readonly ChartLine[],
  { left, right, toX, toY }: Plot,
): 'start' | 'end' => {
  const points = lines.flatMap((line) => line.points)
  const room = (edge: number) =>
    points
      .filter(({ x }) => Math.abs(toX(x) - edge) < NAME_PX)
      .reduce((least, point) => Math.min(least, Math.abs(toY(point.y) - toY(y))), Infinity)
  return room(left) > room(right) ? 'start' : 'end'
}

interface LevelProps extends FrameProps {
  readonly level: ChartLevel
}

function LevelLine({ level: { name, y, dash, side }, data, plot }: LevelProps) {
  const { left, right, toY } = plot
  const end = freerEnd(y, data.lines, plot)
  return (
    <g className={`chart-line chart-ink chart-${dash}`}>
      <path d={`M${left} ${toY(y)}H${right}`} />
      <text
        className="chart-level-name"
        x={end === 'start' ? left + 4 : right - 2}
        y={toY(y) + (side === 'above' ? -4 : 13)}
        textAnchor={end}
      >
        {name}
      </text>
    </g>
  )
}

/** Bands, level lines and uprights: what the lines are read against. */
export function ChartGround({ data, plot }: FrameProps) {
  const { left, right, top, bottom, toX, toY } = plot
  const { bands = [], levels = [], posts = [] } = data
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
      {levels.map((level) => (
        <LevelLine key={level.name} level={level} data={data} plot={plot} />
      ))}
      {posts.map(({ name, x }) => (
        <path key={`${name} ${x}`} className="chart-post" d={`M${toX(x)} ${top}V${bottom}`} />
      ))}
    </g>
  )
}
