import type { Built } from '../model/built'
import type { Finding, Mend, Quantity, StateWord, Term } from '../model/finding'
import type { RackFacts } from '../model/rackFacts'
import { found } from './found'
import { rowPlace } from './rowPlace'

interface RackFinding {
  readonly state: StateWord
  readonly measured: Quantity
  readonly limit: Quantity
  readonly facts?: Finding['facts']
  readonly terms?: readonly Term[]
  readonly mend?: Mend
}

/** A check of one row from what it says about itself; nothing for parts without towers, nothing where `look` finds nothing. */
export const overRack =
  (rule: string, look: (rack: RackFacts, built: Built) => RackFinding | undefined) =>
  (built: Built): Finding[] => {
    const { rack, part } = built
    const seen = rack && look(rack, built)
    return seen ? [found({ rule, subject: 'fit', parts: [part], at: rowPlace(rack), ...seen })] : []
  }
