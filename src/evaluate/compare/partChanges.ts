import { along, type Heading, right } from '../../geometry/motion'
import type { Point } from '../../geometry/point'
import type { Layout, Part } from '../../layout/schema'
import type { PartId } from '../../model/ids'
import { type FieldChange, fieldChanges } from './fieldChanges'

/** Where a part lay and lies; a line by its first point. All mm: `by` east and north, `alongMm` and `rightMm` as the part lay. */
export interface Move {
  readonly from: Point
  readonly to: Point
  readonly by: Point
  /** Along its own length, and across it to its right. */
  readonly alongMm: number
  readonly rightMm: number
}

/** How a part differs between two plans. */
export type PartChange = { readonly part: PartId; readonly name: string; readonly kind: Part['kind'] } & (
  | { readonly what: 'added' | 'removed' }
  | {
      readonly what: 'changed'
      readonly move: Move | undefined
      readonly fields: readonly FieldChange[]
    }
)

/** Fields that say where a part lies, not what it is. */
const PLACE: ReadonlySet<string> = new Set(['at', 'points'])

/** The rounding of a difference of two places that lie on the tick, mm. */
const SAME_PLACE_MM = 0.01

interface Placed {
  readonly at?: Point
  readonly heading?: Heading
  readonly points?: readonly Point[]
}

const originOf = ({ at, points }: Placed): Point | undefined => at ?? points?.[0]

/** How far all of a part has moved; undefined where it lies as it did. */
const moveOf = (before: Placed, after: Placed): Move | undefined => {
  const [from, to] = [originOf(before), originOf(after)]
  if (!from || !to) return undefined
  const by = { x: to.x - from.x, y: to.y - from.y }
  if (Math.hypot(by.x, by.y) < SAME_PLACE_MM) return undefined
  const [ahead, beside] = [along(before.heading ?? 0), right(before.heading ?? 0)]
  return {
    from: { x: from.x, y: from.y },
    to: { x: to.x, y: to.y },
    by,
    alongMm: by.x * ahead.x + by.y * ahead.y,
    rightMm: by.x * beside.x + by.y * beside.y,
  }
}

/** Points that have all moved alike, at the same heights: the line is the same line elsewhere. */
const isSameLine = ({ points: from = [] }: Placed, { points: to = [] }: Placed, by: Point): boolean =>
  from.length === to.length &&
  from.every((point, index) => {
    const there = to[index]
    if (!there) return false
    const isSo = Math.hypot(there.x - point.x - by.x, there.y - point.y - by.y) < SAME_PLACE_MM
    return isSo && JSON.stringify({ ...there, x: 0, y: 0 }) === JSON.stringify({ ...point, x: 0, y: 0 })
  })

const STAYS: Point = { x: 0, y: 0 }

const changeOf = (before: Part, after: Part): readonly PartChange[] => {
  if (before === after) return []
  const [was, is]: readonly [Placed, Placed] = [before, after]
  const move = moveOf(was, is)
  const own = fieldChanges(before, after, PLACE)
  const fields = isSameLine(was, is, move?.by ?? STAYS)
    ? own
    : [...own, { field: 'points', from: was.points, to: is.points }]
  if (!move && fields.length === 0) return []
  return [{ ...saidOf(after), what: 'changed', move, fields }]
}

const saidOf = ({ id, name, kind }: Part) => ({ part: id, name: name || id, kind })

/** What differs between the parts of two plans, by their ids: in the order of `after`, then what is gone. */
export const partChanges = (
  before: Pick<Layout, 'parts'>,
  after: Pick<Layout, 'parts'>,
): readonly PartChange[] => {
  const was = new Map(before.parts.map((part) => [part.id, part]))
  const is = new Set(after.parts.map(({ id }) => id))
  return [
    ...after.parts.flatMap((part): readonly PartChange[] => {
      const old = was.get(part.id)
      return old ? changeOf(old, part) : [{ ...saidOf(part), what: 'added' }]
    }),
    ...before.parts
      .filter(({ id }) => !is.has(id))
      .map((part): PartChange => ({ ...saidOf(part), what: 'removed' })),
  ]
}
