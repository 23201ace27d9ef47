import type { Evaluation } from '../../evaluate/evaluation'
import type { PartId } from '../../model/ids'
import type { Water } from '../../model/water'
import { nameOf } from '../../store/partNames'
import { dryWords } from '../../store/waterWords'
import type { Writer } from '../../units/writer'

/** A row's state, or `no water`; undefined for what is no row. */
const stateIn = ({ rows, dry }: Water, part: PartId): string | undefined =>
  rows.get(part)?.state ?? (dry.has(part) ? 'no water' : undefined)

const changedRows = (before: Water, after: Water, isMoved: (part: PartId) => boolean): readonly PartId[] =>
  [...after.rows.keys(), ...after.dry.keys()]
    .filter((part) => {
      const was = stateIn(before, part)
      return was !== undefined && was !== stateIn(after, part)
    })
    .toSorted((a, b) => Number(isMoved(b)) - Number(isMoved(a)))

const nowWords = ({ rows, dry }: Water, part: PartId, { share }: Writer): string => {
  const row = rows.get(part)
  const reason = dry.get(part)
  if (row) return `${row.state}, spread ${share(row.figures.spread)}`
  return reason ? dryWords(reason) : ''
}

/**
 * What a move does to the water, in one line: `N1 from Even to Drifting, spread 14.2 %`; of a row that is moved before
 * all others, and of how many more. No line where every row is fed as it was.
 */
export const flowChange = (
  before: Evaluation,
  after: Evaluation,
  moved: readonly PartId[],
  writer: Writer,
): readonly string[] => {
  const [was, is] = [before.bay.water, after.bay.water]
  const [part, ...more] = changedRows(was, is, (id) => moved.includes(id))
  const found = part === undefined ? undefined : after.layout.parts.find(({ id }) => id === part)
  if (part === undefined || !found) return []
  const others =
    more.length > 0 ? `; ${more.length} more ${more.length > 1 ? 'rows change' : 'row changes'}` : ''
  return [`${nameOf(found)} from ${stateIn(was, part) ?? ''} to ${nowWords(is, part, writer)}${others}`]
}
