import type { Service } from '../../layout/house'
import type { PartId } from '../../model/ids'
import type { Peg } from '../../model/levels'
import type { PitFacts } from '../../model/pitFacts'
import type { DrainReach, DrainState } from '../../model/returns'

/**
 * The long cut: one section along the water's way home, laid out flat. `sMm` runs along it from its high end, on the flat, mm;
 * levels are mm from the benchmark's zero.
 */
export interface LongCut {
  /** The drain or the row that the section runs along from its high end. */
  readonly along: PartId
  /** Parts that the section runs through, from the high end down: row, drains, pit. */
  readonly through: readonly PartId[]
  /** Where the pit's near wall is, or the end of the last drain where it comes to no pit: zero of the scale that the crew reads. */
  readonly wallMm: number
  /** Where the section ends: a little past the far wall. */
  readonly endMm: number
  readonly ground: readonly CutLevel[]
  readonly row: CutRow | undefined
  readonly drains: readonly CutDrain[]
  readonly outlets: readonly CutOutlet[]
  readonly services: readonly CutService[]
  readonly footings: readonly CutFooting[]
  readonly pit: CutPit | undefined
}

export interface CutLevel {
  readonly sMm: number
  readonly levelMm: number
}

/** A stretch of a drain line on the section. */
export interface CutDrain {
  readonly part: PartId
  readonly fromMm: number
  readonly toMm: number
  /** How far along the line from its high end the stretch begins, mm; 0 where all of it is on the section. */
  readonly alongMm: number
  readonly odMm: number
  readonly wallMm: number
  readonly bedMm: number
  readonly slopeMmPerM: number
  readonly highInvertMm: number
  readonly lowInvertMm: number
  /** Of the worst reach, once the water on its way home is known. */
  readonly state: DrainState | undefined
  readonly reaches: readonly CutReach[]
  readonly pegs: readonly CutPeg[]
  readonly branches: readonly CutBranch[]
  readonly bendsMm: readonly number[]
}

export type CutReach = Pick<
  DrainReach,
  'fromMm' | 'toMm' | 'depthMm' | 'share' | 'velocityMS' | 'state' | 'flowLph'
>

export type CutPeg = Pick<Peg, 'number' | 'why' | 'groundMm' | 'pegTopMm' | 'cutMm' | 'invertMm'> & {
  readonly sMm: number
}

/** Another drain that comes in at a place of the section. */
export interface CutBranch {
  readonly part: PartId
  readonly sMm: number
  readonly invertMm: number
  readonly odMm: number
}

/** A gutter that crosses over the drain, cut through, with its outlet and the tube that drops into the hole. */
export interface CutOutlet {
  readonly part: PartId
  readonly line: number
  readonly drain: PartId
  readonly sMm: number
  readonly invertMm: number
  readonly gutter: GutterCut
  readonly boreMm: number
  /** Water over the invert there; 0 where it is not known. */
  readonly waterMm: number
  /** Level of the tower tips; undefined for a lone trough. */
  readonly tipMm: number | undefined
  readonly drainCrownMm: number
  readonly drainInvertMm: number
}

/** Inside of a gutter, cut across. */
export interface GutterCut {
  readonly depthMm: number
  readonly topMm: number
  readonly bottomMm: number
}

/** A row cut along one of its lines: the gutter with its fall, what it lies on, and the tips over it. */
export interface CutRow {
  readonly part: PartId
  readonly line: number
  readonly outletMm: number
  /** Low end of the gutter; a little past the outlet. */
  readonly toMm: number
  readonly depthMm: number
  readonly boreMm: number
  /** Inverts at the high end, at the outlet and at the low end. */
  readonly inverts: readonly CutLevel[]
  readonly water: readonly CutLevel[]
  readonly bearers: readonly CutBearer[]
  readonly tips: readonly CutLevel[]
  readonly drainCrownMm: number | undefined
}

export interface CutBearer extends CutLevel {
  readonly shimMm: number
}

export interface CutService {
  readonly name: string
  readonly what: Service['what']
  readonly sMm: number
  readonly levelMm: number
  /** Level of the bottom of the dig there; undefined outside of one. */
  readonly digMm: number | undefined
}

/** A footing on the section or near to it. */
export interface CutFooting {
  readonly part: PartId
  readonly fromMm: number
  readonly toMm: number
  readonly topMm: number
  readonly bottomMm: number
  /** How far from the section it stands, mm; 0 where it is cut. */
  readonly asideMm: number
}

export interface CutPit {
  readonly part: PartId
  readonly fromMm: number
  readonly toMm: number
  /** Its walls at the bottom, which stand closer where its sides lean. */
  readonly bottomFromMm: number
  readonly bottomToMm: number
  readonly facts: PitFacts
  readonly pumps: number
  /** Drains that come in: the one on the section first. */
  readonly inlets: readonly { readonly part: PartId; readonly invertMm: number; readonly odMm: number }[]
}
