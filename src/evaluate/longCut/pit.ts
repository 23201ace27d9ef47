import { fittingOf } from '../../catalogue/fittings'
import type { Bay } from '../../checks/context'
import { boxOf } from '../../geometry/box'
import { distance, type Point } from '../../geometry/point'
import { crossings } from '../../geometry/polyline'
import type { PartId } from '../../model/ids'
import type { Basin } from '../../solvers/gravity/basin'
import { type Leg, legAfter } from './legs'
import type { CutPit } from './section'

/** A drain may end this far short of the wall, or as far inside; the section looks for the wall from there on, mm. */
const BEFORE_END_MM = 60

/** Through a pit, in the direction in which a drain comes to it. */
export interface PitLeg {
  readonly part: PartId
  readonly leg: Leg
  /** Near and far wall, on the section, mm. */
  readonly fromMm: number
  readonly toMm: number
}

/** The last direction of a line, as a step of 1 mm. */
const heading = (points: readonly Point[]): Point | undefined => {
  const to = points.at(-1)
  const from = points.findLast((p) => to !== undefined && distance(p, to) > 0)
  if (!to || !from) return undefined
  const mm = distance(from, to)
  return { x: (to.x - from.x) / mm, y: (to.y - from.y) / mm }
}

/** The section goes straight on from the end of the last drain, through the pit to its far wall. */
export const pitLeg = (bay: Bay, part: PartId, last: Leg): PitLeg | undefined => {
  const body = bay.builtOf.get(part)?.bodies.find(({ role }) => role === 'pit')
  const end = last.points.at(-1)
  const step = heading(last.points)
  const [corner] = body?.outline ?? []
  if (!body || !end || !step || !corner) return undefined
  const { x0, y0, x1, y1 } = boxOf(body.outline)
  const farMm = x1 - x0 + y1 - y0 + BEFORE_END_MM
  const on = (mm: number): Point => ({ x: end.x + step.x * mm, y: end.y + step.y * mm })
  const walls = crossings([on(-BEFORE_END_MM), on(farMm)], [...body.outline, corner]).map(
    ({ alongA }) => alongA - BEFORE_END_MM,
  )
  const [near = 0] = walls
  const far = Math.max(near, walls.at(-1) ?? 0)
  const endMm = last.startMm + last.lengthMm
  return { part, leg: legAfter(last, [end, on(farMm)], 0), fromMm: endMm + near, toMm: endMm + far }
}

/** How much of its width a pit has at the bottom. */
const bottomShare = (basin: Basin): number =>
  basin.shape === 'sloped'
    ? Math.min(basin.bottomWidthMm / basin.topWidthMm, basin.bottomLengthMm / basin.topLengthMm)
    : 1

const inletsOf = (bay: Bay, part: PartId, onSection: PartId): CutPit['inlets'] =>
  bay.joins
    .filter(({ kind, to }) => kind === 'drain-to-pit' && to === part)
    .flatMap(({ from }) => {
      const run = bay.levels.drains.get(from)
      return run ? [{ part: from, invertMm: run.low.invertMm, odMm: run.odMm }] : []
    })
    .toSorted((a, b) => Number(b.part === onSection) - Number(a.part === onSection))

/** The pit as it is drawn on the section; undefined for what is none. */
export const cutPit = (bay: Bay, { part, fromMm, toMm }: PitLeg, drain: PartId): CutPit | undefined => {
  const built = bay.builtOf.get(part)
  if (!built?.pit) return undefined
  const insetMm = ((1 - bottomShare(built.pit.basin)) * (toMm - fromMm)) / 2
  return {
    part,
    fromMm,
    toMm,
    bottomFromMm: fromMm + insetMm,
    bottomToMm: toMm - insetMm,
    facts: built.pit,
    pumps: built.fittings.filter(({ item }) => fittingOf(item).noun === 'pump').length,
    inlets: inletsOf(bay, part, drain),
  }
}
