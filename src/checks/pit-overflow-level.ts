import { boxOf, middle } from '../geometry/box'
import type { Finding, Mend } from '../model/finding'
import { DRAIN_BACK_UNDER_OVERFLOW_MM, OVERFLOW_UNDER_EDGE_MM, type PitFacts } from '../model/pitFacts'
import type { PartId } from '../model/ids'
import { inches } from '../units/length'
import type { Bay, BayRule } from './context'
import { CLOSE_MM, found, lengthOf, levelOf, stateFor, term } from './found'

const RULE = 'pit-overflow-level'

/** A kerb keeps feet and floor water out; what stands higher is the wall of a tank. Common practice, no source. */
const KERB_MM = inches(6)

/** What the pit would spill over: its rim, or the floor behind what is only a kerb. */
interface Edge {
  readonly title: 'rim' | 'floor'
  readonly levelMm: number
}

const edgeOf = ({ rimMm }: PitFacts, groundsMm: readonly number[]): Edge => {
  const lowestMm = Math.min(...groundsMm)
  const isKerb = rimMm - Math.max(...groundsMm) <= KERB_MM
  return isKerb && lowestMm < rimMm ? { title: 'floor', levelMm: lowestMm } : { title: 'rim', levelMm: rimMm }
}

/** The overflow alone set lower, or the whole pit where that would leave no room for what runs home. */
const mendFor = (part: PartId, pit: PitFacts, overflowMm: number): Mend =>
  overflowMm >= pit.drainBackMm + DRAIN_BACK_UNDER_OVERFLOW_MM - CLOSE_MM
    ? { kind: 'set', part, field: 'overflowMm', value: overflowMm }
    : { kind: 'lower', part, byMm: pit.overflowMm - overflowMm }

const check = ({ built, site }: Bay): Finding[] =>
  built.flatMap(({ part, pit, bodies }) => {
    const body = bodies.find(({ role }) => role === 'pit')
    if (!pit || !body) return []
    const edge = edgeOf(
      pit,
      body.outline.map(({ x, y }) => site.groundAt(x, y)),
    )
    const underMm = edge.levelMm - pit.overflowMm
    if (underMm >= OVERFLOW_UNDER_EDGE_MM - CLOSE_MM) return []
    const isUnder = underMm > CLOSE_MM
    return [
      found({
        rule: RULE,
        subject: 'pit',
        state: isUnder ? stateFor('pit', underMm, OVERFLOW_UNDER_EDGE_MM, 0) : 'Spills',
        parts: [part],
        at: middle(boxOf(body.outline)),
        measured: lengthOf(underMm),
        limit: lengthOf(OVERFLOW_UNDER_EDGE_MM),
        facts: { edge: edge.title },
        terms: [
          term(edge.title === 'rim' ? 'Rim' : 'Lowest floor around it', levelOf(edge.levelMm)),
          term('Overflow invert', levelOf(pit.overflowMm)),
        ],
        mend: mendFor(part, pit, edge.levelMm - OVERFLOW_UNDER_EDGE_MM),
      }),
    ]
  })

/** The overflow runs before the pit spills. */
export const pitOverflowLevel: BayRule = {
  over: 'bay',
  id: RULE,
  title: 'Overflow under rim and floor',
  limit:
    'Overflow invert at least 4 in under the rim, and under the floor around a pit whose rim is only a kerb',
  source: 'Common practice, no source: a hand of water stands over the overflow’s invert as it runs',
  mending: 'Set the overflow and the levels under it lower, or raise the rim.',
  check,
  say: ({ parts, measured, limit, facts }, { onTape, name }) => {
    const pit = name(parts[0] ?? '')
    const edge = facts['edge'] === 'rim' ? 'its rim' : 'the floor around it'
    return measured.value > CLOSE_MM
      ? `The overflow of ${pit} is ${onTape(measured.value)} under ${edge}; it wants ${onTape(limit.value)}, or ${pit} spills while it runs.`
      : `The overflow of ${pit} is ${onTape(Math.abs(measured.value))} over ${edge}: ${pit} spills before it runs. It wants ${onTape(limit.value)} under it.`
  },
}
