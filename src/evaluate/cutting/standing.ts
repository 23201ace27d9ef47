import type { Standing } from '../../model/cutList'

/** A plan that costs no more than a bound needs no further proof; another is known by how far it may be over the cheapest. */
export const standingOf = (cost: number, bound: number, kind: 'first' | 'within'): Standing =>
  cost <= bound ? { kind: 'proven' } : { kind, share: cost / bound - 1 }
