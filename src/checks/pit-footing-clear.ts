import { boxOf, grown, overlaps } from '../geometry/box'
import { drainStation } from '../geometry/drainProfile'
import type { Point } from '../geometry/point'
import { gapBetween, type Gap } from '../geometry/polygon'
import { nearestOn } from '../geometry/polyline'
import type { Body } from '../model/built'
import type { Finding } from '../model/finding'
import type { Bay, BayRule } from './context'
import { CLOSE_MM, found, leastOfEach, lengthOf, term } from './found'
import { pitMove } from './pitMove'
import { buriedOf, type Solid } from './solids'

const RULE = 'pit-footing-clear'

const digBottomMm = ({ part, role }: Body, at: Point, { levels, builtOf, site }: Bay): number => {
  const run = role === 'trench' ? levels.drains.get(part) : undefined
  const tube = run && builtOf.get(part)?.tubes.find((each) => each.role === 'drain')
  if (!run || !tube) return builtOf.get(part)?.pit?.bottomMm ?? 0
  const { alongMm } = nearestOn(tube.path, at)
  const groundMm = site.groundAt(at.x, at.y)
  return groundMm - drainStation({ at, alongMm, groundMm }, run.high.invertMm, run).digMm
}

/** A dig and a footing that it goes deeper than, and how far apart they must be. */
interface Undermined {
  readonly gap: Gap
  /** How far the dig's bottom lies under the footing's, mm. */
  readonly deeperMm: number
}

/** A dig's bottom falls along it far less than 1 in 1, so that the nearest place is the worst. */
const underminedBy = (dig: Body, footing: Body, bay: Bay): Undermined | undefined => {
  const gap = gapBetween(dig.outline, footing.outline)
  const at = gap.to
  const footingBottomMm = bay.site.groundAt(at.x, at.y) + footing.fromMm
  const deeperMm = footingBottomMm - digBottomMm(dig, gap.from, bay)
  return gap.gapMm < deeperMm - CLOSE_MM ? { gap, deeperMm } : undefined
}

/** Whether every footing of the bay is clear of a pit that has been moved. */
const clearsAll = (footings: readonly Solid[], bay: Bay) => (moved: Body) =>
  footings.every(({ body }) => underminedBy(moved, body, bay) === undefined)

const findingOf = (
  dig: Body,
  footing: Body,
  { gap, deeperMm }: Undermined,
  footings: readonly Solid[],
  bay: Bay,
) => {
  const move = dig.role === 'pit' ? pitMove(dig, footing, deeperMm, clearsAll(footings, bay), bay) : undefined
  return found({
    rule: RULE,
    subject: 'fit',
    state: 'Clash',
    parts: [dig.part, footing.part],
    at: gap.from,
    span: [gap.from, gap.to],
    measured: lengthOf(gap.gapMm),
    limit: lengthOf(deeperMm),
    facts: { dug: dig.role },
    terms: [
      term('Depth of the footing', lengthOf(-footing.fromMm)),
      term('How far the dig goes under it', lengthOf(deeperMm)),
    ],
    ...(move && { mend: move }),
  })
}

const check = (bay: Bay): Finding[] => {
  const buried = bay.built.flatMap((built) => buriedOf(built, null)?.all ?? [])
  const footings = buried.filter(({ body }) => body.role === 'footing')
  const digs = buried.filter(({ body }) => body.role !== 'footing' && body.fromMm < 0)
  return leastOfEach(
    digs.flatMap(({ body: dig }) => {
      // No dig reaches further than it is deep.
      const zone = grown(boxOf(dig.outline), -dig.fromMm + CLOSE_MM)
      return footings
        .filter(({ body, box }) => body.part !== dig.part && overlaps(zone, box))
        .flatMap(({ body: footing }) => {
          const undermined = underminedBy(dig, footing, bay)
          return undermined ? [findingOf(dig, footing, undermined, footings, bay)] : []
        })
    }),
  )
}

/** No dig within the line that falls 1 in 1 from the bottom edge of a footing. */
export const pitFootingClear: BayRule = {
  over: 'bay',
  id: RULE,
  title: 'Digs beside footings',
  limit: 'As far from a footing as the dig goes deeper than it, the 1:1 line, and working room besides',
  source:
    'Common practice, no source: the soil is judged by a competent person, and poor soil wants more (29 CFR 1926.651 for excavations beside structures)',
  mending: 'Move the dig away from the footing, or dig it less deep.',
  check,
  say: ({ parts, measured, limit, facts }, { onTape, name }) => {
    const [dig = '', footing = ''] = parts
    const what = facts['dug'] === 'pit' ? name(dig) : `The trench of ${name(dig)}`
    const where =
      measured.value > 0
        ? `is dug ${onTape(measured.value)} from the footing of ${name(footing)}`
        : `is dug into the footing of ${name(footing)}`
    return `${what} ${where} and ${onTape(limit.value)} deeper than it; it wants ${onTape(limit.value)} and working room.`
  },
}
