import type { Evaluation } from '../../evaluate/evaluation'
import type { Point } from '../../geometry/point'
import type { Built } from '../../model/built'
import type { PartId } from '../../model/ids'
import type { FlowFigures, RowWater } from '../../model/water'
import { nameOf } from '../../store/partNames'
import { dryWords, standWords } from '../../store/waterWords'
import type { Writer } from '../../units/writer'
import { towerAt, towerSpotsOf } from './spots'

/**
 * In this band single tubes flip between smooth and churned flow, and like tubes differ. The trade's caution begins
 * below the published onset at 2,000. Common practice, no source.
 */
const CHURNING_RE = { from: 1800, to: 4000 }

/** Reynolds' number of one tube. It goes with the flow, for all tubes of a row have one bore. */
const reynoldsOf = ({ tubeReynolds, figures }: RowWater, flowLph: number): number =>
  flowLph > 0 ? (tubeReynolds * flowLph) / figures.most.flowLph : 0

const churnWords = (reynolds: number): string[] =>
  reynolds >= CHURNING_RE.from && reynolds <= CHURNING_RE.to
    ? [`Reynolds ${Math.round(reynolds)}: between smooth and churned`]
    : []

/** Head at the barb of a tube over its open end, mm. */
const barbHeadMm = ({ feed }: Built, row: RowWater, tower: number, datumMm: number): number => {
  const tube = feed?.tubes[tower]
  return tube ? (row.jointHeadMm[tube.joint] ?? NaN) - (datumMm + tube.outlet.z) : NaN
}

/** What is known of one tower, a line each. */
const towerLines = ({ bay }: Evaluation, built: Built, row: RowWater, tower: number, writer: Writer) => {
  const flowLph = row.tubeLph[tower] ?? 0
  const headMm = barbHeadMm(built, row, tower, bay.levels.datums.get(built.part) ?? 0)
  return [
    writer.flow(flowLph),
    ...(headMm > 0 ? [`${writer.sightTube(headMm)} of water at its barb`] : []),
    ...churnWords(reynoldsOf(row, flowLph)),
  ]
}

/** Lines about the tower of a row at a place: `Row 2, line 3, station 24`, then its flow; none where no tower is near. */
export const towerNotes = (
  evaluation: Evaluation,
  part: PartId | undefined,
  at: Point,
  writer: Writer,
): readonly string[] => {
  const { bay, layout } = evaluation
  const built = part === undefined ? undefined : bay.builtOf.get(part)
  const spots = built && towerSpotsOf(built, null)
  const tower = spots && towerAt(spots, at)
  const head = tower === undefined ? undefined : spots?.heads[tower]
  const found = layout.parts.find(({ id }) => id === part)
  if (!built || !found || !head || tower === undefined) return []
  const row = bay.water.rows.get(built.part)
  const reason = bay.water.dry.get(built.part)
  return [
    `${nameOf(found)}, ${standWords(head)}`,
    ...(row ? towerLines(evaluation, built, row, tower, writer) : []),
    ...(reason ? [dryWords(reason)] : []),
  ]
}

/** The two towers that bound the bay's flows: `least: Row 2, line 3, station 24: 3.1 gph`. */
export const extremeWords = (
  which: 'least' | 'most',
  { layout }: Evaluation,
  figures: FlowFigures,
  writer: Writer,
): string => {
  const tower = figures[which]
  const found = layout.parts.find(({ id }) => id === tower.part)
  return `${which}: ${found ? nameOf(found) : tower.part}, ${standWords(tower)}: ${writer.flow(tower.flowLph)}`
}
