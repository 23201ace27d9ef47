import { stature, STEP_FROM_MM } from '../../catalogue/stature'
import type { Bay } from '../../checks/context'
import type { PartId } from '../../model/ids'
import { rememberEach } from '../../model/remember'
import type { Lift } from '../../solvers/lifting'
import { frameOf, sticksOf, type Frame } from '../loads/frame'
import { assumed } from './assumed'
import { type HungLine, linesOf, outOf, type RowSide, rowSide, type Side } from './hung'
import { type Arm, armOf, type Lifted, liftedOf } from './lifted'

/** A tower of one line, hung from one side of the row. */
export interface LineLift extends Lifted, HungLine {
  readonly side: Side
  /** Whether a person can stand on that side at all. */
  readonly isOpen: boolean
  /** Lines that hang between the person and it. */
  readonly past: number
  readonly arm: Arm
}

/** Ends of bars or rails, over the floor where it is lowest and where it is highest along the row, mm. */
interface EndsAt {
  readonly what: 'bars' | 'rails'
  readonly lowMm: number
  readonly highMm: number
  /** Whether any of them is between a small woman's and a tall man's eyes: 55.9 to 71.9 in, Pheasant, Bodyspace, 1996. */
  readonly isAtEyes: boolean
}

/** What hanging the towers of a row asks of hands and backs. */
export interface RowHandling {
  readonly part: PartId
  readonly frame: Frame
  readonly loadKg: number
  /** Whether the row's own towers were weighed. */
  readonly isWeighed: boolean
  /** Top of the bars, and hands while a tower is hooked on, over the lowest floor of the row, mm. */
  readonly barTopMm: number
  readonly handsMm: number
  readonly left: RowSide
  readonly right: RowSide
  /** Line by line, from the left, each from the left and from the right. */
  readonly lines: readonly LineLift[]
  /** Of each line the better of the sides that are open; none where both are shut. */
  readonly best: readonly LineLift[]
  /** The worst of those. */
  readonly worst: LineLift | undefined
  /** Whether a row has lines and nobody can stand along it. */
  readonly isShut: boolean
  /** Taken up from a cart and from the floor. */
  readonly fromCart: Lifted
  readonly fromFloor: Lifted
  /** Whether the bars are higher than the trade works without a step, and than a small woman can grip. */
  readonly isStepNeeded: boolean
  readonly isOverSmallReach: boolean
  readonly ends: readonly EndsAt[]
}

type Held = Pick<Lift, 'grip' | 'liftsAMin'>

const heldIn = ({ settings: { grip, liftsAMin } }: Bay): Held => ({ grip, liftsAMin })

/** How much lower than the rack datum the floor lies where it is lowest along the row, mm. */
const lowestFloor = (part: PartId, { levels }: Bay): number =>
  (levels.feet.get(part) ?? []).reduce((most, { shimMm }) => Math.max(most, shimMm), 0)

const pastOf = (lines: readonly HungLine[], { v }: HungLine, side: Side): number =>
  lines.filter((other) => outOf(side) * (other.v - v) > 0).length

interface Hanging {
  readonly lines: readonly HungLine[]
  readonly handsMm: number
  readonly loadKg: number
  readonly held: Held
}

const lineLift = (line: HungLine, { side, isOpen, standV }: RowSide, hanging: Hanging): LineLift => {
  const past = pastOf(hanging.lines, line, side)
  const reachMm = Math.max(assumed.nearestMm, outOf(side) * (standV - line.v))
  const lift: Lift = {
    ...hanging.held,
    reachMm,
    handsMm: hanging.handsMm,
    travelMm: Math.abs(hanging.handsMm - assumed.cartMm),
    twistDeg: past > 0 ? assumed.pastLineDeg : 0,
  }
  return { ...liftedOf(lift, hanging.loadKg), ...line, side, isOpen, past, arm: armOf(reachMm) }
}

/** Of two, the one that asks less: by its index, then by how far it reaches. */
const easier = (a: LineLift, b: LineLift): LineLift =>
  b.index < a.index || (b.index === a.index && b.lift.reachMm < a.lift.reachMm) ? b : a

const bestOf = (lines: readonly HungLine[], lifts: readonly LineLift[]): LineLift[] =>
  lines.flatMap(({ line }) => {
    const open = lifts.filter((lift) => lift.line === line && lift.isOpen)
    return open.length > 0 ? [open.reduce(easier)] : []
  })

const pickedUp = (fromMm: number, reachMm: number, { handsMm, loadKg, held }: Hanging): Lifted =>
  liftedOf({ ...held, reachMm, handsMm: fromMm, travelMm: Math.abs(handsMm - fromMm), twistDeg: 0 }, loadKg)

const endsOf = (frame: Frame, floorMm: number): EndsAt[] =>
  (
    [
      ['bars', ['HB']],
      ['rails', ['RL', 'RL-b']],
    ] as const
  ).flatMap(([what, marks]) => {
    const levels = sticksOf(frame, ...marks).map(({ from }) => from.z)
    if (levels.length === 0) return []
    const lowMm = Math.min(...levels)
    const highMm = Math.max(...levels) + floorMm
    const isAtEyes = highMm >= stature.eyes.woman5Mm && lowMm <= stature.eyes.man95Mm
    return [{ what, lowMm, highMm, isAtEyes }]
  })

const handlingIn = (frame: Frame, bay: Bay): RowHandling | undefined => {
  const { rack, built } = frame
  const lines = linesOf(frame)
  if (lines.length === 0) return undefined
  const floorMm = lowestFloor(built.part, bay)
  const barTopMm = rack.barTopMm + floorMm
  const loadKg = rack.towerKg ?? bay.settings.wetTowerKg
  const hanging = { lines, handsMm: barTopMm - assumed.underBarMm, loadKg, held: heldIn(bay) }
  const [left, right] = [rowSide(frame, lines, 'left', bay), rowSide(frame, lines, 'right', bay)]
  const lifts = lines.flatMap((line) => [lineLift(line, left, hanging), lineLift(line, right, hanging)])
  const best = bestOf(lines, lifts)
  return {
    part: built.part,
    frame,
    loadKg,
    isWeighed: rack.towerKg !== undefined,
    barTopMm,
    handsMm: hanging.handsMm,
    left,
    right,
    lines: lifts,
    best,
    worst: best.toSorted((a, b) => b.index - a.index || b.lift.reachMm - a.lift.reachMm)[0],
    isShut: best.length === 0,
    fromCart: pickedUp(assumed.cartMm, assumed.nearestMm, hanging),
    fromFloor: pickedUp(assumed.floorMm, assumed.floorReachMm, hanging),
    isStepNeeded: barTopMm > STEP_FROM_MM,
    isOverSmallReach: barTopMm > stature.gripUp.woman5Mm,
    ends: endsOf(frame, floorMm),
  }
}

const ofBay = rememberEach<Bay, undefined, ReadonlyMap<PartId, RowHandling>>((bay) => {
  const rows = bay.built.flatMap((built) => {
    const frame = frameOf(built)
    return (frame && handlingIn(frame, bay)) ?? []
  })
  return new Map(rows.map((row) => [row.part, row]))
})

/**
 * For every row with towers: how far, how high and how heavy each line is to hang from each side, by the revised lifting equation
 * (NIOSH Publication 94-110) with what `assumed` says of hands. A screening of the task, never a promise that it is safe.
 */
export const handlingOf = (bay: Bay): ReadonlyMap<PartId, RowHandling> => ofBay(bay, undefined)
