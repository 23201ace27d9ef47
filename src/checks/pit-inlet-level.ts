import type { Finding, Mend } from '../model/finding'
import type { PartId } from '../model/ids'
import type { DrainRun, Join } from '../model/levels'
import { DRAIN_BACK_UNDER_OVERFLOW_MM, INLET_OVER_OVERFLOW_MM, type PitFacts } from '../model/pitFacts'
import type { Bay, BayRule } from './context'
import { CLOSE_MM, found, lengthOf, levelOf, stateFor, term } from './found'

const RULE = 'pit-inlet-level'

/** How much higher a drain could start and still have its cover; nothing where the program starts it so already. */
const spareMm = ({ coverMm, tightest }: DrainRun): number =>
  coverMm > 0 ? Math.max(0, tightest.coverMm - coverMm) : 0

const runsInto = ({ joins, levels }: Bay, part: PartId): DrainRun[] =>
  joins.flatMap(({ kind, from, to }) => {
    const run = kind === 'drain-to-pit' && to === part ? levels.drains.get(from) : undefined
    return run ? [run] : []
  })

/** Whether an overflow has room under it for what runs home. */
const hasRoom = ({ drainBackMm }: PitFacts, overflowMm: number): boolean =>
  overflowMm >= drainBackMm + DRAIN_BACK_UNDER_OVERFLOW_MM - CLOSE_MM

/** The overflow that suits these inlets. */
const overflowUnder = (...inletsMm: readonly number[]): number =>
  Math.min(...inletsMm) - INLET_OVER_OVERFLOW_MM

/** A branch of a drain that starts higher would come in too low. */
const hasBranch = ({ joins }: Bay, { part }: DrainRun): boolean =>
  joins.some(({ kind, to }) => kind === 'drain-to-drain' && to === part)

/**
 * The overflow alone set lower, under every drain that leaves room under it for what runs home; where this drain leaves none,
 * the drain started as high as its cover allows, if that is enough; or else the whole pit.
 */
const mendFor = (bay: Bay, part: PartId, pit: PitFacts, run: DrainRun): Mend => {
  const others = runsInto(bay, part)
  const inletMm = run.low.invertMm
  if (hasRoom(pit, overflowUnder(inletMm))) {
    const inletsMm = others.map(({ low }) => low.invertMm).filter((mm) => hasRoom(pit, overflowUnder(mm)))
    return { kind: 'set', part, field: 'overflowMm', value: overflowUnder(inletMm, ...inletsMm) }
  }
  if (inletMm + spareMm(run) >= pit.overflowMm + INLET_OVER_OVERFLOW_MM && !hasBranch(bay, run))
    return { kind: 'set', part: run.part, field: 'startInvertMm', value: null }
  const highestMm = others.map((other) => other.low.invertMm + spareMm(other))
  return { kind: 'lower', part, byMm: pit.overflowMm - overflowUnder(inletMm, ...highestMm) }
}

const findingOf = (bay: Bay, join: Join, run: DrainRun, part: PartId, pit: PitFacts): Finding[] => {
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
      mend: mendFor(bay, part, pit, run),
    }),
  ]
}

const check = (bay: Bay): Finding[] =>
  bay.joins.flatMap((join) => {
    if (join.kind !== 'drain-to-pit' || join.to === undefined) return []
    const run = bay.levels.drains.get(join.from)
    const pit = bay.builtOf.get(join.to)?.pit
    return run && pit ? findingOf(bay, join, run, join.to, pit) : []
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
