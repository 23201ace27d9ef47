import { signedArea } from '../../geometry/polygon'
import type { Evaluation } from '../evaluation'

/** What the cost of a bay is shared by. */
export interface SharedBy {
  readonly towers: number
  readonly sites: number
  /** Of the house's floor. */
  readonly areaMm2: number
  /** Rows, or groups of rows, behind a valve of their own. */
  readonly zones: number
}

export const sharedBy = ({ bay, towers, sites }: Evaluation): SharedBy => ({
  towers,
  sites,
  areaMm2: Math.abs(signedArea(bay.house.outline)),
  zones: bay.built.reduce(
    (sum, { mouths }) => sum + mouths.filter(({ role }) => role === 'zone-inlet').length,
    0,
  ),
})

/** The share of one, to the cent; undefined where there is none to share by. */
export const centsEach = (cents: number, count: number): number | undefined =>
  count > 0 ? Math.round(cents / count) : undefined
