import type { Bay } from '../checks/context'
import type { Settings } from '../layout/settings'
import type { Built } from '../model/built'
import type { PartId } from '../model/ids'
import type { StockMeasures } from '../model/measuredStock'
import { rememberEach, rememberLast } from '../model/remember'
import type { RowStrength } from '../model/strength'
import { strengthOfFrame } from './loads/alikeRows'
import { frameOf } from './loads/frame'
import { isSameAssumed, type Assumed } from './loads/rowStrength'

const strengthOfRow = rememberEach<Built, Assumed, RowStrength | undefined>((built, assumed) => {
  const frame = frameOf(built)
  return frame && strengthOfFrame(frame, assumed)
}, isSameAssumed)

const ofBay = (
  rows: readonly Built[],
  settings: Settings,
  measured: readonly StockMeasures[],
): ReadonlyMap<PartId, RowStrength> => {
  const assumed = { settings, measured }
  return new Map(
    rows.flatMap((built): [PartId, RowStrength][] => {
      const strength = strengthOfRow(built, assumed)
      return strength ? [[built.part, strength]] : []
    }),
  )
}

const rememberedBay = rememberLast(ofBay)

/**
 * Step 5: what every row of racks carries and how it stands under it. Asked for apart from the evaluation, as findings are, so that
 * the bay is drawn before it has loaded; remembered for each row while its built things and the bay's assumptions stay the same.
 */
export const strengthOf = ({ built, settings, site }: Bay): ReadonlyMap<PartId, RowStrength> =>
  rememberedBay(built, settings, site.measured)
