import { lengthAsMeasured, type StockLength } from '../../model/measuredStock'
import type { Site } from '../../model/site'
import { inches } from '../../units/length'
import { equalPieces, riserLength, shortestHalf, type EqualPieces } from './cut'
import { frameOf, type Frame } from './frame'
import { rackLevels, type RackLevels } from './levels'
import { sharesPairs } from './joints'
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
  readonly runners: readonly RunnerRun[]
  /** Base runner across the row. */
  readonly shortRunnerMm: number
}

/**
 * Runner along the row, u and mm: from where the first riser's outer face is to where the last one's is before end pairs are
 * moved in from there. Between racks of J2 it is cut in the middle of the gap, so that they come apart.
 */
export interface RunnerRun {
  readonly fromU: number
  readonly runMm: number
  readonly pieces: EqualPieces
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

/** From the outermost rail on the left to that on the right, middles, mm. */
const railsApartMm = ({ part, materials }: Laid): number =>
  part.railSpacingMm + (part.joint === 'J5' && part.racks > 1 ? materials.rail.odMm : 0)

const barLength = (laid: Laid, linesMm: number): number =>
  Math.max(railsApartMm(laid) + 2 * BAR_PAST_RAIL_MM, linesMm + 2 * laid.part.barEndMm)

const runnersOf = ({ part, boards, materials, positions }: Laid): RunnerRun[] => {
  const { insetMm, lengthMm } = positions
  const endMm = insetMm - materials.lumber.thickMm / 2
  const longestMm = Math.max(...boards.map(({ measuredMm }) => measuredMm))
  const cuts = sharesPairs(part)
    ? []
    : Array.from({ length: part.racks - 1 }, (_, rack) => (rack + 1) * part.rackLengthMm)
  const froms = [endMm, ...cuts]
  return froms.map((fromU, index) => {
    const runMm = (froms[index + 1] ?? lengthMm - endMm) - fromU
    return { fromU, runMm, pieces: equalPieces(runMm, longestMm) }
  })
}

const lengthsOf = (laid: Laid): Lengths => {
  const { part, site, boards, materials, levels } = laid
  const { lumber, gutter } = materials
  const linesMm = (part.lines - 1) * part.lineSpacingMm
  const crossMm = part.railSpacingMm + lumber.wideMm
  // A bearer never ends between the runners that carry it.
  const overRunnersMm = crossMm + 2 * lumber.thickMm
  return {
    riserMm: part.riserMm ?? riserLength(levels.riserNeededMm, boards, site.kerfMm),
    crossMm,
    barMm: barLength(laid, linesMm),
    bearerMm: Math.max(linesMm + gutter.topMm + 2 * part.bearerEndMm, overRunnersMm),
    runners: runnersOf(laid),
    shortRunnerMm: shortestHalf(crossMm, boards, site.kerfMm) ?? crossMm,
  }
}

/** What hangs from the house has no risers, and so none of a fixed length. */
const asCarried = (part: RackRow): RackRow =>
  part.carriedBy === 'house' && part.riserMm !== null ? { ...part, riserMm: null } : part

export const planOf = (drawn: RackRow, site: Site): RackPlan => {
  const part = asCarried(drawn)
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
