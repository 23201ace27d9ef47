import type { PartRule } from './context'
import { CLOSE_MM, inFeet, lengthOf, term } from './found'
import { overRack } from './rackRule'

const RULE = 'gutter-run-max'

/** Tips hang level while the gutter falls: too long a run drowns them at one end or splashes at the other. */
export const gutterRunMax: PartRule = {
  over: 'part',
  id: RULE,
  title: 'Longest gutter run',
  limit: '(gutter depth - 1 in of water and air - 1/4 in) / fall',
  source: 'Geometry of the tip window; 1 in and 1/4 in are common practice, no source',
  mending: 'Split the row in two, let the gutters fall less, or take a deeper gutter.',
  check: overRack(RULE, ({ runMm, longestRunMm, lipHighMm, lipLowMm, tipMm }) =>
    runMm <= longestRunMm + CLOSE_MM
      ? undefined
      : {
          state: 'Clash',
          measured: inFeet(runMm),
          limit: inFeet(longestRunMm),
          terms: [
            term('Tip below lip, high end', lengthOf(lipHighMm - tipMm)),
            term('Tip below lip, low end', lengthOf(lipLowMm - tipMm)),
          ],
        },
  ),
  say: ({ parts, measured, limit }, { length, name }) =>
    `The gutters of ${name(parts[0] ?? '')} fall one way over ${length(measured.value)}; the tips stay in their window over ${length(limit.value)} at most.`,
}
