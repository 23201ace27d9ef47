import { type KeyboardEvent, type PointerEvent, useRef, useState } from 'react'
import type { Settings } from '../../../../layout/settings'
import type { RailLine } from '../../../../model/strength'
import type { Writer } from '../../../../units/writer'
import { nearestStop, steppedStop } from '../../chart/cursor'
import type { Measure } from '../../chart/measures'
import { useSize } from '../../chart/useSize'
import { shareUsed } from '../screenWords'
import { strengthRank } from '../shownRack'
import { alongTicks, levels, type RailPicture, railPicture } from './railPicture'
import { railStops } from './railStops'
import { isBent, lifts, type NamedSpan } from './railWords'

const HEIGHT_PX = 250

/** A label of a span, or of what a riser carries, has no room in less, px. */
const SPAN_LABEL_PX = 44
const SPAN_SHAPE_PX = 12
const REACTION_LABEL_PX = 48

/** Half of the widest number along the row, px: `100 ft`. */
const LABEL_HALF_PX = 22

/** A moment under this share of the greatest is not told. */
const LEAST_SHARE = 0.05

interface DrawnProps {
  readonly line: RailLine
  readonly picture: RailPicture
  readonly settings: Settings
  readonly write: Writer
}

/** The state of a span as a shape: a ring is well, a triangle is to be looked at, a square must be mended. */
function SpanShape({ rank, x, y }: { readonly rank: number; readonly x: number; readonly y: number }) {
  if (rank === 0) return <circle className="rail-well" cx={x} cy={y} r="3.6" />
  if (rank === 1) return <path className="rail-watch" d={`M${x} ${y - 4.6}l4.6 8.2h-9.2z`} />
  return <rect className="rail-bad" x={x - 4} y={y - 4} width="8" height="8" />
}

function Spans({ picture, settings }: Pick<DrawnProps, 'picture' | 'settings'>) {
  return picture.spans.map(({ name, span, x, widthPx }) => {
    const hasWords = widthPx >= SPAN_LABEL_PX && span.used !== Infinity
    return (
      <g key={`${name}-${span.fromU}`}>
        {(widthPx >= SPAN_SHAPE_PX || span.state !== 'Within') && (
          <SpanShape rank={strengthRank(span.state)} x={hasWords ? x - 16 : x} y={levels.used - 4} />
        )}
        {hasWords && (
          <text className="rail-number" x={x - 9} y={levels.used}>
            {shareUsed(span.used)}
          </text>
        )}
        {isBent(span, settings) && (
          <path
            className="rail-bent"
            d={`M${picture.xOf(span.fromU)} ${levels.rail}L${x} ${levels.rail + 24}L${picture.xOf(span.toU)} ${levels.rail}`}
          />
        )}
      </g>
    )
  })
}

/** Every hanger bar as an arrow, as long as what it hangs on the rail. */
function Hangers({ line: { hangers }, picture: { xOf } }: DrawnProps) {
  const most = Math.max(1e-9, ...hangers.map(({ fullN }) => fullN))
  return hangers.map(({ u, fullN }) => {
    const long = 6 + (levels.rail - levels.arrows - 12) * (fullN / most)
    const tip = levels.rail - 4
    return <path key={u} className="rail-arrow" d={`M${xOf(u)} ${tip - long}V${tip}m-3 -5l3 5l3 -5`} />
  })
}

/** The places of a row of labels, ascending, that have so much room from the one before that is told. */
const spreadOut = (places: readonly number[], leastPx: number): ReadonlySet<number> => {
  const told = new Set<number>()
  let last = -Infinity
  for (const x of places)
    if (x - last >= leastPx) {
      told.add(x)
      last = x
    }
  return told
}

/** Risers under the rail, what each carries, and where the rail lifts. */
function Risers({ line: { reactions }, picture: { xOf }, write }: DrawnProps) {
  const labelled = spreadOut(
    reactions.map(({ u }) => xOf(u)),
    REACTION_LABEL_PX,
  )
  return reactions.map((reaction) => {
    const x = xOf(reaction.u)
    const hasRoom = labelled.has(x)
    return (
      <g key={reaction.u}>
        <path
          className="rail-riser"
          d={`M${x} ${levels.rail + 3}V${levels.feet}M${x - 6} ${levels.feet}h12`}
        />
        {lifts(reaction) && (
          <path className="rail-lift" d={`M${x + 7} ${levels.rail + 22}v-14m-4 6l4 -6l4 6`} />
        )}
        {hasRoom && (
          <text className="rail-number" x={x} y={levels.reactions} textAnchor="middle">
            {write.force(reaction.fullN)}
          </text>
        )}
      </g>
    )
  })
}

function Rail({ line, picture }: DrawnProps) {
  const { xOf } = picture
  return (
    <>
      {line.sticks.map(({ fromU, toU, stock }) => (
        <path
          key={`${stock}-${fromU}`}
          className={stock === 'conduit-3/4' ? 'rail-stick' : 'rail-stick rail-stick-big'}
          d={`M${xOf(fromU)} ${levels.rail}H${xOf(toU)}`}
        />
      ))}
      {picture.sag.map((d) => (
        <path key={d} className="rail-sag" d={d} />
      ))}
      {line.hingesU.map((u) => (
        <circle key={u} className="rail-hinge" cx={xOf(u)} cy={levels.rail} r="4" />
      ))}
    </>
  )
}

