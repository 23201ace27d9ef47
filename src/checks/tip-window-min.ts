import type { StateWord } from '../model/finding'
import type { RackFacts } from '../model/rackFacts'
import type { PartRule } from './context'
import { CLOSE_MM, lengthOf, stateFor, term } from './found'
import { overRack } from './rackRule'

const RULE = 'tip-window-min'

/** Too long a run has no window, and too short a riser leaves it: other rules say so, and this one says nothing more. */
const isSaidElsewhere = ({ runMm, longestRunMm, tipMm, tipNeededMm }: RackFacts): boolean =>
  runMm > longestRunMm + CLOSE_MM || tipMm < tipNeededMm - CLOSE_MM

interface Clearance {
  readonly end: 'high' | 'low'
  readonly hasMm: number
  readonly wantsMm: number
}

/** The tip's distance from what it must not touch, where it is less than it should be. */
const shortClearance = (rack: RackFacts): Clearance | undefined => {
  const { tipMm, tipLowestMm, tipHighestMm, invertHighMm, lipLowMm } = rack
  if (tipMm < tipLowestMm - CLOSE_MM)
    return { end: 'high', hasMm: tipMm - invertHighMm, wantsMm: tipLowestMm - invertHighMm }
  if (tipMm > tipHighestMm + CLOSE_MM)
    return { end: 'low', hasMm: lipLowMm - tipMm, wantsMm: lipLowMm - tipHighestMm }
  return undefined
}

const stateOf = ({ hasMm, wantsMm }: Clearance): StateWord => stateFor('fit', hasMm, wantsMm, 0)

/** All tips hang at one level while the trough falls: clear of the water at the high end, below the lip at the low end. */
export const tipWindowMin: PartRule = {
  over: 'part',
  id: RULE,
  title: 'Tip window',
  limit: 'Tip 1 in over the invert at the high end of its trough, and 1/4 in below the lip at the low end',
  source: 'Common practice, no source: 1 in of water and air, 1/4 in against splashing',
  mending: 'Change how far the tip hangs below the lip, or raise the trough on its bearers.',
  check: overRack(RULE, (rack) => {
    const clearance = isSaidElsewhere(rack) ? undefined : shortClearance(rack)
    return (
      clearance && {
        state: stateOf(clearance),
        measured: lengthOf(clearance.hasMm),
        limit: lengthOf(clearance.wantsMm),
        facts: { end: clearance.end },
        terms: [
          term('Tip over the invert, high end', lengthOf(rack.tipMm - rack.invertHighMm)),
          term('Tip below the lip, low end', lengthOf(rack.lipLowMm - rack.tipMm)),
        ],
      }
    )
  }),
  say: ({ parts, measured, limit, facts }, { onTape, name }) => {
    const tips = `The tips of ${name(parts[0] ?? '')} hang ${onTape(Math.abs(measured.value))}`
    const isInside = measured.value >= 0
    return facts['end'] === 'high'
      ? `${tips} ${isInside ? 'over' : 'under'} the invert at the high end of their troughs; they want ${onTape(limit.value)} over it.`
      : `${tips} ${isInside ? 'below' : 'above'} the lip at the low end of their troughs; they want ${onTape(limit.value)} below it.`
  },
}
