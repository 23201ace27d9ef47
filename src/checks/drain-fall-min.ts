import { fallState } from '../model/drainState'
import type { Finding } from '../model/finding'
import type { DrainRun } from '../model/levels'
import type { Built } from '../model/built'
import { inchesPerFoot } from '../units/slope'
import type { Bay, BayRule } from './context'
import { fallOf, found, inFeet, levelOf, term } from './found'

const RULE = 'drain-fall-min'

const mostNamed = inchesPerFoot(1 / 8)

const findingsOf = (built: Built, run: DrainRun): Finding[] => {
  const least = built.drain?.leastSlopeMmPerM ?? mostNamed
  const state = fallState(run.slopeMmPerM, least)
  if (state === 'Falls') return []
  return [
    found({
      rule: RULE,
      subject: 'drain',
      state,
      parts: [run.part],
      at: { x: (run.high.at.x + run.low.at.x) / 2, y: (run.high.at.y + run.low.at.y) / 2 },
      measured: fallOf(run.slopeMmPerM),
      limit: fallOf(least),
      terms: [
        term('Invert at the high end', levelOf(run.high.invertMm)),
        term('Invert at the low end', levelOf(run.low.invertMm)),
        term('Length', inFeet(run.lengthMm)),
      ],
      mend: { kind: 'set', part: run.part, field: 'slope', value: least },
    }),
  ]
}

const check = (bay: Bay): Finding[] =>
  bay.built.flatMap((built) => {
    const run = bay.levels.drains.get(built.part)
    return run ? findingsOf(built, run) : []
  })

/** A drain falls all the way at no less than its least fall. */
export const drainFallMin: BayRule = {
  over: 'bay',
  id: RULE,
  title: 'Fall of a drain',
  limit:
    '1/8 in a foot for pipe of 3 to 6 in, 1/4 in a foot for smaller, 1/16 for 8 in; editable on the line',
  source: 'International Plumbing Code, Table 704.1, as adopted: a check value, not a permit',
  mending: 'Give the line more fall, or bring the pit nearer.',
  check,
  say: ({ parts, measured, limit }, { fall, name }) =>
    measured.value > 0
      ? `${name(parts[0] ?? '')} falls ${fall(measured.value)}; it wants at least ${fall(limit.value)}.`
      : `${name(parts[0] ?? '')} does not fall toward its low end; it wants at least ${fall(limit.value)}.`,
}
