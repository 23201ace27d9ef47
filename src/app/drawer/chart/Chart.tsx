import { type KeyboardEvent, type PointerEvent, useId, useRef, useState } from 'react'
import './chart.css'
import { ChartAxes, ChartGround } from './ChartAxes'
import type { ChartData } from './chartData'
import { ChartLegend } from './ChartLegend'
import { FlagMark, LineMarks } from './ChartMarks'
import { ChartPosts } from './ChartPosts'
import { ChartTable } from './ChartTable'
import { nearestStop, steppedStop } from './cursor'
import { type Plot, plotOf } from './plot'
import { useWidth } from './useWidth'

const HEIGHT_PX = 190

interface DrawnProps {
  readonly data: ChartData
  readonly plot: Plot
  readonly width: number
  readonly height: number
  /** Where the read-out stands. */
  readonly cursorX: number | undefined
}

function Drawn({ data, plot, width, height, cursorX }: DrawnProps) {
  return (
    <svg width={width} height={height} aria-hidden="true">
      <ChartGround data={data} plot={plot} />
      <ChartAxes data={data} plot={plot} />
      {data.lines.map((line) => (
        <LineMarks key={line.name} line={line} plot={plot} />
      ))}
      <ChartPosts posts={data.posts ?? []} plot={plot} />
      {data.flags?.map((flag) => (
        <FlagMark key={flag.words} flag={flag} plot={plot} />
      ))}
      {cursorX !== undefined && (
        <path className="chart-cursor" d={`M${plot.toX(cursorX)} ${plot.top}V${plot.bottom}`} />
      )}
    </svg>
  )
}

interface ReadAlongProps {
  readonly data: ChartData
  readonly height: number
  readonly at: number | undefined
  readonly onAt: (at: number | undefined) => void
}

/** The drawing, read along by pointer or arrow keys: to a screen reader it is a slider that says what stands there. */
function ReadAlong({ data, height, at, onAt }: ReadAlongProps) {
  const room = useRef<HTMLDivElement>(null)
  const width = useWidth(room)
  const plot = plotOf(data, { width, height })
  const { stops } = data
  const point = ({ clientX, currentTarget }: PointerEvent) =>
    onAt(nearestStop(stops, clientX - currentTarget.getBoundingClientRect().left, plot.toX))
  const press = (event: KeyboardEvent) => {
    const next = steppedStop(event.key, at, stops.length)
    if (next === undefined) return
    event.preventDefault()
    onAt(next)
  }
  return (
    <div
      ref={room}
      className="chart-room"
      role="slider"
      tabIndex={0}
      aria-label={`${data.title}. ${data.says}`}
      aria-valuemin={0}
      aria-valuemax={Math.max(0, stops.length - 1)}
      aria-valuenow={at ?? 0}
      aria-valuetext={at === undefined ? 'Arrow keys read along it' : stops[at]?.words}
      onKeyDown={press}
      onPointerMove={point}
      onPointerDown={point}
      onPointerLeave={() => onAt(undefined)}
    >
      <Drawn data={data} plot={plot} width={width} height={height} cursorX={stops[at ?? -1]?.x} />
    </div>
  )
}

interface ChartProps {
  readonly data: ChartData
  /** px */
  readonly height?: number
}

/** A chart with its read-out, and the same numbers as a table at one press. */
export function Chart({ data, height = HEIGHT_PX }: ChartProps) {
  const [isTable, setIsTable] = useState(false)
  const [at, setAt] = useState<number>()
  const id = useId()
  const words = data.stops[at ?? -1]?.words
  return (
    <figure className="chart" aria-labelledby={id}>
      <figcaption>
        <h3 id={id}>{data.title}</h3>
        <button aria-pressed={isTable} aria-describedby={id} onClick={() => setIsTable(!isTable)}>
          {isTable ? 'Show as chart' : 'Show as table'}
        </button>
      </figcaption>
      {isTable ? (
        <ChartTable title={data.title} table={data.table} />
      ) : (
        <>
          <ChartLegend data={data} />
          <ReadAlong data={data} height={height} at={at} onAt={setAt} />
          <p className="chart-read">{words ?? 'Point at it, or use the arrow keys, to read it.'}</p>
        </>
      )}
    </figure>
  )
}
