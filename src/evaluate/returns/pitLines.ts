import type { Bay } from '../../checks/context'
import { boxOf, type Box } from '../../geometry/box'
import type { Point } from '../../geometry/point'
import { signedArea } from '../../geometry/polygon'
import type { DrainFacts } from '../../model/drainFacts'
import type { PartId } from '../../model/ids'
import type { DrainRun } from '../../model/levels'
import { MM_PER_M } from '../../units/length'
import { cubicMetres } from '../../units/volume'

/** What is dug, L, from mm3. */
export const dugL = (mm3: number): number => cubicMetres(mm3 / MM_PER_M ** 3)

/** A drain where it comes to its pit. */
export interface LowEnd {
  readonly run: DrainRun
  readonly facts: DrainFacts
  readonly flowLph: number
  /** What is dug for it, L. */
  readonly trenchL: number
}

/** A pit that drains come to. */
export interface PitNow {
  readonly part: PartId
  readonly box: Box
  readonly middle: Point
  /** Seen from above, mm2. */
  readonly floorMm2: number
  /** From the floor to its bottom, mm. */
  readonly depthMm: number
  /** From overflow to bottom, mm. */
  readonly underOverflowMm: number
  readonly digL: number
  readonly ends: readonly LowEnd[]
}

/** Pits whose middles stand in one line along an axis, first to last. */
export interface PitLine {
  readonly axis: 'x' | 'y'
  readonly pits: readonly PitNow[]
}

const endOf = (bay: Bay, part: PartId): LowEnd[] => {
  const run = bay.levels.drains.get(part)
  const facts = bay.builtOf.get(part)?.drain
  if (!run || !facts) return []
  const meanDigMm = (run.high.digMm + run.low.digMm) / 2
  return [
    {
      run,
      facts,
      flowLph: bay.returns.drains.get(part)?.flowLph ?? 0,
      trenchL: dugL(Math.max(meanDigMm, 0) * run.lengthMm * facts.trenchMm),
    },
  ]
}

const pitOf = (bay: Bay, part: PartId, drains: readonly PartId[]): PitNow[] => {
  const built = bay.builtOf.get(part)
  const body = built?.bodies.find(({ role }) => role === 'pit')
  if (!built?.pit || !body) return []
  const box = boxOf(body.outline)
  const floorMm2 = Math.abs(signedArea(body.outline))
  return [
    {
      part,
      box,
      middle: { x: (box.x0 + box.x1) / 2, y: (box.y0 + box.y1) / 2 },
      floorMm2,
      depthMm: -body.fromMm,
      underOverflowMm: built.pit.overflowMm - built.pit.bottomMm,
      digL: dugL(floorMm2 * -body.fromMm),
      ends: drains.flatMap((drain) => endOf(bay, drain)),
    },
  ]
}

/** Every pit that drains come to, in the order of the plan. */
export const pitsNow = (bay: Bay): readonly PitNow[] => {
  const drains = new Map<PartId, PartId[]>()
  for (const { kind, from, to } of bay.joins)
    if (kind === 'drain-to-pit' && to !== undefined) drains.set(to, [...(drains.get(to) ?? []), from])
  return bay.built.flatMap(({ part }) => {
    const ends = drains.get(part)
    return ends ? pitOf(bay, part, ends) : []
  })
}

/** Pits whose middles are no further than this off each other's line stand in one line, mm. A pit is seldom less wide. */
const IN_LINE_MM = 600

/** The pits in lines along an axis; a pit that stands alone is a line of one. */
export const pitLines = (pits: readonly PitNow[], axis: 'x' | 'y'): readonly PitLine[] => {
  const across = axis === 'x' ? 'y' : 'x'
  const lines: PitNow[][] = []
  let lastMm = -Infinity
  for (const pit of pits.toSorted((a, b) => a.middle[across] - b.middle[across])) {
    const at = pit.middle[across]
    const line = lines.at(-1)
    if (line && at - lastMm <= IN_LINE_MM) line.push(pit)
    else lines.push([pit])
    lastMm = at
  }
  return lines.map((line) => ({
    axis,
    pits: line.toSorted((a, b) => a.middle[axis] - b.middle[axis]),
  }))
}
