import { lengthAsMeasured, type StockLength } from '../../model/measuredStock'
import type { Site } from '../../model/site'
import { inches } from '../../units/length'
import { equalPieces, riserLength, shortestHalf, type EqualPieces } from './cut'
import { frameOf, type Frame } from './frame'
import { rackLevels, type RackLevels } from './levels'
import { materialsOf, type Materials } from './materials'
import { positionsOf, type Positions } from './positions'
import type { RackRow } from './schema'

/** Lengths of the pieces that are alike all over the row, mm. */
export interface Lengths {
  readonly riserMm: number
  /** Base cross-piece and top tie; braces are cut at the same stop. */
  readonly crossMm: number
  readonly barMm: number
  readonly bearerMm: number
  /** Runner along the row, from the first riser's outer face to the last one's. */
  readonly runnerRunMm: number
  readonly runner: EqualPieces
  /** Base runner across the row. */
  readonly shortRunnerMm: number
}

/** All that is known of a row before its first stick is laid. */
export interface RackPlan {
  readonly part: RackRow
  readonly site: Site
  /** Boards of its lumber on offer. */
  readonly boards: readonly StockLength[]
  readonly materials: Materials
  readonly frame: Frame
  readonly positions: Positions
  readonly levels: RackLevels
  readonly lengths: Lengths
}

/** A bar reaches so far past the rails at least, each side. Common practice, no source. */
const BAR_PAST_RAIL_MM = inches(2)

/** A plan before its lengths. */
type Laid = Omit<RackPlan, 'lengths'>

const barLength = ({ part }: Laid, linesMm: number): number =>
  Math.max(part.railSpacingMm + 2 * BAR_PAST_RAIL_MM, linesMm + 2 * part.barEndMm)

const lengthsOf = (laid: Laid): Lengths => {
  const { part, site, boards, materials, levels, positions } = laid
  const { lumber, gutter } = materials
  const linesMm = (part.lines - 1) * part.lineSpacingMm
  const crossMm = part.railSpacingMm + lumber.wideMm
  const runnerRunMm = positions.lengthMm - 2 * positions.insetMm + lumber.thickMm
  // A bearer never ends between the runners that carry it.
  const overRunnersMm = crossMm + 2 * lumber.thickMm
  return {
    riserMm: part.riserMm ?? riserLength(levels.riserNeededMm, boards, site.kerfMm),
    crossMm,
    barMm: barLength(laid, linesMm),
    bearerMm: Math.max(linesMm + gutter.topMm + 2 * part.bearerEndMm, overRunnersMm),
    runnerRunMm,
    runner: equalPieces(runnerRunMm, Math.max(...boards.map(({ measuredMm }) => measuredMm))),
    shortRunnerMm: shortestHalf(crossMm, boards, site.kerfMm) ?? crossMm,
  }
}

export const planOf = (part: RackRow, site: Site): RackPlan => {
  const materials = materialsOf(part, site.measured)
  const laid: Laid = {
    part,
    site,
    boards: site.lumberMm.map((mm) => lengthAsMeasured(mm, materials.lumber.key, site.measured)),
    materials,
    frame: frameOf(part),
    positions: positionsOf(part, materials),
    levels: rackLevels(part, materials, site.tipMm),
  }
  return { ...laid, lengths: lengthsOf(laid) }
}
