import { useRef } from 'react'
import type { Frame } from '../../../../evaluate/loads/frame'
import type { Stance, Tip } from '../../../../model/strength'
import type { Writer } from '../../../../units/writer'
import { useSize } from '../../chart/useSize'
import { type OnPage, onPage, type StancePicture, stancePicture } from './stancePicture'

interface DrawnProps {
  readonly picture: StancePicture
  readonly page: OnPage
}

function Things({ picture, page: { xOf, yOf, pxPerMm } }: DrawnProps) {
  return (
    <>
      {picture.towers.map(({ at, topMm, tipMm, widthMm, isHung }) => (
        <rect
          key={at}
          className={isHung ? 'stance-tower' : 'stance-tower stance-tower-off'}
          x={xOf(at - widthMm / 2)}
          y={yOf(topMm)}
          width={Math.max(2, widthMm * pxPerMm)}
          height={Math.max(2, (topMm - tipMm) * pxPerMm)}
        />
      ))}
      {picture.sticks.map(({ key, from, to, thickMm, isSteel }) => (
        <path
          key={key}
          className={isSteel ? 'stance-steel' : 'stance-timber'}
          strokeWidth={Math.max(1.4, thickMm * pxPerMm)}
          d={`M${xOf(from[0])} ${yOf(from[1])}L${xOf(to[0])} ${yOf(to[1])}`}
        />
      ))}
    </>
  )
}

const HEAD = 6

/** An arrow from one place to another with its head at the second. */
const arrow = (x1: number, y1: number, x2: number, y2: number): string => {
  const long = Math.max(1e-6, Math.hypot(x2 - x1, y2 - y1))
  const [ux, uy] = [((x2 - x1) / long) * HEAD, ((y2 - y1) / long) * HEAD]
  const barb = (side: number) => `M${x2} ${y2}l${-ux - side * uy * 0.6} ${-uy + side * ux * 0.6}`
  return `M${x1} ${y1}L${x2} ${y2}${barb(1)}${barb(-1)}`
}

interface ForcesProps extends DrawnProps {
  readonly stance: Stance
  readonly tip: Tip
  readonly pushN: number
  readonly write: Writer
}

/** Push at the rails, weight in its middle, and both together down to the floor. */
function Forces({ picture, page: { xOf, yOf }, stance, tip, pushN, write }: ForcesProps) {
  const railY = yOf(stance.railMm)
  const floorY = yOf(0)
  const [left, weightX, edgeX] = [xOf(picture.lowMm) - 8, xOf(picture.weightMm), xOf(picture.edgeMm)]
  const isOut = picture.footMm > picture.edgeMm
  const footX = Math.min(xOf(picture.footMm), edgeX + 96)
  return (
    <>
      <path className="stance-floor" d={`M${left - 40} ${floorY + 1}H${edgeX + 104}`} />
      <path className="stance-edge" d={`M${edgeX} ${floorY + 2}l7 12h-14z`} />
      <path className="stance-force" d={arrow(left - 48, railY, left, railY)} />
      <text x={left - 4} y={railY - 8} textAnchor="end">
        push {write.force(pushN)}
      </text>
      <path className="stance-force" d={arrow(weightX, railY + 6, weightX, floorY - 4)} />
      <circle className="stance-middle" cx={weightX} cy={railY} r="3.4" />
      <path
        className={isOut ? 'stance-both stance-out' : 'stance-both'}
        d={arrow(weightX, railY, footX, floorY)}
      />
      <text className="stance-halo" x={weightX - 6} y={(railY + floorY) / 2} textAnchor="end">
        {write.force(tip.weightN)}
      </text>
      <text x={edgeX} y={floorY + 29} textAnchor="middle">
        edge
      </text>
      <text className="stance-halo" x={Math.max(footX, edgeX) + 12} y={floorY - 8}>
        {isOut ? 'falls outside' : 'falls inside'}
      </text>
    </>
  )
}

interface StanceDrawingProps {
  readonly frame: Frame
  readonly stance: Stance
  readonly tip: Tip
  readonly pushN: number
  readonly write: Writer
  readonly says: string
}

/** The row from where it would tip, to scale, with the forces on it. */
export function StanceDrawing({ frame, stance, tip, pushN, write, says }: StanceDrawingProps) {
  const room = useRef<HTMLDivElement>(null)
  const size = useSize(room)
  const picture = stancePicture(frame, stance, tip, pushN)
  const page = onPage(picture, size)
  return (
    <figure className="stance-figure">
      <div ref={room} className="stance-room">
        <svg width={size.width} height={size.height} role="img" aria-label={says}>
          <Things picture={picture} page={page} />
          <Forces picture={picture} page={page} stance={stance} tip={tip} pushN={pushN} write={write} />
        </svg>
      </div>
      <figcaption>
        {tip.way === 'across' ? 'From the end of the row' : 'From the side of the row'}, to scale. Down: the
        weight. Slanting: weight and push together; the row tips where that meets the floor beyond its edge.
        Dashed towers are not hung.
      </figcaption>
    </figure>
  )
}
