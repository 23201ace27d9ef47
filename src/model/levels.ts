import type { DrainStation } from '../geometry/drainProfile'
import type { Place, Point } from '../geometry/point'
import type { Built } from './built'
import type { PartId } from './ids'

export type { DrainStation }

/** One foot of a rack: what the floor is there and what goes under it. All mm, levels from the benchmark's zero. */
export interface Foot {
  readonly part: PartId
  readonly at: Point
  readonly groundMm: number
  readonly shimMm: number
}

/** Why a peg stands where it does: an end of the line, an outlet or a branch that comes in, a bend, or every 10 ft. */
export type PegWhy = 'start' | 'end' | 'outlet' | 'branch' | 'bend' | 'step'

/** A peg beside the trench: the crew measures down from its top. Lengths and levels in mm. */
export interface Peg extends DrainStation {
  /** From 1 at the low end up. */
  readonly number: number
  /** From the low end along the line. */
  readonly fromLowMm: number
  readonly why: readonly PegWhy[]
  /** How many outlets drop in here, and the hole that is cut in the crown for each; 0 for none. */
  readonly outlets: number
  readonly holeMm: number
  readonly pegTopMm: number
  /** From the peg's top down to the trench bottom, bed included. */
  readonly cutMm: number
}

export interface DrainRun {
  readonly part: PartId
  readonly lengthMm: number
  readonly slopeMmPerM: number
  readonly odMm: number
  readonly wallMm: number
  readonly bedMm: number
  readonly coverMm: number
  readonly high: DrainStation
  readonly low: DrainStation
  /** Where cover is least. */
  readonly tightest: DrainStation
  /** One for each trough outlet that drops into this line, in order from the high end. */
  readonly outlets: readonly DrainStation[]
  /** From the low end up. */
  readonly pegs: readonly Peg[]
  /** Where the bells of its sticks lie, from the high end, mm. */
  readonly bellsMm: readonly number[]
}

/** The stack of one line of a row at its outlet, levels from the benchmark's zero, mm, top to bottom. */
export interface LevelStack {
  readonly part: PartId
  readonly line: number
  readonly at: Point
  readonly levels: readonly { readonly name: string; readonly levelMm: number }[]
}

/** A rack datum that climbs with the floor along a row: by so much a mm along x and y, from a place where it is the datum's own level. */
export interface RowGrade {
  readonly from: Point
  readonly perX: number
  readonly perY: number
}

export interface Levels {
  /**
   * Site level of the rack datum of each part with feet: the floor under the highest foot of the bay, or of its own row;
   * for a row on grade, at its start.
   */
  readonly datums: ReadonlyMap<PartId, number>
  /** Only of rows whose rails are on grade. */
  readonly grades: ReadonlyMap<PartId, RowGrade>
  readonly highest: Foot | undefined
  readonly feet: ReadonlyMap<PartId, readonly Foot[]>
  readonly drains: ReadonlyMap<PartId, DrainRun>
}

/** How much a row on grade has climbed at a place, mm; 0 for a level one. */
export const climbAt = (grade: RowGrade | undefined, { x, y }: Point): number =>
  grade === undefined ? 0 : (x - grade.from.x) * grade.perX + (y - grade.from.y) * grade.perY

/** Site level of a part's rack datum at a place, mm; 0 for a part without feet. */
export const datumAt = ({ datums, grades }: Levels, part: PartId, at: Point): number =>
  (datums.get(part) ?? 0) + climbAt(grades.get(part), at)

/** Level from the benchmark's zero of a place of a part's built things, mm. */
export const siteLevel = (
  levels: Levels,
  { part, zFrom }: Pick<Built, 'part' | 'zFrom'>,
  at: Place,
): number => (zFrom === 'benchmark' ? at.z : at.z + datumAt(levels, part, at))

/** The same place with its level from the benchmark's zero. */
export const sitePlace = (levels: Levels, built: Pick<Built, 'part' | 'zFrom'>, at: Place): Place => ({
  x: at.x,
  y: at.y,
  z: siteLevel(levels, built, at),
})

/** Where water passes from one part into another. `gapMm` is the distance on the floor between the two. */
export interface Join {
  readonly kind:
    | 'outlet-to-drain'
    | 'drain-to-drain'
    | 'drain-to-pit'
    | 'zone-to-main'
    | 'zone-to-zone' // a row that shares the valve of another
    | 'main-to-main'
    | 'pump-to-main'
    | 'box-to-main'
  readonly from: PartId
  /** Undefined where nothing is in reach. */
  readonly to: PartId | undefined
  readonly at: Place
  /**
   * Along the receiving line from its high end or first point, mm: of a drain on the floor, of a main along its pipe in
   * space, so that the foot and the head of a rise differ; 0 for a pit or a row.
   */
  readonly alongMm: number
  readonly gapMm: number
  /** Line of the row, 1-based; 0 where there is none. */
  readonly line: number
}
