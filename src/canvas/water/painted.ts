import { overlaps, type Box } from '../../geometry/box'
import type { Evaluation } from '../../evaluate/evaluation'
import type { Built } from '../../model/built'
import type { PartId } from '../../model/ids'
import { rememberEach } from '../../model/remember'
import type { FlowFigures, RowWater } from '../../model/water'
import type { Units } from '../../units/length'
import { DRY, flowScale, isSameScale, shadesOf, type Scale } from './scale'
import { towerSpotsOf, type TowerSpots } from './spots'

/** A row as the flow paint has it: a shade for each of its towers. */
export interface PaintedRow {
  readonly part: PartId
  readonly spots: TowerSpots
  readonly shades: Uint8Array
}

const wetShades = rememberEach<RowWater, Scale, Uint8Array>(
  ({ tubeLph }, scale) => shadesOf(tubeLph, scale),
  isSameScale,
)

const dryShades = rememberEach<TowerSpots, null, Uint8Array>(({ heads }) =>
  new Uint8Array(heads.length).fill(DRY),
)

/** The scale of a bay; undefined where no tower is fed. */
export const bayScale = (bay: FlowFigures | undefined, units: Units): Scale | undefined =>
  bay && flowScale(bay.least.flowLph, bay.most.flowLph, units)

const paintedRow = (built: Built, row: RowWater | undefined, scale: Scale | undefined): PaintedRow[] => {
  const spots = towerSpotsOf(built, null)
  if (!spots) return []
  return [{ part: built.part, spots, shades: row && scale ? wetShades(row, scale) : dryShades(spots, null) }]
}

/** All rows with their shades. Those whose flows stayed as they were keep theirs. */
export const paintedRows = ({ bay }: Evaluation, units: Units): readonly PaintedRow[] => {
  const scale = bayScale(bay.water.bay, units)
  return bay.built.flatMap((built) => paintedRow(built, bay.water.rows.get(built.part), scale))
}

export const inSight = (rows: readonly PaintedRow[], within: Box): readonly PaintedRow[] =>
  rows.filter(({ spots }) => overlaps(spots.box, within))
