import { fittingOf } from '../catalogue/fittings'
import { distance, type Point } from '../geometry/point'
import { nearestOn } from '../geometry/polyline'
import type { Built } from '../model/built'
import { CLEANOUT_APART_MM } from '../model/drainFacts'
import type { Finding } from '../model/finding'
import type { DrainRun } from '../model/levels'
import type { Bay, BayRule } from './context'
import { CLOSE_MM, found, inFeet } from './found'

const RULE = 'drain-cleanout'

/** A cleanout within this of a bend is the one that serves it, mm. */
const AT_BEND_MM = 1

interface Lack {
  readonly why: 'high end' | 'bend' | 'long'
  readonly at: Point
  readonly measuredMm: number
}

/** The longest way that a rod has to go between two cleanouts, or from the last to the low end, which is open. */
const longestReach = (alongs: readonly number[], run: DrainRun): number => {
  const stops = [...alongs, run.lengthMm].sort((a, b) => a - b)
  return Math.max(...stops.slice(1).map((stop, index) => stop - (stops[index] ?? 0)), stops[0] ?? 0)
}

/** What a line lacks first: its high end, then its bends, then its length. */
const lackOf = ({ fittings, tubes }: Built, run: DrainRun): Lack | undefined => {
  const path = tubes.find(({ role }) => role === 'drain')?.path ?? []
  const cleanouts = fittings
    .filter(({ item }) => fittingOf(item).noun === 'drain-cleanout')
    .map(({ at }) => at)
  const serves = (at: Point) => cleanouts.some((cleanout) => distance(cleanout, at) <= AT_BEND_MM)
  if (!serves(run.high.at)) return { why: 'high end', at: run.high.at, measuredMm: run.lengthMm }
  const reachMm = longestReach(
    cleanouts.map((at) => nearestOn(path, at).alongMm),
    run,
  )
  const bend = fittings.find(({ item, at }) => fittingOf(item).noun === 'drain-bend' && !serves(at))
  if (bend) return { why: 'bend', at: bend.at, measuredMm: reachMm }
  return reachMm > CLEANOUT_APART_MM + CLOSE_MM
    ? { why: 'long', at: run.high.at, measuredMm: reachMm }
    : undefined
}

const findingsOf = (built: Built, run: DrainRun): Finding[] => {
  const lack = lackOf(built, run)
  if (!lack) return []
  return [
    found({
      rule: RULE,
      subject: 'fit',
      state: 'Tight',
      parts: [run.part],
      at: lack.at,
      measured: inFeet(lack.measuredMm),
      limit: inFeet(CLEANOUT_APART_MM),
      facts: { why: lack.why },
      mend: { kind: 'set', part: run.part, field: 'cleanouts', value: 'spaced' },
    }),
  ]
}

const check = ({ built, levels }: Bay): Finding[] =>
  built.flatMap((each) => {
    const run = levels.drains.get(each.part)
    return run ? findingsOf(each, run) : []
  })

/** Roots settle in every drain: a rod must come in at its high end, at its bends, and often enough between. */
export const drainCleanout: BayRule = {
  over: 'bay',
  id: RULE,
  title: 'Cleanouts of a drain',
  limit: 'A cleanout at the high end, at every change of direction, and no more than 100 ft apart',
  source:
    'International Plumbing Code, section 708.1, from memory, edition unknown: a check value, not a permit. Every bend, however slight: common practice, no source',
  mending: 'Give the line its cleanouts.',
  check,
  say: ({ parts, measured, limit, facts }, { length, name }) => {
    const line = name(parts[0] ?? '')
    if (facts['why'] === 'high end') return `${line} has no cleanout at its high end: no rod comes into it.`
    if (facts['why'] === 'bend') return `${line} turns where it has no cleanout: no rod goes round a bend.`
    return `${line} has ${length(measured.value)} without a cleanout; no more than ${length(limit.value)} are wanted.`
  },
}
