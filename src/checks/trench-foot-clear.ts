import { grown, overlaps } from '../geometry/box'
import { gapBetween } from '../geometry/polygon'
import type { BodyRole, Built } from '../model/built'
import type { Finding } from '../model/finding'
import { rememberEach } from '../model/remember'
import { inches } from '../units/length'
import type { Bay, BayRule } from './context'
import { CLOSE_MM, found, leastOfEach, lengthOf, stateFor } from './found'
import { type Solid, type Solids, solidsOf } from './solids'

const RULE = 'trench-foot-clear'

/** Undisturbed ground left between a trench and a foot plate. Common practice, no source. */
const CLEAR_MM = inches(3)

const make = (role: BodyRole) =>
  rememberEach<Built, null, Solids | undefined>((built) => solidsOf(built, [role]))

const feetOf = make('foot')
const trenchesOf = make('trench')

interface Near {
  readonly gapMm: number
  readonly foot: Solid
}

/** The foot of a part that a trench comes nearest to, if any is too near. */
const nearestFoot = (trench: Solid, feet: Solids): Near | undefined => {
  const zone = grown(trench.box, CLEAR_MM)
  if (!overlaps(zone, feet.box)) return undefined
  let nearest: Near | undefined
  for (const foot of feet.all) {
    if (!overlaps(foot.box, zone)) continue
    const { gapMm } = gapBetween(foot.body.outline, trench.body.outline)
    if (gapMm < CLEAR_MM - CLOSE_MM && (!nearest || gapMm < nearest.gapMm)) nearest = { gapMm, foot }
  }
  return nearest
}

const findingOf = (built: Built, trench: Solid, near: Near): Finding =>
  found({
    rule: RULE,
    subject: 'fit',
    state: stateFor('fit', near.gapMm, CLEAR_MM, 0),
    parts: [built.part, trench.body.part],
    at: { x: (near.foot.box.x0 + near.foot.box.x1) / 2, y: (near.foot.box.y0 + near.foot.box.y1) / 2 },
    measured: lengthOf(near.gapMm),
    limit: lengthOf(CLEAR_MM),
  })

const check = ({ built }: Bay): Finding[] => {
  const trenches = built.flatMap((b) => trenchesOf(b, null)?.all ?? [])
  return built.flatMap((b) => {
    const feet = feetOf(b, null)
    if (!feet) return []
    return leastOfEach(
      trenches.flatMap((trench) => {
        const near = nearestFoot(trench, feet)
        return near ? [findingOf(b, trench, near)] : []
      }),
    )
  })
}

/** No trench under a foot plate, nor so near that the ground beside it gives. */
export const trenchFootClear: BayRule = {
  over: 'bay',
  id: RULE,
  title: 'Trench and foot plates',
  limit: '3 in of undisturbed ground between a trench and a foot plate',
  source: 'Common practice, no source',
  mending: 'Move the drain line to the middle of a riser bay, or the row along it.',
  check,
  say: ({ parts, measured, limit }, { onTape, name }) => {
    const [row = '', drain = ''] = parts
    return measured.value > 0
      ? `The trench of ${name(drain)} passes ${onTape(measured.value)} from a foot plate of ${name(row)}; it wants ${onTape(limit.value)}.`
      : `The trench of ${name(drain)} runs under a foot plate of ${name(row)}.`
  },
}
