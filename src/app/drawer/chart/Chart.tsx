import { type KeyboardEvent, type PointerEvent, useId, useRef, useState } from 'react'
import './chart.css'
import { ChartAxes, ChartGround } from './ChartAxes'
import type { ChartData } from './chartData'
import { ChartLegend } from './ChartLegend'
import { FlagMark, LineMarks } from './ChartMarks'
import { ChartPosts } from './ChartPosts'
import { ChartTable } from './ChartTable'
import { nearestStop, steppedStop } from './cursor'
import { type Plot, plotOf, type PlotSize } from './plot'
import { useSize } from './useSize'

interface DrawnProps {
  readonly data: ChartData
  readonly plot: Plot
  readonly size: PlotSize
  /** Where the read-out stands. */
  readonly cursorX: number | undefined
}

function Drawn({ data, plot, size, cursorX }: DrawnProps) {
  return (
    <svg width={size.width} height={size.height} aria-hidden="true">
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
  readonly at: number | undefined
  readonly onAt: (at: number | undefined) => void
}

/** The drawing, read along by pointer or arrow keys: to a screen reader it is a slider that says what stands there. */
function ReadAlong({ data, at, onAt }: ReadAlongProps) {
  const room = useRef<HTMLDivElement>(null)
  const size = useSize(room)
  const plot = plotOf(data, size)
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
      <Drawn data={data} plot={plot} size={size} cursorX={stops[at ?? -1]?.x} />
    </div>
  )
}

interface ChartProps {
  readonly data: ChartData
  /** A second chart under a taller one. */
  readonly isLow?: boolean
}

/** A chart with its read-out, and the same numbers as a table at one press. */
export function Chart({ data, isLow = false }: ChartProps) {
  const [isTable, setIsTable] = useState(false)
  const [at, setAt] = useState<number>()
  const id = useId()
  const words = data.stops[at ?? -1]?.words
  return (
    <figure className={isLow ? 'chart chart-low' : 'chart'} aria-labelledby={id}>
      <figcaption>
        <button aria-pressed={isTable} aria-describedby={id} onClick={() => setIsTable(!isTable)}>
          {isTable ? 'Show as chart' : 'Show as table'}
        </button>
        <h3 id={id}>{data.title}</h3>
        {!isTable && <ChartLegend data={data} />}
      </figcaption>
      {isTable ? (
        <ChartTable title={data.title} table={data.table} />
      ) : (
        <>
          <ReadAlong data={data} at={at} onAt={setAt} />
          <p className="chart-read">{words ?? 'Point at it, or use the arrow keys, to read it.'}</p>
        </>
      )}
    </figure>
  )
}
