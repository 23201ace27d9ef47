import type { Finding, Mend } from '../model/finding'
import type { DrainRun, Join } from '../model/levels'
import { DRAIN_BACK_UNDER_OVERFLOW_MM, INLET_OVER_OVERFLOW_MM, type PitFacts } from '../model/pitFacts'
import type { Bay, BayRule } from './context'
import { CLOSE_MM, found, lengthOf, levelOf, stateFor, term } from './found'

const RULE = 'pit-inlet-level'

/** The overflow alone set lower, or the whole pit where that would leave no room for what runs home. */
const mendFor = (part: string, pit: PitFacts, inletMm: number): Mend => {
  const overflowMm = inletMm - INLET_OVER_OVERFLOW_MM
  return overflowMm >= pit.drainBackMm + DRAIN_BACK_UNDER_OVERFLOW_MM - CLOSE_MM
    ? { kind: 'set', part, field: 'overflowMm', value: overflowMm }
    : { kind: 'lower', part, byMm: pit.overflowMm - overflowMm }
}

const findingOf = (join: Join, run: DrainRun, part: string, pit: PitFacts): Finding[] => {
  const inletMm = run.low.invertMm
  const overMm = inletMm - pit.overflowMm
  if (overMm >= INLET_OVER_OVERFLOW_MM - CLOSE_MM) return []
  return [
    found({
      rule: RULE,
      subject: 'drain',
      state: stateFor('drain', overMm, INLET_OVER_OVERFLOW_MM, 0),
      parts: [join.from, part],
      at: join.at,
      measured: lengthOf(overMm),
      limit: lengthOf(INLET_OVER_OVERFLOW_MM),
      terms: [term('Inlet invert', levelOf(inletMm)), term('Overflow invert', levelOf(pit.overflowMm))],
      mend: mendFor(part, pit, inletMm),
    }),
  ]
}

const check = ({ joins, levels, builtOf }: Bay): Finding[] =>
  joins.flatMap((join) => {
    if (join.kind !== 'drain-to-pit' || join.to === undefined) return []
    const run = levels.drains.get(join.from)
    const pit = builtOf.get(join.to)?.pit
    return run && pit ? findingOf(join, run, join.to, pit) : []
  })

/** The drain must come into the pit above the overflow. */
export const pitInletLevel: BayRule = {
  over: 'bay',
  id: RULE,
  title: 'Drain’s inlet over the overflow',
  limit: 'Inlet invert at least 1 in over the overflow invert',
  source: 'Common practice, no source: a drain that stands full drops its solids and drowns roots',
  mending: 'Set the overflow and the levels under it lower, or start the drain higher.',
  check,
  say: ({ parts, measured, limit }, { onTape, name }) => {
    const [drain = '', pit = ''] = parts
    const where = measured.value >= 0 ? `${onTape(measured.value)} over` : `${onTape(-measured.value)} under`
    return `${name(drain)} comes into ${name(pit)} ${where} the overflow; it wants ${onTape(limit.value)} over it.`
  },
}
