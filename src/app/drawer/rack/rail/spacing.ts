import type { ConduitUsed } from '../../../../evaluate/loads/conduitUsed'
import { allowedMpa } from '../../../../evaluate/loads/allowed'
import type { Settings } from '../../../../layout/settings'
import type { RailLine } from '../../../../model/strength'
import { longestSpan } from '../../../../solvers/beam/longestSpan'
import type { Writer } from '../../../../units/writer'
import { stockWords } from './railWords'

/** What hangs on a rail, spread evenly, N/mm; undefined where there are not two hangers to tell a pitch by. */
export const evenLoad = ({ hangers }: Pick<RailLine, 'hangers'>): number | undefined => {
  const [first, last] = [hangers[0], hangers.at(-1)]
  if (!first || !last || last.u <= first.u) return undefined
  const pitchMm = (last.u - first.u) / (hangers.length - 1)
  return Math.max(...hangers.map(({ fullN }) => fullN)) / pitchMm
}

/** What rails are made of here, lightest first. */
const RAIL_STOCKS = ['conduit-3/4', 'conduit-1', 'conduit-1-1/4']

export const spacingColumns = ['Rail', 'Risers no further apart than', 'What stops it']

/** How far apart risers may stand under what hangs on this rail, by conduit; each carries its own weight as well. */
export const spacingRows = (
  hungNPerMm: number,
  conduits: ReadonlyMap<string, ConduitUsed>,
  settings: Settings,
  write: Writer,
): readonly (readonly string[])[] =>
  RAIL_STOCKS.flatMap((stock) => {
    const conduit = conduits.get(stock)
    if (!conduit) return []
    const allowed = { stressMpa: allowedMpa(settings), sagOver: settings.sagOver }
    const { mm, by } = longestSpan(conduit, hungNPerMm + conduit.weightNPerMm, allowed)
    const limit = by === 'stress' ? write.stress(allowed.stressMpa) : `sag of L/${settings.sagOver}`
    return [[stockWords(stock), write.onTape(mm), limit]]
  })
