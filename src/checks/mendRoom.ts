import { type Box, overlaps } from '../geometry/box'
import type { Built } from '../model/built'
import type { Finding, Mend } from '../model/finding'
import type { PartId } from '../model/ids'
import { rememberLast } from '../model/remember'
import type { Bay } from './context'
import { CLOSE_MM } from './found'
import { keptClearOf, shareHeight, type Solid, type Solids, standingOf } from './solids'

type Move = Mend & { readonly kind: 'move' }

const shifted = ({ x0, y0, x1, y1 }: Box, { dxMm, dyMm }: Move): Box => ({
  // Drawn in a hair, so that what only touches after the move does not count as met.
  x0: x0 + dxMm + CLOSE_MM,
  y0: y0 + dyMm + CLOSE_MM,
  x1: x1 + dxMm - CLOSE_MM,
  y1: y1 + dyMm - CLOSE_MM,
})

const meets = ({ body, box }: Solid, move: Move, others: Solids): boolean => {
  const moved = shifted(box, move)
  return (
    overlaps(moved, others.box) &&
    others.all.some((other) => overlaps(moved, other.box) && shareHeight(body, other.body))
  )
}

interface Owned {
  readonly part: PartId
  readonly solids: Solids
}

/** What stands, and what is kept clear: made once for all findings of a bay. */
const taken = rememberLast((built: readonly Built[]): readonly Owned[] =>
  built.flatMap((b) =>
    [standingOf(b, null), keptClearOf(b, null)].flatMap((solids) =>
      solids ? [{ part: b.part, solids }] : [],
    ),
  ),
)

const STAY: Move = { kind: 'move', parts: [], dxMm: 0, dyMm: 0 }

/** Whether the parts of a move come to stand in nothing else's place that they do not stand in already. */
const hasRoom = (move: Move, { built }: Bay): boolean => {
  const moved = built.filter(({ part }) => move.parts.includes(part))
  const solids = moved.flatMap((b) => standingOf(b, null)?.all ?? [])
  return !taken(built).some(
    (other) =>
      !move.parts.includes(other.part) &&
      solids.some((solid) => meets(solid, move, other.solids) && !meets(solid, STAY, other.solids)),
  )
}

/** A finding without its mend, where the mend would only push the part into something else. */
export const withSoundMend = (finding: Finding, bay: Bay): Finding => {
  if (finding.mend?.kind !== 'move' || hasRoom(finding.mend, bay)) return finding
  const { mend: _unsound, ...rest } = finding
  return rest
}
