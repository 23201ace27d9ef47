import { grown, overlaps } from '../geometry/box'
import { type Gap, gapBetween } from '../geometry/polygon'
import type { Built } from '../model/built'
import type { Finding } from '../model/finding'
import { rememberEach } from '../model/remember'
import type { Bay, BayRule } from './context'
import { CLOSE_MM, found, lengthOf, term } from './found'
import { type Solid, type Solids, solidsOf } from './solids'

const RULE = 'pit-foot-clear'

const feetOf = rememberEach<Built, null, Solids | undefined>((built) => solidsOf(built, ['foot']))

/** A tote that stands on the floor is not dug; a trench is filled again before anything is hung. */
const pitsOf = rememberEach<Built, null, readonly Solid[]>((built) =>
  (solidsOf(built, ['pit'])?.all ?? []).filter(({ body }) => body.fromMm < 0),
)

interface Near {
  readonly gap: Gap
  readonly foot: Solid
}

/** The foot plate nearest to a pit, of those that stand nearer to it than it is deep; one that it is dug under is another rule's. */
const nearestFoot = ({ body, box }: Solid, feet: readonly Solids[]): Near | undefined => {
  const zone = grown(box, -body.fromMm)
  let nearest: Near | undefined
  for (const { all, box: around } of feet) {
    if (!overlaps(zone, around)) continue
    for (const foot of all) {
      if (!overlaps(zone, foot.box)) continue
      const gap = gapBetween(body.outline, foot.body.outline)
      if (gap.gapMm < -body.fromMm - CLOSE_MM && (!nearest || gap.gapMm < nearest.gap.gapMm))
        nearest = { gap, foot }
    }
  }
  return nearest && nearest.gap.gapMm > 0 ? nearest : undefined
}

const findingOf = ({ body }: Solid, { gap, foot }: Near): Finding =>
  found({
    rule: RULE,
    subject: 'fit',
    state: 'Tight',
    parts: [body.part, foot.body.part],
    at: gap.from,
    span: [gap.from, gap.to],
    measured: lengthOf(gap.gapMm),
    limit: lengthOf(-body.fromMm),
    terms: [term('Depth of the pit', lengthOf(-body.fromMm))],
  })

const check = ({ built }: Bay): Finding[] => {
  const feet = built.flatMap((b) => feetOf(b, null) ?? [])
  return built
    .flatMap((b) => pitsOf(b, null))
    .flatMap((pit) => {
      const near = nearestFoot(pit, feet)
      return near ? [findingOf(pit, near)] : []
    })
}

/** A foot that stands nearer to an open pit than it is deep presses on the pit's wall. */
export const pitFootClear: BayRule = {
  over: 'bay',
  id: RULE,
  title: 'Pits beside foot plates',
  limit:
    'A foot plate as far from a pit as the pit is deep, the 1:1 line, or a pit whose wall holds the ground',
  source:
    'Common practice, no source; IRC P2604.4 keeps trenches out of the 45 degree bearing plane of a footing',
  mending: 'Build the pit a wall that holds the ground beside the foot, or move one of the two.',
  check,
  say: ({ parts, measured, limit }, { onTape, name }) => {
    const [pit = '', row = ''] = parts
    return `${name(pit)} is dug ${onTape(measured.value)} from a foot plate of ${name(row)} and ${onTape(limit.value)} deep: its wall there bears the rack, and must be built to.`
  },
}
