import { fitScale, type Scale } from '../../drawing/paper'
import { groundAt } from '../../evaluate/longCut/groundAt'
import type { CutDrain, CutLevel, LongCut } from '../../evaluate/longCut/section'
import type { Box } from '../../geometry/box'
import { inches, type Units } from '../../units/length'

/** Levels are drawn so many times as large as lengths, as long sections are. Common practice, no source. */
export const TIMES = 10

/** Air over and under what is drawn, mm of level. */
const AIR_MM = inches(1)

/** Level of the bottom of the dig under an invert, mm. */
export const digBottom = ({ wallMm, bedMm }: CutDrain, invertMm: number): number => invertMm - wallMm - bedMm

const levelsOfPit = ({ pit }: LongCut): readonly number[] =>
  pit ? [pit.facts.rimMm, pit.facts.overflowMm - AIR_MM, ...pit.inlets.map(({ invertMm }) => invertMm)] : []

/** A buried line nearer than this under the dig is shown with it. Common practice, no source. */
const NEAR_DIG_MM = inches(12)

const nearServices = ({ services }: LongCut, lowestMm: number): readonly number[] =>
  services.map(({ levelMm }) => levelMm - AIR_MM).filter((mm) => mm > lowestMm - NEAR_DIG_MM)

/** From the tops of the pegs down to the bottom of the trench; a pit that goes deeper is broken off. mm. */
export const sectionRange = (cut: LongCut): { readonly highMm: number; readonly lowMm: number } => {
  const levels = [
    ...cut.ground.map(({ levelMm }) => levelMm),
    ...levelsOfPit(cut),
    ...cut.drains.flatMap((drain) => [
      ...drain.pegs.map(({ pegTopMm }) => pegTopMm),
      Math.max(drain.highInvertMm, drain.lowInvertMm) + drain.odMm,
      digBottom(drain, Math.min(drain.highInvertMm, drain.lowInvertMm)),
    ]),
  ]
  const lowMm = Math.min(...levels)
  return {
    highMm: Math.max(...levels) + AIR_MM,
    lowMm: Math.min(lowMm, ...nearServices(cut, lowMm)) - AIR_MM,
  }
}

/** From the section to the paper, mm. */
export interface SectionView {
  /** Where the section itself is drawn. */
  readonly box: Box
  readonly scale: Scale
  readonly lowMm: number
  readonly highMm: number
  readonly xOf: (sMm: number) => number
  readonly yOf: (levelMm: number) => number
  readonly at: (level: CutLevel) => { readonly x: number; readonly y: number }
}

/** The largest standard scale at which a section fits its room, levels ten times as large. */
export const sectionView = (
  cut: LongCut,
  room: { readonly widthMm: number; readonly heightMm: number },
  corner: { readonly x: number; readonly y: number },
  units: Units,
): SectionView => {
  const { highMm, lowMm } = sectionRange(cut)
  const scale = fitScale({ widthMm: cut.endMm, heightMm: (highMm - lowMm) * TIMES }, room, units)
  const xOf = (sMm: number) => corner.x + sMm / scale.ratio
  const yOf = (levelMm: number) => corner.y + ((levelMm - lowMm) * TIMES) / scale.ratio
  return {
    box: { x0: corner.x, y0: corner.y, x1: xOf(cut.endMm), y1: yOf(highMm) },
    scale,
    lowMm,
    highMm,
    xOf,
    yOf,
    at: ({ sMm, levelMm }) => ({ x: xOf(sMm), y: yOf(levelMm) }),
  }
}

/** The floor between two places of the section, both included. */
export const floorBetween = (cut: LongCut, fromMm: number, toMm: number): readonly CutLevel[] => [
  { sMm: fromMm, levelMm: groundAt(cut, fromMm) },
  ...cut.ground.filter(({ sMm }) => sMm > fromMm && sMm < toMm),
  { sMm: toMm, levelMm: groundAt(cut, toMm) },
]

/** A drain's two ends at a height over its invert, mm. */
export const slopeOver = (drain: CutDrain, overMm: number): readonly [CutLevel, CutLevel] => [
  { sMm: drain.fromMm, levelMm: drain.highInvertMm + overMm },
  { sMm: drain.toMm, levelMm: drain.lowInvertMm + overMm },
]
