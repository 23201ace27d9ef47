import { boxOf, corners, type Box } from '../geometry/box'
import type { Point } from '../geometry/point'
import type { Built } from '../model/built'
import type { Finding, Mend } from '../model/finding'
import { climbAt, type Foot, type RowGrade } from '../model/levels'
import { rememberEach } from '../model/remember'
import { inches } from '../units/length'
import type { Bay, BayRule } from './context'
import { CLOSE_MM, found, lengthOf, stateFor, term } from './found'

const RULE = 'headroom-min'

/** Hands and a wet tower want a little air over the lift. Common practice, no source. */
const AIR_MM = inches(2)

/** Headroom is looked at this often along a row's edge. */
const STEP_MM = inches(12)

/** An edge that is whole steps but for the rounding of the machine is looked at no oftener than elsewhere on the map. */
const ROUNDING = 1e-6

/** A row is offered a move no longer than this. */
const FURTHEST_MM = inches(48)

const edgePoints = (box: Box): Point[] => {
  const all: Point[] = []
  const ring = corners(box)
  ring.forEach((a, index) => {
    const b = ring[(index + 1) % ring.length] ?? a
    const steps = Math.max(
      1,
      Math.ceil(Math.max(Math.abs(b.x - a.x), Math.abs(b.y - a.y)) / STEP_MM - ROUNDING),
    )
    for (let step = 0; step < steps; step++) {
      all.push({ x: a.x + ((b.x - a.x) * step) / steps, y: a.y + ((b.y - a.y) * step) / steps })
    }
  })
  return all
}

/** What decides the headroom over a row, beside the row itself. */
interface Roof {
  readonly headroomAt: Bay['headroomAt']
  readonly groundAt: Bay['site']['groundAt']
  readonly datumMm: number
  readonly grade: RowGrade | undefined
  /** Feet of the row: where it moves, they may lift the datum, and with it the row. */
  readonly feet: readonly Foot[]
  /** Whether the datum is the row's own, not the bay's. */
  readonly isOwn: boolean
}

const isSameRoof = (a: Roof, b: Roof): boolean =>
  a.headroomAt === b.headroomAt &&
  a.groundAt === b.groundAt &&
  a.datumMm === b.datumMm &&
  a.grade === b.grade &&
  a.feet === b.feet &&
  a.isOwn === b.isOwn

/** How high the row reaches above the floor at a place: its own height and the shim under it. */
const reachAt = (liftTopMm: number, p: Point, { datumMm, grade, groundAt }: Roof): number =>
  liftTopMm + datumMm + climbAt(grade, p) - groundAt(p.x, p.y)

interface Worst {
  readonly at: Point
  readonly spareMm: number
  readonly headroomMm: number
}

const worstPlace = (box: Box, liftTopMm: number, bay: Roof): Worst | undefined => {
  let worst: Worst | undefined
  for (const at of edgePoints(box)) {
    const headroomMm = bay.headroomAt(at.x, at.y)
    const spareMm = headroomMm - reachAt(liftTopMm, at, bay)
    if (!worst || spareMm < worst.spareMm) worst = { at, spareMm, headroomMm }
  }
  return worst
}

const shifted = ({ x0, y0, x1, y1 }: Box, dx: number, dy: number): Box => ({
  x0: x0 + dx,
  y0: y0 + dy,
  x1: x1 + dx,
  y1: y1 + dy,
})

const isClear = (box: Box, liftTopMm: number, roof: Roof): boolean =>
  edgePoints(box).every((p) => roof.headroomAt(p.x, p.y) - reachAt(liftTopMm, p, roof) >= AIR_MM - CLOSE_MM)

/** A row on grade keeps its climb where it goes, and comes up or down with the floor under its start. */
const gradeAfterMove = ({ datumMm, grade, groundAt }: Roof, dx: number, dy: number): Partial<Roof> => {
  if (!grade) return {}
  const { x, y } = grade.from
  const from = { x: x + dx, y: y + dy }
  return { grade: { ...grade, from }, datumMm: datumMm + groundAt(from.x, from.y) - groundAt(x, y) }
}

