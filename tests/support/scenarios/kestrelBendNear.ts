import type { Sketch } from '../bay'
import { kestrelBendWith } from './kestrelBend'

/** Kestrel Bend with bearers an inch past the troughs each side: 54 + 5 + 2 x 1 = 61 in, of which a 10 ft board gives one. */
export const kestrelBendNear = (): Sketch =>
  kestrelBendWith({ title: 'Kestrel Bend Farm, House 2, before the shave', bearerEnd: 1 })
