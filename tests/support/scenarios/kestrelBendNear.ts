import { inches } from '../../../src/units/length'
import type { Sketch } from '../bay'
import { kestrelBendWith } from './kestrelBend'

/**
 * Kestrel Bend from a yard that has 10 ft boards only, with bearers an inch past the troughs each side: 54 + 5 + 2 x 1 = 61 in, of
 * which such a board gives one.
 */
export const kestrelBendNear = (): Sketch =>
  kestrelBendWith({ title: 'Kestrel Bend Farm, House 2, before the shave', bearerEnd: 1 }).settings({
    lumber: [inches(120)],
  })
