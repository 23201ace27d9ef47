import { type Box, grown, overlaps } from '../geometry/box'
import { gapBetween } from '../geometry/polygon'
import type { Built } from '../model/built'
import type { Finding } from '../model/finding'
import { rememberEach } from '../model/remember'
import { inches } from '../units/length'
import type { Bay, BayRule } from './context'
import { CLOSE_MM, found, leastOfEach, lengthOf, stateFor } from './found'
import { type Solid, type Solids, solidsOf } from './solids'

const RULE = 'trench-foot-clear'

/** Undisturbed ground left between a dig and a foot plate. Common practice, no source. */
const CLEAR_MM = inches(3)

const feetOf = rememberEach<Built, null, Solids | undefined>((built) => solidsOf(built, ['foot']))

/** A trench or a pit, and the box outside which no plate is too near to it. */
interface Dig extends Solid {
  readonly zone: Box
}

/** A line over the floor and a tote that stands on it are not dug. */
const digsOf = rememberEach<Built, null, readonly Dig[]>((built) =>
  (solidsOf(built, ['trench', 'pit'])?.all ?? [])
    .filter(({ body }) => body.fromMm < 0)
    .map((solid) => ({ ...solid, zone: grown(solid.box, CLEAR_MM) })),
)

interface Near {
  readonly gapMm: number
  readonly foot: Solid
}

/** The foot of a part that a dig comes nearest to, if any is too near. */
const nearestFoot = ({ body, zone }: Dig, feet: Solids): Near | undefined => {
  if (!overlaps(zone, feet.box)) return undefined
  let nearest: Near | undefined
  for (const foot of feet.all) {
    if (!overlaps(foot.box, zone)) continue
    const { gapMm } = gapBetween(foot.body.outline, body.outline)
    if (gapMm < CLEAR_MM - CLOSE_MM && (!nearest || gapMm < nearest.gapMm)) nearest = { gapMm, foot }
  }
  return nearest
}

const findingOf = (built: Built, dig: Solid, near: Near): Finding =>
  found({
    rule: RULE,
    subject: 'fit',
    state: stateFor('fit', near.gapMm, CLEAR_MM, 0),
    parts: [built.part, dig.body.part],
    at: { x: (near.foot.box.x0 + near.foot.box.x1) / 2, y: (near.foot.box.y0 + near.foot.box.y1) / 2 },
    measured: lengthOf(near.gapMm),
    limit: lengthOf(CLEAR_MM),
    facts: { dug: dig.body.role },
  })

const check = ({ built }: Bay): Finding[] => {
  const digs = built.flatMap((b) => digsOf(b, null))
  return built.flatMap((b) => {
    const feet = feetOf(b, null)
    if (!feet) return []
    return leastOfEach(
      digs.flatMap((dig) => {
        const near = nearestFoot(dig, feet)
        return near ? [findingOf(b, dig, near)] : []
      }),
    )
  })
}

/** No trench or pit under a foot plate, nor so near that the ground beside it gives. */
export const trenchFootClear: BayRule = {
  over: 'bay',
  id: RULE,
  title: 'Trenches, pits and foot plates',
  limit: '3 in of undisturbed ground between a trench or a pit and a foot plate',
  source: 'Common practice, no source',
  mending: 'Move the drain line to the middle of a riser bay, or the row along it; a pit clear of the row.',
  check,
  say: ({ parts, measured, limit, facts }, { onTape, name }) => {
    const [row = '', part = ''] = parts
    const dig = facts['dug'] === 'pit' ? name(part) : `The trench of ${name(part)}`
    return measured.value > 0
      ? `${dig} passes ${onTape(measured.value)} from a foot plate of ${name(row)}; it wants ${onTape(limit.value)}.`
      : `${dig} runs under a foot plate of ${name(row)}.`
  },
}
