import type { Place, Point } from '../../geometry/point'
import type { Built, Stick } from '../../model/built'
import type { RackFace, RackFacts } from '../../model/rackFacts'
import { rememberEach } from '../../model/remember'
import type { RowSpot } from '../../model/strength'

/** A stick in its row's own axes. */
export interface FrameStick {
  readonly from: RowSpot
  readonly to: RowSpot
  readonly stick: Stick
}

export interface HungAt extends RowSpot {
  readonly line: number
  readonly station: number
}

/** A row of racks as built, in its own axes: u from its start, v to the right looking along it, z over the rack datum. */
export interface Frame {
  readonly built: Built
  readonly rack: RackFacts
  readonly axes: RowAxes
  readonly lengthMm: number
  /** Sticks by their mark, along u, then v; `from` and `to` are the stick's own ends, so that its holes are measured from `from`. */
  readonly sticks: ReadonlyMap<string, readonly FrameStick[]>
  /** Heads of the towers that hang. */
  readonly towers: readonly HungAt[]
}

/** Where u and v are 0 on the floor, and which way they grow: unit vectors. */
export interface RowAxes {
  readonly origin: Point
  readonly along: Point
  readonly right: Point
}

const unit = (from: Point, to: Point): Point => {
  const mm = Math.hypot(to.x - from.x, to.y - from.y)
  return { x: (to.x - from.x) / mm, y: (to.y - from.y) / mm }
}

/** The centreline lies midway between the two faces of the row, which are one where a row of one bare line has no width. */
const axesOf = (left: RackFace, right: RackFace): RowAxes => {
  const along = unit(left.from, left.to)
  return {
    origin: { x: (left.from.x + right.from.x) / 2, y: (left.from.y + right.from.y) / 2 },
    along,
    right: { x: along.y, y: -along.x },
  }
}

/** Floor places are sums of ticks turned by quarters: what is below this, mm, is noise of the machine. */
const GRAIN_MM = 1e-6

const settled = (mm: number): number => Math.round(mm / GRAIN_MM) * GRAIN_MM + 0

/** A place of a row's built things in the row's axes. */
export const spotAt = ({ origin, along, right }: RowAxes, { x, y, z }: Place): RowSpot => ({
  u: settled((x - origin.x) * along.x + (y - origin.y) * along.y),
  v: settled((x - origin.x) * right.x + (y - origin.y) * right.y),
  z: settled(z),
})

/** The place on the floor, with its height over the rack datum, of a spot in a row's axes. */
export const placeOf = ({ origin, along, right }: RowAxes, { u, v, z }: RowSpot): Place => ({
  x: origin.x + along.x * u + right.x * v,
  y: origin.y + along.y * u + right.y * v,
  z,
})

/** Along u by the middles, then v: two sticks of one pair differ by less than this in u, mm, only by noise. */
const SAME_U_MM = 0.01

const alongThenAcross = (a: FrameStick, b: FrameStick): number => {
  const du = a.from.u + a.to.u - b.from.u - b.to.u
  return Math.abs(du) > 2 * SAME_U_MM ? du : a.from.v + a.to.v - b.from.v - b.to.v
}

const sticksByMark = (sticks: readonly Stick[], axes: RowAxes): Map<string, FrameStick[]> => {
  const byMark = new Map<string, FrameStick[]>()
  for (const stick of sticks) {
    const laid = { from: spotAt(axes, stick.from), to: spotAt(axes, stick.to), stick }
    const list = byMark.get(stick.mark)
    if (list) list.push(laid)
    else byMark.set(stick.mark, [laid])
  }
  for (const list of byMark.values()) list.sort(alongThenAcross)
  return byMark
}

const towersOf = (built: Built, axes: RowAxes): HungAt[] =>
  built.mouths
    .filter(({ role }) => role === 'tower-head')
    .map(({ at, line, station }) => ({ ...spotAt(axes, at), line, station }))

const remembered = rememberEach<Built, undefined, Frame | undefined>((built) => {
  const { rack } = built
  if (!rack) return undefined
  const axes = axesOf(rack.leftFace, rack.rightFace)
  return {
    built,
    rack,
    axes,
    lengthMm: rack.runMm,
    sticks: sticksByMark(built.sticks, axes),
    towers: towersOf(built, axes),
  }
})

/** A row of racks in its own axes, remembered by its built things; undefined for parts where no towers hang. */
export const frameOf = (built: Built): Frame | undefined => remembered(built, undefined)

/** The row's sticks of these marks, mark by mark. */
export const sticksOf = (
  { sticks }: Pick<Frame, 'sticks'>,
  ...marks: readonly string[]
): readonly FrameStick[] => marks.flatMap((mark) => sticks.get(mark) ?? [])
