import type { Built } from '../model/built'
import type { Finding, Mend, Quantity, StateWord, Term } from '../model/finding'
import type { Stance, Tip } from '../model/strength'
import { forceOf, found, lengthOf, ratioOf, term } from './found'
import { rowPlace } from './rowPlace'

interface StanceFinding {
  readonly state: StateWord
  readonly measured: Quantity
  readonly limit: Quantity
  readonly facts?: Finding['facts']
  readonly terms: readonly Term[]
}

/** What a row that nothing holds is found to lack; one press gives it ground anchors. What hangs from the house has no base to tip over. */
export const stanceFinding = (
  rule: string,
  built: Built,
  stance: Stance,
  seen: StanceFinding | undefined,
): Finding[] => {
  const { rack, part } = built
  if (!rack || !seen || stance.heldBy !== undefined || stance.baseHalfMm === 0) return []
  const mend: Mend = { kind: 'set', part, field: 'hold', value: 'anchored' }
  return [found({ rule, subject: 'stance', parts: [part], at: rowPlace(rack), mend, ...seen })]
}

/** The arithmetic of a row that is pushed at its rails. */
export const tipTerms = ({ weightN, armMm, safety }: Tip, { railMm }: Stance, pushN: number): Term[] => [
  term('Weight', forceOf(weightN)),
  term('From its middle to the edge', lengthOf(armMm)),
  term('Rails over the foot', lengthOf(railMm)),
  term('A person leans or pulls with', forceOf(pushN)),
  term('Tipping force over that', ratioOf(safety)),
]

/** The tip that takes the least of these; undefined where there is none. */
export const leastSafe = (tips: readonly Tip[]): Tip | undefined =>
  tips.reduce<Tip | undefined>((worst, tip) => (worst && worst.safety <= tip.safety ? worst : tip), undefined)
