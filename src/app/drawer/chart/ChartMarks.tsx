import type { ChartFlag, ChartLine, ChartPoint, MarkShape } from './chartData'
import type { Plot } from './plot'

const MARK_PX = 3.4

/** Round a point, px. */
const markPath: Readonly<Record<MarkShape, (x: number, y: number, r: number) => string>> = {
  ring: (x, y, r) => `M${x - r} ${y}a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0z`,
  square: (x, y, r) => `M${x - r} ${y - r}h${2 * r}v${2 * r}h${-2 * r}z`,
  triangle: (x, y, r) => `M${x} ${y - 1.2 * r}l${1.2 * r} ${2.1 * r}h${-2.4 * r}z`,
  diamond: (x, y, r) =>
    `M${x} ${y - 1.3 * r}l${1.3 * r} ${1.3 * r}l${-1.3 * r} ${1.3 * r}l${-1.3 * r} ${-1.3 * r}z`,
  cross: (x, y, r) => `M${x - r} ${y - r}l${2 * r} ${2 * r}M${x + r} ${y - r}l${-2 * r} ${2 * r}`,
}

/** The shape of a mark at a place, px, as an SVG path. */
export const markAt = (shape: MarkShape, x: number, y: number, r = MARK_PX): string =>
  markPath[shape](x, y, r)

const pathOf = (points: readonly ChartPoint[], { toX, toY }: Plot): string =>
  points.map(({ x, y }, i) => `${i === 0 ? 'M' : 'L'}${toX(x).toFixed(1)} ${toY(y).toFixed(1)}`).join('')

interface LineProps {
  readonly line: ChartLine
  readonly plot: Plot
}

/** A line of a chart with its marks. */
export function LineMarks({ line: { points, marks, reach, dash, ink }, plot }: LineProps) {
  return (
    <g className={`chart-line chart-${ink} chart-${dash}`}>
      {reach && (
        <path className="chart-reach" d={`${pathOf([...reach.low, ...reach.high.toReversed()], plot)}z`} />
      )}
      <path d={pathOf(points, plot)} />
      {marks && (
        <path
          className="chart-mark"
          d={marks.points.map(({ x, y }) => markAt(marks.shape, plot.toX(x), plot.toY(y))).join('')}
        />
      )}
    </g>
  )
}

/** Words need about as much to each letter, px. */
const LETTER_PX = 6.2
const FLAG_PX = 5

/** Where words start: left of a point that they stand above, right of one below, and always within the plot. */
const startPx = ({ words, side }: ChartFlag, x: number, { left, right }: Plot): number => {
  const width = words.length * LETTER_PX
  const wanted = side === 'above' ? x - width - 2 : x + 4
  return Math.max(left + 3, Math.min(wanted, right - width))
}

/** A point with words beside it. */
export function FlagMark({ flag, plot }: { readonly flag: ChartFlag; readonly plot: Plot }) {
  const x = plot.toX(flag.x)
  const y = plot.toY(flag.y)
  return (
    <g className={`chart-flag chart-${flag.ink}`}>
      <circle cx={x} cy={y} r={FLAG_PX} />
      <text x={startPx(flag, x, plot)} y={flag.side === 'above' ? y - 9 : y + 18}>
        {flag.words}
      </text>
    </g>
  )
}