/** The roof as it is for the row once it has moved: its highest foot may stand higher there. */
const afterMove = (roof: Roof, dx: number, dy: number): Roof => {
  if (roof.grade) return { ...roof, ...gradeAfterMove(roof, dx, dy) }
  const grounds = roof.feet.map(({ at }) => roof.groundAt(at.x + dx, at.y + dy))
  return { ...roof, datumMm: Math.max(...grounds, roof.isOwn ? -Infinity : roof.datumMm) }
}

const WAYS: readonly Point[] = [
  { x: 1, y: 0 },
  { x: -1, y: 0 },
  { x: 0, y: 1 },
  { x: 0, y: -1 },
]

/** The shortest move in whole inches to where the row lifts; none where no short move does. */
const shortestMove = (part: string, box: Box, roof: Roof, liftTopMm: number): Mend | undefined => {
  for (let mm = inches(1); mm <= FURTHEST_MM; mm += inches(1))
    for (const { x, y } of WAYS)
      if (isClear(shifted(box, x * mm, y * mm), liftTopMm, afterMove(roof, x * mm, y * mm)))
        return { kind: 'move', parts: [part], dxMm: x * mm, dyMm: y * mm }
  return undefined
}

const findingsFor = (built: Built, bay: Roof): Finding[] => {
  const canopy = built.bodies.find(({ role }) => role === 'canopy')
  if (!built.rack || !canopy) return []
  const box = boxOf(canopy.outline)
  const { liftTopMm } = built.rack
  const worst = worstPlace(box, liftTopMm, bay)
  if (!worst || worst.spareMm >= AIR_MM - CLOSE_MM) return []
  const mend = shortestMove(built.part, box, bay, liftTopMm)
  const reachMm = worst.headroomMm - worst.spareMm
  return [
    found({
      rule: RULE,
      subject: 'fit',
      state: stateFor('fit', worst.spareMm, AIR_MM, 0),
      parts: [built.part],
      at: worst.at,
      measured: lengthOf(worst.headroomMm),
      limit: lengthOf(reachMm + AIR_MM),
      terms: [
        term('Top of a tower lifted off its bar, above the rack datum', lengthOf(liftTopMm)),
        term('Foot shim there', lengthOf(reachMm - liftTopMm)),
        term('Headroom there', lengthOf(worst.headroomMm)),
        term('Air over the lift', lengthOf(AIR_MM)),
      ],
      ...(mend && { mend }),
    }),
  ]
}

const findingsOf = rememberEach(findingsFor, isSameRoof)

const NO_FEET: readonly Foot[] = []

/** A tower must come off its bar under the roof, at the lowest place over the row, foot shims counted. */
export const headroomMin: BayRule = {
  over: 'bay',
  id: RULE,
  title: 'Headroom over a row',
  limit: 'Tower lifted off its bar, foot shim, and 2 in of air',
  source: 'Geometry of the row; 2 in of air is common practice, no source',
  mending: 'Move the row in from the curved wall, or hang shorter towers.',
  check: ({ built, headroomAt, site, levels, settings }) => {
    const { groundAt } = site
    const isOwn = settings.datum === 'row'
    return built.flatMap((b) => {
      const feet = levels.feet.get(b.part) ?? NO_FEET
      const datumMm = levels.datums.get(b.part) ?? 0
      const grade = levels.grades.get(b.part)
      return findingsOf(b, { headroomAt, groundAt, datumMm, grade, feet, isOwn })
    })
  },
  say: ({ parts, measured, limit }, { onTape, name }) =>
    `${name(parts[0] ?? '')} wants ${onTape(limit.value)} of headroom to lift a tower off; the roof leaves ${onTape(measured.value)}.`,
}
