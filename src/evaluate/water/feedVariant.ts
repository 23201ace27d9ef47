import type { Bay } from '../../checks/context'
import type { Built } from '../../model/built'
import type { Join } from '../../model/levels'
import { deriveFeed } from '../../parts/rack-row/deriveFeed'
import type { RackRow } from '../../parts/rack-row/schema'
import { joinedPipes } from '../3-joined-pipes'
import { joinSharedZones, joinZones } from '../supplyJoins'

/** What of a bay a row's other feeds depend on. */
export type RowBay = Pick<Bay, 'site' | 'settings' | 'levels' | 'built' | 'builtOf'>

/** The fields of a row that say how its towers are fed; an edit writes them as they are. */
export type FeedValues = Partial<Pick<RackRow, 'feed' | 'lateral' | 'header' | 'gradedTubes' | 'riserAt'>>

/** A row fed another way, with its pipe from the main. */
export interface FeedVariant {
  readonly part: RackRow
  /** The row's water, without its frame. */
  readonly built: Built
  /** The same, and the pipe between it and what gives its water. */
  readonly things: readonly Built[]
  /** A main, or another row's valve, is in reach of its inlet. */
  readonly isJoined: boolean
}

const isMain = ({ tubes }: Built): boolean => tubes.some(({ role }) => role === 'main')

/** What could give a row its water: mains, or, behind another row's valve, the rows that have valves. */
export const waterGivers = ({ id, valveSet }: RackRow, { built }: Pick<RowBay, 'built'>): readonly Built[] =>
  built.filter(valveSet === 'own' ? isMain : ({ part, feed }) => part !== id && feed?.valves !== undefined)

/** The join of a row's inlet, found as the bay finds it. */
const joinOf = (part: RackRow, built: Built, bay: RowBay): readonly Join[] => {
  const joinRows = part.valveSet === 'own' ? joinZones : joinSharedZones
  const joins = joinRows([...waterGivers(part, bay), built], bay.settings.mainReachMm)
  return joins.filter(({ from }) => from === built.part)
}

const withZonePipe = (part: RackRow, built: Built, bay: RowBay): FeedVariant => {
  const builtOf = new Map(bay.builtOf).set(built.part, built)
  const joins = joinOf(part, built, bay)
  const pipes = joinedPipes([built], joins, { builtOf, levels: bay.levels })
  return { part, built, things: [built, ...pipes], isJoined: joins.some(({ to }) => to !== undefined) }
}

/** The same row in the same place, fed another way, or as it is. Rows behind its valve are not moved with it. */
export const feedVariant = (row: RackRow, values: FeedValues, bay: RowBay): FeedVariant => {
  const part = { ...row, ...values }
  return withZonePipe(part, deriveFeed(part, bay.site), bay)
}
