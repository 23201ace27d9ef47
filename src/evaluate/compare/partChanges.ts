import type { Layout, Part } from '../../layout/schema'
import type { PartId } from '../../model/ids'

/** How a part differs between two plans. Moves in mm, east and north. */
export type PartChange = { readonly part: PartId; readonly name: string } & (
  | { readonly kind: 'added' | 'removed' }
  | { readonly kind: 'changed'; readonly byMm: Move | undefined; readonly fields: readonly string[] }
)

interface Move {
  readonly x: number
  readonly y: number
}

/** Fields that say where a part lies, not what it is. */
const PLACE = new Set(['at', 'points'])

/** The rounding of a difference of two places that lie on the tick, mm. */
const SAME_PLACE_MM = 0.01

interface Placed {
  readonly at?: Move
  readonly points?: readonly Move[]
}

const originOf = (part: Part): Move | undefined => {
  const { at, points } = part as Placed // each kind lies by the one or by the other
  return at ?? points?.[0]
}

/** How far all of a part has moved; undefined where it lies as it did. */
const moveOf = (before: Part, after: Part): Move | undefined => {
  const [from, to] = [originOf(before), originOf(after)]
  if (!from || !to) return undefined
  const move = { x: to.x - from.x, y: to.y - from.y }
  return Math.hypot(move.x, move.y) < SAME_PLACE_MM ? undefined : move
}

const isSame = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b)

/** Points that have all moved alike: the line is the same line elsewhere. */
const isMovedWhole = (before: Part, after: Part, move: Move | undefined): boolean => {
  const [from, to] = [(before as Placed).points, (after as Placed).points] // see originOf
  if (!from || !to) return true
  return (
    from.length === to.length &&
    from.every(({ x, y }, index) => {
      const there = to[index]
      if (!there) return false
      return Math.hypot(there.x - x - (move?.x ?? 0), there.y - y - (move?.y ?? 0)) < SAME_PLACE_MM
    })
  )
}

const changedFields = (before: Part, after: Part): readonly string[] => {
  const names = [...new Set([...Object.keys(before), ...Object.keys(after)])]
  const [was, is] = [before, after] as unknown as [Record<string, unknown>, Record<string, unknown>] // read field by field
  const fields = names.filter((name) => !PLACE.has(name) && !isSame(was[name], is[name]))
  return isMovedWhole(before, after, moveOf(before, after)) ? fields : [...fields, 'points']
}

const changeOf = (before: Part, after: Part): readonly PartChange[] => {
  const byMm = moveOf(before, after)
  const fields = changedFields(before, after)
  if (!byMm && fields.length === 0) return []
  return [{ part: after.id, name: after.name || after.id, kind: 'changed', byMm, fields }]
}

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
      return old ? changeOf(old, part) : [{ part: part.id, name: part.name || part.id, kind: 'added' }]
    }),
    ...before.parts
      .filter(({ id }) => !is.has(id))
      .map(({ id, name }): PartChange => ({ part: id, name: name || id, kind: 'removed' })),
  ]
}
