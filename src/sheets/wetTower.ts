import type { Settings } from '../layout/settings'
import type { RackFacts } from '../model/rackFacts'

/** What a tower of a row is reckoned to weigh, planted and flooded, kg: weighed for the row, else as the bay assumes it. */
export const wetTowerOf = (
  { towerKg }: Pick<RackFacts, 'towerKg'>,
  { wetTowerKg }: Pick<Settings, 'wetTowerKg'>,
): number => towerKg ?? wetTowerKg
