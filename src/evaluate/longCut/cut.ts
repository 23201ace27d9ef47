import type { Bay } from '../../checks/context'
import type { Point } from '../../geometry/point'
import type { PartId } from '../../model/ids'
import { rememberEach } from '../../model/remember'
import { type WayHome, wayHome } from '../../model/wayHome'
import { inches } from '../../units/length'
import { cutDrain, invertAt, laidAlong } from './drains'
import { type Leg, nearestOnLegs, type OnSection } from './legs'
import { cutOutlets } from './outlets'
import { cutPit, pitLeg } from './pit'
import { cutRow, type RowLeg, rowLeg } from './row'
import type { LongCut } from './section'
import { footingsNear, groundAlong, servicesCrossed } from './underground'

/** Ground is shown this far past the far wall of the pit, or past the end of what is cut. */
const PAST_END_MM = inches(10)

/** Where the water of a line of a row goes; no stretch where it has no drain in reach. */
const wayOfRow = ({ joins }: Bay, { built, line }: RowLeg): WayHome => {
  const outlets = joins.filter(({ kind, from }) => kind === 'outlet-to-drain' && from === built.part)
  const join = outlets.find((one) => one.line === line) ?? outlets[0]
  return join?.to === undefined ? { stretches: [], pit: undefined } : wayHome(joins, join.to, join.alongMm)
}

interface Section {
  readonly row: RowLeg | undefined
  readonly way: WayHome
}

const sectionAlong = (bay: Bay, along: PartId): Section | undefined => {
  if (bay.levels.drains.has(along)) return { row: undefined, way: wayHome(bay.joins, along, 0) }
  const row = rowLeg(bay, along)
  return row && { row, way: wayOfRow(bay, row) }
}

const isLeg = (leg: Leg | undefined): leg is Leg => leg !== undefined

const cutAlong = (bay: Bay, along: PartId): { cut: LongCut; legs: readonly Leg[] } | undefined => {
  const section = sectionAlong(bay, along)
  if (!section) return undefined
  const { row, way } = section
  const laid = laidAlong(bay, way.stretches, row?.leg)
  const last = laid.at(-1)
  const through = new Set(laid.map(({ run }) => run.part))
  const drains = laid.map((each) => cutDrain(bay, each, through))
  const ofPit = last && way.pit !== undefined ? pitLeg(bay, way.pit, last.leg) : undefined
  const pit = last && ofPit && cutPit(bay, ofPit, last.run.part)
  const legs = [row?.leg, ...laid.map(({ leg }) => leg), ofPit?.leg].filter(isLeg)
  const lastMm = pit?.toMm ?? Math.max(drains.at(-1)?.toMm ?? 0, row?.trough.runMm ?? 0)
  const endMm = lastMm + PAST_END_MM
  const [first] = laid
  const crownMm = first && invertAt(first.run, first.leg.alongMm) - first.run.wallMm + first.run.odMm
  const cut: LongCut = {
    along,
    through: [...(row ? [along] : []), ...through, ...(pit ? [pit.part] : [])],
    wallMm: pit?.fromMm ?? lastMm,
    endMm,
    ground: groundAlong(bay, legs, endMm),
    row: row && cutRow(bay, row, crownMm),
    drains,
    outlets: cutOutlets(bay, laid).filter(({ part, line }) => part !== along || line !== row?.line),
    services: servicesCrossed(bay, legs, endMm, { drains, pit }),
    footings: footingsNear(bay, row ? legs.slice(1) : legs, endMm),
    pit,
  }
  return { cut, legs }
}

const known = rememberEach<Bay, PartId, ReturnType<typeof cutAlong>>(cutAlong)

/** The section along a drain or a row and the way home from there; undefined for a part that no water runs along. */
export const longCut = (bay: Bay, along: PartId): LongCut | undefined => known(bay, along)?.cut

/** Where a place on the floor is on the section along a part, and how far aside. */
export const placeOnCut = (bay: Bay, along: PartId, p: Point): OnSection | undefined =>
  nearestOnLegs(known(bay, along)?.legs ?? [], p)
