import type { Finding } from '../model/finding'
import { clashFinding } from './clashFinding'
import { clashesBetween, type Clash, type Owner } from './clashes'
import type { BayRule } from './context'
import { keptClearOf, standingOf } from './solids'

const RULE = 'keep-clear-free'

const findingOf = (clash: Clash): Finding =>
  clashFinding(clash, {
    rule: RULE,
    // Two things may each stand in what the other keeps clear.
    detail: clash.b.part,
    facts: { keeps: clash.b.role },
    depth: 'Least shift out of it',
  })

/** Door leaves, heaters and panels keep room of their own: nothing stands in it. */
export const keepClearFree: BayRule = {
  over: 'bay',
  id: RULE,
  title: 'Room kept clear',
  limit: 'Nothing stands in a door swing or in what a heater, panel or other thing keeps clear',
  source:
    'Working space at an electrical panel: NEC 110.26(A), 36 in deep, 30 in wide, 6 ft 6 in high (model code, the adopted edition decides). Heaters: the plate on the heater. Doors: geometry',
  mending: 'Move the part out of the room that is kept clear.',
  check: ({ built }) => {
    const movable: Owner[] = []
    const kept: Owner[] = []
    for (const b of built) {
      const standing = standingOf(b, null)
      const clear = keptClearOf(b, null)
      if (standing) movable.push({ part: b.part, solids: standing })
      if (clear) kept.push({ part: b.part, solids: clear })
    }
    return clashesBetween(movable, kept).map(findingOf)
  },
  say: ({ parts, measured, facts }, { onTape, name }) => {
    const [a = '', b = ''] = parts
    const room = facts['keeps'] === 'door-swing' ? 'the swing of' : 'what must stay clear of'
    return `${name(a)} stands ${onTape(measured.value)} inside ${room} ${name(b)}.`
  },
}
