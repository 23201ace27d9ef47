import type { Finding } from '../model/finding'
import type { Foot } from '../model/levels'
import { rememberEach } from '../model/remember'
import type { Bay, BayRule } from './context'
import { found, lengthOf, levelOf, term } from './found'
import { BLOCK_OVER_MM, REFUSED_OVER_MM, shimState, STACKED_MM } from './shimLimits'

const RULE = 'foot-shim-max'

/** The foot with the most under it; the first of equals. */
const tallestOf = rememberEach<readonly Foot[], null, Foot | undefined>((feet) =>
  feet.reduce<Foot | undefined>(
    (most, foot) => (most && most.shimMm >= foot.shimMm ? most : foot),
    undefined,
  ),
)

/** Where the bay's rails are level throughout, and the row's own feet would do without a block. */
const isMendedByRow = (feet: readonly Foot[], { settings }: Bay): boolean => {
  const grounds = feet.map(({ groundMm }) => groundMm)
  const ownMm = Math.max(...grounds) - Math.min(...grounds)
  return settings.datum === 'bay' && ownMm <= BLOCK_OVER_MM + STACKED_MM
}

const findingsOf = (part: string, feet: readonly Foot[], bay: Bay): Finding[] => {
  const worst = tallestOf(feet, null)
  const state = worst && shimState(worst.shimMm)
  if (!worst || !state || state === 'Fits') return []
  const isRefused = state === 'Clash'
  return [
    found({
      rule: RULE,
      subject: 'fit',
      state,
      parts: [part],
      at: worst.at,
      measured: lengthOf(worst.shimMm),
      limit: lengthOf(isRefused ? REFUSED_OVER_MM : BLOCK_OVER_MM),
      terms: [
        term(
          'Floor under the highest foot that the rails are level with',
          levelOf(worst.groundMm + worst.shimMm),
        ),
        term('Floor under this foot', levelOf(worst.groundMm)),
      ],
      ...(isRefused && isMendedByRow(feet, bay) && { mend: { kind: 'level-rows' } }),
    }),
  ]
}

/** Rails are level, so every foot but the highest of the bay is shimmed up to it; one finding a row, at its tallest shim. */
export const footShimMax: BayRule = {
  over: 'bay',
  id: RULE,
  title: 'Shim under the feet',
  limit: '1-1/2 in of shim, more on a block, never more than 4 in',
  source: 'Common practice, no source',
  mending:
    'Put a block under the foot; past 4 in level the rails row by row, grade the floor, or step the row.',
  check: (bay) => [...bay.levels.feet].flatMap(([part, feet]) => findingsOf(part, feet, bay)),
  say: ({ state, parts, measured, limit }, { onTape, name }) => {
    const feet = `The feet of ${name(parts[0] ?? '')} want up to ${onTape(measured.value)} of shim`
    return state === 'Clash'
      ? `${feet}; over ${onTape(limit.value)} grade the floor or step the row.`
      : `${feet}; over ${onTape(limit.value)} a block is steadier.`
  },
}
