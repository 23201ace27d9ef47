import type { BayRule } from './context'
import { CLOSE_MM, found, inFeet, lengthOf, levelOf, term } from './found'

const RULE = 'drain-cover-min'

/** Soil over the crown, at the place along the line where it is least. */
export const drainCoverMin: BayRule = {
  over: 'bay',
  id: RULE,
  title: 'Cover over a drain',
  limit:
    '3 in under foot traffic, 6 in under carts, 12 in where vehicles go, none for a line over the floor; editable on the line',
  source: 'Common practice, no source',
  mending: 'Start the line lower, or let the program start it as high as the cover allows.',
  check: ({ levels }) =>
    [...levels.drains.values()].flatMap((run) => {
      const { tightest } = run
      // A line that asks for no cover is not buried: it runs over the floor to a tote.
      if (run.coverMm === 0 || tightest.coverMm >= run.coverMm - CLOSE_MM) return []
      return [
        found({
          rule: RULE,
          subject: 'drain',
          state: tightest.coverMm > 0 ? 'Flat' : 'Backs up',
          parts: [run.part],
          at: tightest.at,
          measured: lengthOf(tightest.coverMm),
          limit: lengthOf(run.coverMm),
          facts: { alongMm: tightest.alongMm },
          terms: [
            term('Floor at the tightest station', levelOf(tightest.groundMm)),
            term('Crown there', levelOf(tightest.crownMm)),
            term('From the high end', inFeet(tightest.alongMm)),
          ],
          mend: { kind: 'set', part: run.part, field: 'startInvertMm', value: null },
        }),
      ]
    }),
  say: ({ parts, measured, limit, facts }, { length, onTape, name }) => {
    const alongMm = Number(facts['alongMm'])
    const where = alongMm > CLOSE_MM ? `${length(alongMm)} from its high end` : 'at its high end'
    return measured.value > 0
      ? `${name(parts[0] ?? '')} has ${onTape(measured.value)} of cover ${where}; it wants ${onTape(limit.value)}.`
      : `${name(parts[0] ?? '')} comes ${onTape(-measured.value)} out of the floor ${where}; it wants ${onTape(limit.value)} of cover.`
  },
}
