import type { LongCut } from '../../../evaluate/longCut/section'
import type { PlotSize } from '../chart/plot'

/** From the section to px of the drawing. Levels are drawn `times` as large as lengths. */
export interface CutScale {
  readonly left: number
  readonly right: number
  readonly top: number
  readonly bottom: number
  readonly times: number
  readonly pxPerMm: number
  readonly highMm: number
  readonly lowMm: number
  readonly xOf: (sMm: number) => number
  readonly yOf: (levelMm: number) => number
  readonly levelAt: (y: number) => number
}

/** Room round the section, px: level scale, words of the pit's levels, stubs of towers and names over them, scale of lengths. */
const CUT_ROOM = { left: 64, right: 160, top: 44, bottom: 46 }

/** Exaggerations that a person can reckon with. */
const TIMES = [1, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10, 12, 15, 20, 25, 30, 40, 50]

const LEAST_RANGE_MM = 300

/** The highest and the lowest level that are drawn. A footing may go deeper: it is broken off. */
export const cutRange = (cut: LongCut): { readonly highMm: number; readonly lowMm: number } => {
  const { ground, row, outlets, drains, pit, services } = cut
  const levels = [
    ...ground.map(({ levelMm }) => levelMm),
    ...(row?.inverts.map(({ levelMm }) => levelMm + row.depthMm) ?? []),
    ...(row?.tips.map(({ levelMm }) => levelMm) ?? []),
    ...outlets.map(({ invertMm, gutter }) => invertMm + gutter.depthMm),
    ...drains.flatMap(({ highInvertMm, lowInvertMm, wallMm, bedMm, odMm }) => [
      Math.max(highInvertMm, lowInvertMm) + odMm,
      Math.min(highInvertMm, lowInvertMm) - wallMm - bedMm,
    ]),
    ...services.map(({ levelMm }) => levelMm),
    ...(pit ? [pit.facts.rimMm, pit.facts.bottomMm] : []),
  ]
  const [highMm, lowMm] = [Math.max(...levels), Math.min(...levels)]
  return { highMm, lowMm: Math.min(lowMm, highMm - LEAST_RANGE_MM) }
}

/** The largest scale at which all of a section has room, with the largest exaggeration that leaves its levels room. */
export const cutScale = (cut: LongCut, { width, height }: PlotSize): CutScale => {
  const { highMm, lowMm } = cutRange(cut)
  const [top, bottom] = [CUT_ROOM.top, Math.max(CUT_ROOM.top + 40, height - CUT_ROOM.bottom)]
  const acrossPx = Math.max(80, width - CUT_ROOM.left - CUT_ROOM.right)
  const widest = acrossPx / cut.endMm
  const tallest = (bottom - top) / (highMm - lowMm)
  const times = TIMES.findLast((each) => each * widest <= tallest) ?? 1
  const pxPerMm = Math.min(widest, tallest)
  const yPerMm = pxPerMm * times
  return {
    left: CUT_ROOM.left,
    right: CUT_ROOM.left + cut.endMm * pxPerMm,
    top,
    bottom,
    times,
    pxPerMm,
    highMm,
    lowMm,
    xOf: (sMm) => CUT_ROOM.left + sMm * pxPerMm,
    yOf: (levelMm) => top + (highMm - levelMm) * yPerMm,
    levelAt: (y) => highMm - (y - top) / yPerMm,
  }
}
