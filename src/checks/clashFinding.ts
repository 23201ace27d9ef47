import type { Finding } from '../model/finding'
import type { Clash } from './clashes'
import { found, lengthOf, term } from './found'

interface ClashWords {
  readonly rule: string
  /** Tells two clashes of the same two parts apart. */
  readonly detail: string
  readonly facts: Finding['facts']
  /** What the depth of the clash is called in its arithmetic. */
  readonly depth: string
}

/** Two bodies in one place as a finding; its mend shifts the first of the two clear where a straight shift does. */
export const clashFinding = (clash: Clash, { rule, detail, facts, depth }: ClashWords): Finding =>
  found({
    rule,
    subject: 'fit',
    state: 'Clash',
    parts: [clash.a.part, clash.b.part],
    detail,
    at: clash.from,
    span: [clash.from, clash.to],
    measured: lengthOf(clash.deepMm),
    limit: lengthOf(0),
    facts,
    terms: [term(depth, lengthOf(clash.deepMm))],
    ...(clash.shift && {
      mend: { kind: 'move', parts: [clash.a.part], dxMm: clash.shift.x, dyMm: clash.shift.y },
    }),
  })
