import type { Axis, ChartData } from './chartData'
import { niceTicks, type Ticks } from './niceTicks'

export interface PlotSize {
  readonly width: number
  readonly height: number
}

/** Room round the plot, px: numbers at the left, numbers and the axis's name below, words above. */
const MARGIN = { left: 46, right: 14, top: 22, bottom: 38 }

/** A tick needs as much of the axis, px, so that its number stands clear of the next. */
const TICK_PX = { x: 64, y: 30 }

/** Where values come to lie on the screen. */
export interface Plot {
  readonly left: number
  readonly right: number
  readonly top: number
  readonly bottom: number
  readonly xTicks: Ticks
  readonly yTicks: Ticks
  /** Of a value in the program's own unit, px. */
  readonly toX: (value: number) => number
  readonly toY: (value: number) => number
}

const finite = (values: readonly number[]): readonly number[] => values.filter(Number.isFinite)

const ticksOf = (
  { measure, holds = [] }: Axis,
  drawn: readonly number[],
  lengthPx: number,
  tickPx: number,
) => {
  const values = finite([...holds, ...drawn]).map(measure.toReader)
  const low = values.reduce((a, b) => Math.min(a, b), Infinity)
  const high = values.reduce((a, b) => Math.max(a, b), -Infinity)
  const [from, to] = values.length > 0 ? [low, high] : [0, 1]
  return niceTicks(from, to, Math.max(2, Math.floor(lengthPx / tickPx)))
}

const drawnPoints = ({ lines, flags = [] }: ChartData) => [
  ...lines.flatMap(({ points, marks, reach }) => [
    ...points,
    ...(marks?.points ?? []),
    ...(reach ? [...reach.low, ...reach.high] : []),
  ]),
  ...flags,
]

const heightsOf = ({ bands = [], levels = [] }: ChartData): readonly number[] => [
  ...bands.flatMap(({ from, to }) => [from, to]),
  ...levels.map(({ y }) => y),
]

const scale =
  ({ measure }: Axis, ticks: Ticks, fromPx: number, toPx: number) =>
  (value: number): number =>
    fromPx + ((measure.toReader(value) - ticks.from) / (ticks.to - ticks.from)) * (toPx - fromPx)

/** The plot of a chart in so much room, px: both axes hold all that is drawn and end on round numbers. */
export const plotOf = (data: ChartData, { width, height }: PlotSize): Plot => {
  const points = drawnPoints(data)
  const left = MARGIN.left
  const right = Math.max(left + 40, width - MARGIN.right)
  const top = MARGIN.top
  const bottom = Math.max(top + 40, height - MARGIN.bottom)
  const posts = (data.posts ?? []).map(({ x }) => x)
  const xs = [...points.map(({ x }) => x), ...posts]
  const ys = [...points.map(({ y }) => y), ...heightsOf(data)]
  const xTicks = ticksOf(data.x, xs, right - left, TICK_PX.x)
  const yTicks = ticksOf(data.y, ys, bottom - top, TICK_PX.y)
  return {
    left,
    right,
    top,
    bottom,
    xTicks,
    yTicks,
    toX: scale(data.x, xTicks, left, right),
    toY: scale(data.y, yTicks, bottom, top),
  }
}
