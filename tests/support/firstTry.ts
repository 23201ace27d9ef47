import type { Layout } from '../../src/layout/schema'
import { kestrelBendWith } from './scenarios/kestrelBend'

/**
 * Kestrel Bend as first drawn: its north block starts 14 in too far south, so that the post in the middle aisle leaves
 * 22 in leaf to post on either side. Drains and pit lie where the good answer has them.
 */
export const firstTry = (): Layout => kestrelBendWith({ northStart: 396 }).layout()
