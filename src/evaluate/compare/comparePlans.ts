import type { Judged } from '../evaluation'
import { type BayChange, bayChanges } from './bayChanges'
import { boardChanges, takeOffChanges, type BoardChange, type TakeOffChange } from './counts'
import type { FigureChange } from './figures'
import { findingChanges, type FindingChange } from './findings'
import { flowChanges } from './flows'
import { levelChanges } from './levels'
import { partChanges, type PartChange } from './partChanges'
import { pieceChanges, type PieceChange } from './pieces'
import { type SumChange, sumChanges } from './sums'

/** What differs between two plans, in numbers and keys; nothing is listed that is alike. Each list has a stable order. */
export interface PlanDifference {
  readonly parts: readonly PartChange[]
  /** Fields of the house, the settings and the counter. */
  readonly bay: readonly BayChange[]
  readonly pieces: readonly PieceChange[]
  readonly boards: readonly BoardChange[]
  readonly takeOff: readonly TakeOffChange[]
  readonly levels: readonly FigureChange[]
  readonly flows: readonly FigureChange[]
  readonly findings: readonly FindingChange[]
  readonly sums: readonly SumChange[]
}

/** Holds two plans against each other, part by part by their ids. */
export const comparePlans = (before: Judged, after: Judged): PlanDifference => ({
  parts: partChanges(before.layout, after.layout),
  bay: bayChanges(before.layout, after.layout),
  pieces: pieceChanges(before, after),
  boards: boardChanges(before, after),
  takeOff: takeOffChanges(before, after),
  levels: levelChanges(before, after),
  flows: flowChanges(before, after),
  findings: findingChanges(before, after),
  sums: sumChanges(before, after),
})

/** Whether two plans are the same in all that is compared. */
export const isAlike = (difference: PlanDifference): boolean =>
  Object.values(difference).every((list: readonly unknown[]) => list.length === 0)
