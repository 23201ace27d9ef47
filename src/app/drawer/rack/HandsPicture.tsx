import { useRef } from 'react'
import type { LineLift, RowHandling } from '../../../evaluate/handling/handling'
import { liftRank } from '../../../evaluate/handling/lifted'
import { type FrameStick, sticksOf } from '../../../evaluate/loads/frame'
import { useSize } from '../chart/useSize'
import { type EndView, endView, type Figure, figureOf, type Person } from './handsPicture'
import { indexWords } from './handsWords'

interface DrawnProps {
  readonly row: RowHandling
  readonly view: EndView
}

/** Members that show in the end view, as thick as they look from there. */
const SHOWN = ['RS-p', 'RS-s', 'RS-d', 'BX', 'TT', 'BR', 'GB', 'HB'] as const

const stickPath = ({ from, to }: FrameStick, { xOf, yOf }: EndView, downMm: number): string =>
  `M${xOf(from.v)} ${yOf(from.z + downMm)}L${xOf(to.v)} ${yOf(to.z + downMm)}`

/** Frame, bar, gutters and towers of one bar, seen along the row; the floor where it is lowest. */
function Rack({ row, view }: DrawnProps) {
  const { frame, barTopMm } = row
  const { rack, built, towers } = frame
  const { xOf, yOf, pxPerMm } = view
  const downMm = barTopMm - rack.barTopMm
  const lines = [...new Map(towers.map(({ line, v }) => [line, v])).values()]
  const sticks = SHOWN.flatMap((mark) =>
    [...new Map(sticksOf(frame, mark).map((laid) => [`${laid.from.v} ${laid.to.v}`, laid])).values()].map(
      (laid) => ({ mark, laid }),
    ),
  )
  return (
    <>
      {sticks.map(({ mark, laid }, index) => (
        <path
          key={index}
          className={mark === 'HB' ? 'hands-steel' : 'hands-timber'}
          d={stickPath(laid, view, downMm)}
          strokeWidth={Math.max(2, (mark === 'HB' ? laid.stick.heightMm : 38) * pxPerMm)}
        />
      ))}
      {built.bodies
        .filter(({ role }) => role === 'trough')
        .map(({ fromMm, toMm }, index) => {
          const v = lines[index] ?? 0
          return (
            <path
              key={index}
              className="hands-trough"
              d={`M${xOf(v - 60)} ${yOf(toMm + downMm)}L${xOf(v - 42)} ${yOf(fromMm + downMm)}H${xOf(v + 42)}L${xOf(v + 60)} ${yOf(toMm + downMm)}`}
            />
          )
        })}
      {lines.map((v) => (
        <rect
          key={v}
          className="hands-tower"
          x={xOf(v - rack.bodyMm / 2)}
          width={rack.bodyMm * pxPerMm}
          y={yOf((towers[0]?.z ?? 0) + downMm)}
          height={((towers[0]?.z ?? 0) - rack.tipMm) * pxPerMm}
        />
      ))}
    </>
  )
}

const lineTo = (points: readonly (readonly [number, number])[], { xOf, yOf }: EndView): string =>
  points.map(([v, z], index) => `${index === 0 ? 'M' : 'L'}${xOf(v)} ${yOf(z)}`).join('')

/** A person in plain strokes; an arm that is too short is dashed. */
function Body({ figure, view }: { readonly figure: Figure; readonly view: EndView }) {
  const { ankle, hip, shoulder, head, headMm, hand, isInReach } = figure
  return (
    <g className="hands-body">
      <circle cx={view.xOf(head[0])} cy={view.yOf(head[1])} r={headMm * view.pxPerMm} />
      <path d={lineTo([ankle, hip, shoulder, head], view)} />
      <path d={lineTo([shoulder, hand], view)} className={isInReach ? undefined : 'hands-short'} />
    </g>
  )
}

const marks = ['M-5 0a5 5 0 1 0 10 0a5 5 0 1 0 -10 0', 'M0 -6L6 5H-6Z', 'M-5 -5h10v10h-10Z'] as const

/** The index of a line over its hook, from the better side, as number and shape. */
function Mark({ lift, row, view }: DrawnProps & { readonly lift: LineLift }) {
  const rank = liftRank(lift.word)
  return (
    <g
      className={`hands-mark hands-rank-${rank}`}
      transform={`translate(${view.xOf(lift.v)} ${view.yOf(row.barTopMm) - 16})`}
    >
      <path d={marks[rank]} />
      <text y={-10} textAnchor="middle">
        {lift.word === 'Out of reach' ? 'out' : indexWords(lift)}
      </text>
    </g>
  )
}

/** A side where nobody can stand. */
function Shut({ view, standV }: { readonly view: EndView; readonly standV: number }) {
  return (
    <text className="hands-shut" x={view.xOf(standV)} y={view.yOf(900)} textAnchor="middle">
      no room
    </text>
  )
}

interface HandsPictureProps {
  readonly row: RowHandling
  readonly shown: LineLift | undefined
  readonly person: Person
  readonly says: string
}

/** The row from its end, to scale, with whoever stands beside it and reaches for a line. */
export function HandsPicture({ row, shown, person, says }: HandsPictureProps) {
  const room = useRef<HTMLDivElement>(null)
  const size = useSize(room)
  const view = endView(row, size)
  const sides = [row.left, row.right]
  return (
    <div ref={room} className="hands-picture">
      <svg width={size.width} height={size.height} role="img" aria-label={says}>
        <path className="hands-floor" d={`M0 ${view.yOf(0)}H${size.width}`} />
        <Rack row={row} view={view} />
        {sides.map(({ side, isOpen, standV }) => {
          if (!isOpen) return <Shut key={side} view={view} standV={standV} />
          const line = shown?.side === side ? shown : row.best.find((lift) => lift.side === side)
          return line && <Body key={side} view={view} figure={figureOf(row, side, line.v, person)} />
        })}
        {row.best.map((lift) => (
          <Mark key={lift.line} lift={lift} row={row} view={view} />
        ))}
        <text className="hands-end" x={view.xOf(row.left.standV)} y={size.height - 4} textAnchor="middle">
          left
        </text>
        <text className="hands-end" x={view.xOf(row.right.standV)} y={size.height - 4} textAnchor="middle">
          right
        </text>
      </svg>
    </div>
  )
}