function Moment({ picture, write }: DrawnProps) {
  const [first, last] = [picture.spans[0], picture.spans.at(-1)]
  const from = first ? picture.xOf(first.span.fromU) : 0
  const to = last ? picture.xOf(last.span.toU) : 0
  const tallest = Math.max(...[picture.leastMoment, picture.mostMoment].map((top) => Math.abs(top?.nmm ?? 0)))
  const anchor = (x: number): 'start' | 'middle' | 'end' => {
    if (x - from < 40) return 'start'
    return to - x < 40 ? 'end' : 'middle'
  }
  return (
    <>
      <path className="rail-moment" d={picture.moment} />
      <path className="rail-axis" d={`M${from} ${levels.moment}H${to}`} />
      {[picture.leastMoment, picture.mostMoment].map(
        (top, index) =>
          top &&
          Math.abs(top.nmm) > tallest * LEAST_SHARE && (
            <text
              key={index}
              className="rail-number rail-halo"
              x={top.x}
              y={top.y + (index === 0 ? -4 : 13)}
              textAnchor={anchor(top.x)}
            >
              {write.moment(Math.abs(top.nmm))}
            </text>
          ),
      )}
    </>
  )
}

function Along({
  line,
  picture,
  measure,
  widthPx,
}: DrawnProps & { readonly measure: Measure; readonly widthPx: number }) {
  const ticks = alongTicks(line, measure.toReader, widthPx)
  const scale = measure.toReader(1)
  return ticks.at.map((tick) => {
    const x = picture.xOf(tick / scale)
    if (x < 4 || x > widthPx - 4) return null
    const isAtEnd = x > widthPx - LABEL_HALF_PX
    const anchor = x < LABEL_HALF_PX ? 'start' : isAtEnd ? 'end' : 'middle'
    const textX = anchor === 'start' ? 0 : isAtEnd ? widthPx : x
    return (
      <g key={tick}>
        <path className="rail-tick" d={`M${x} ${levels.foot}v5`} />
        <text className="rail-along" x={textX} y={levels.foot + 18} textAnchor={anchor}>
          {tick.toFixed(ticks.decimals)} {measure.sign}
        </text>
      </g>
    )
  })
}

interface RailDrawingProps {
  readonly line: RailLine
  readonly named: readonly NamedSpan[]
  readonly settings: Settings
  readonly write: Writer
  readonly measure: Measure
  readonly says: string
}

/** A rail under everything that hangs on it, read along by pointer or arrow keys. */
export function RailDrawing({ line, named, settings, write, measure, says }: RailDrawingProps) {
  const room = useRef<HTMLDivElement>(null)
  const size = useSize(room)
  const [at, setAt] = useState<number>()
  const bent = line.spans.filter((span) => isBent(span, settings))
  const picture = railPicture(line, bent, size)
  const stops = railStops(line, named, settings, write)
  const drawn = { line, picture, settings, write }
  const stop = stops[at ?? -1]
  const point = ({ clientX, currentTarget }: PointerEvent) =>
    setAt(nearestStop(stops, clientX - currentTarget.getBoundingClientRect().left, picture.xOf))
  const press = (event: KeyboardEvent) => {
    const next = steppedStop(event.key, at, stops.length)
    if (next === undefined) return
    event.preventDefault()
    setAt(next)
  }
  return (
    <figure className="rail-figure">
      <div
        ref={room}
        className="rail-room"
        role="slider"
        tabIndex={0}
        aria-label={says}
        aria-valuemin={0}
        aria-valuemax={Math.max(0, stops.length - 1)}
        aria-valuenow={at ?? 0}
        aria-valuetext={stop?.words ?? 'Arrow keys read along it'}
        onKeyDown={press}
        onPointerMove={point}
        onPointerDown={point}
        onPointerLeave={() => setAt(undefined)}
      >
        <svg width={size.width} height={HEIGHT_PX} aria-hidden="true">
          {stop && <path className="rail-cursor" d={`M${picture.xOf(stop.x)} 22V${levels.foot}`} />}
          <Spans {...drawn} />
          <Hangers {...drawn} />
          <Risers {...drawn} />
          <Rail {...drawn} />
          <Moment {...drawn} />
          <Along {...drawn} measure={measure} widthPx={size.width} />
        </svg>
      </div>
      <p className="chart-read" role="status">
        {stop?.words ?? 'Point at it, or use the arrow keys, to read it.'}
      </p>
      <figcaption>
        With all hung. Share of its limit over each span, with the worst that can hang. Arrows: what each bar
        hangs on the rail. Ring on the rail: slip joint.{' '}
        {picture.sag.length > 0 && `Sag drawn ${picture.times} times.`}
        {bent.length > 0 && ' Kinked: folds or stays bent.'} Under it the moment, on the side that is
        stretched.
      </figcaption>
    </figure>
  )
}
