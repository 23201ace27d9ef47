import type { DryReason, TowerAt } from '../model/water'

/** Which tower of its row: `line 3, station 24`. */
export const standWords = ({ line, station }: Pick<TowerAt, 'line' | 'station'>): string =>
  `line ${line}, station ${station}`

const reasons: Readonly<Record<DryReason, string>> = {
  'no-main': 'no main is in reach',
  'no-supply': 'its main meets neither pump nor head box',
  shut: 'it is behind a shut valve',
}

/** Why a row has no water: `no water: no main is in reach`. */
export const dryWords = (reason: DryReason): string => `no water: ${reasons[reason]}`
