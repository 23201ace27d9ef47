import type { Words } from '../../checks/context'
import { flushPlan, type FlushPlan } from '../../evaluate/water/flush'
import type { WaterInputs } from '../../evaluate/water/plan'
import type { ValveCard } from '../../evaluate/water/valveCard'
import type { PartId } from '../../model/ids'
import { blank, counted, said, type Row, type Table } from '../../model/table'
import { toMinutes } from '../../units/time'
import { clock } from './flushWords'

/** Each zone is solved end by end: of more zones than this the sheet gives the order alone, and the screen the rest. */
const MOST_FLUSHED = 24

/** Farthest first, as air is purged and lines are flushed: the zone that finds least head before its valve. */
export const farthestFirst = (card: ValveCard | undefined): readonly PartId[] =>
  (card?.zones ?? []).toSorted((a, b) => a.inletHeadMm - b.inletHeadMm).map(({ part }) => part)

const zoneRow = (part: PartId, plan: FlushPlan | undefined, write: Words): Row => {
  const flush = plan?.zone(part)
  const name = said(write.name(part))
  if (flush === undefined || flush.batches === 0)
    return { key: part, cells: [name, blank(flush ? 'none: flush by hose' : '—'), blank('—'), blank('—')] }
  return {
    key: part,
    cells: [
      name,
      counted(flush.atOnce, `${flush.atOnce} of ${flush.ends.length}`),
      counted(toMinutes(flush.seconds), clock(flush.seconds)),
      counted(flush.litres, write.volume(flush.litres)),
    ],
  }
}

/** Zones in the order in which they are purged and flushed, with how long it takes. */
export const flushTable = (bay: WaterInputs, order: readonly PartId[], write: Words): Table => {
  const plan = order.length <= MOST_FLUSHED ? flushPlan(bay) : undefined
  return {
    id: 'flush',
    title: 'Purge and flush, farthest zone first',
    columns: [
      { key: 'zone', title: 'Zone', unit: 'text' },
      { key: 'atOnce', title: 'Ends open at once', unit: 'count', isMain: true },
      { key: 'minutes', title: 'Takes', unit: 'min' },
      { key: 'litres', title: 'To the pit', unit: 'L' },
    ],
    rows: order.map((part) => zoneRow(part, plan, write)),
  }
}
