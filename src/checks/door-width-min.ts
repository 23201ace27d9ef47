import { boxOf, middle } from '../geometry/box'
import type { Body } from '../model/built'
import type { Finding } from '../model/finding'
import type { BayRule } from './context'
import { doorsOf } from './doors'
import { inches } from '../units/length'
import { EXIT_ACCESS_MM } from './exitAccess'
import { CLOSE_MM, found, lengthOf, stateFor } from './found'

const RULE = 'door-width-min'

/** 2010 ADA Standards 404.2.3. */
const WHEELCHAIR_MM = inches(32)

const findingsOf = ({ part, outline }: Body, need: number): Finding[] => {
  const box = boxOf(outline)
  const widthMm = Math.max(box.x1 - box.x0, box.y1 - box.y0)
  if (widthMm >= need - CLOSE_MM) return []
  return [
    found({
      rule: RULE,
      subject: 'fit',
      state: stateFor('fit', widthMm, need, EXIT_ACCESS_MM),
      parts: [part],
      at: middle(box),
      measured: lengthOf(widthMm),
      limit: lengthOf(need),
    }),
  ]
}

/** A door passes people, and a wheelchair where a route for one is asked for. */
export const doorWidthMin: BayRule = {
  over: 'bay',
  id: RULE,
  title: 'Clear width of a door',
  limit: '28 in clear; 32 in where a wheelchair route is wanted',
  source: '29 CFR 1910.36(g)(2); 2010 ADA Standards 404.2.3 (from memory): check values, not a permit',
  mending: 'Hang a wider door.',
  check: ({ built, settings }) => {
    const need = settings.wheelchair ? WHEELCHAIR_MM : EXIT_ACCESS_MM
    return doorsOf(built).flatMap((door) => findingsOf(door, need))
  },
  say: ({ parts, measured, limit }, { onTape, name }) =>
    `${name(parts[0] ?? '')} is ${onTape(measured.value)} clear; it wants ${onTape(limit.value)}.`,
}
