import type { Bay } from '../../checks/context'
import { between, distance, type Point } from '../../geometry/point'
import type { Built } from '../../model/built'
import type { PartId } from '../../model/ids'
import { datumAt, siteLevel } from '../../model/levels'
import type { TroughFacts } from '../../model/troughFacts'
import { dropOver } from '../../units/slope'
import { floorOf, type Leg, legAfter } from './legs'
import { gutterCut } from './outlets'
import type { CutBearer, CutLevel, CutRow } from './section'

/** A row with the gutter of one line, on the floor from its high end to its outlet. */
export interface RowLeg {
  readonly built: Built
  readonly trough: TroughFacts
  readonly line: number
  readonly leg: Leg
}

/** The line whose gutter is cut: the one that carries most, once that is known. */
const cutLine = (bay: Bay, part: PartId): number => bay.returns.troughs.get(part)?.line ?? 1

const awayFrom = (at: Point, from: Point, to: Point, mm: number): Point =>
  between(at, { x: at.x - (to.x - from.x), y: at.y - (to.y - from.y) }, mm / distance(from, to))

/** The leg over a row's gutter; undefined for a part without troughs. */
export const rowLeg = (bay: Bay, part: PartId): RowLeg | undefined => {
  const built = bay.builtOf.get(part)
  const gutter = built?.sticks.find(({ mark }) => mark === 'GT')
  if (!built?.trough || !gutter) return undefined
  const outlets = built.mouths.filter(({ role }) => role === 'trough-outlet')
  const wanted = cutLine(bay, part)
  const outlet = outlets.find(({ line }) => line === wanted) ?? outlets[0]
  if (!outlet) return undefined
  // Sections are laid from the high end down.
  const high = awayFrom(outlet.at, gutter.from, gutter.to, built.trough.outletFromHighMm)
  const leg = legAfter(undefined, [high, outlet.at], 0)
  return { built, trough: built.trough, line: outlet.line, leg }
}

/** Inverts so far from the high end, from the outlet's own. */
const invertsOf = (bay: Bay, { built, trough, line, leg }: RowLeg): CutLevel[] => {
  const outlet = built.mouths.find((mouth) => mouth.role === 'trough-outlet' && mouth.line === line)
  if (!outlet) return []
  const { outletFromHighMm, runMm, fallMmPerM } = trough
  const datum = (sMm: number) => datumAt(bay.levels, built.part, floorOf(leg, sMm))
  const outletMm = siteLevel(bay.levels, built, outlet.at)
  return [0, outletFromHighMm, runMm].map((sMm) => ({
    sMm,
    levelMm: outletMm + dropOver(outletFromHighMm - sMm, fallMmPerM) + datum(sMm) - datum(outletFromHighMm),
  }))
}

const waterOf = (bay: Bay, part: PartId, outletMm: number): CutLevel[] => {
  const water = bay.returns.troughs.get(part)
  return water
    ? [
        { sMm: Math.min(water.deepestAtMm, outletMm), levelMm: water.deepestMm },
        { sMm: outletMm, levelMm: water.outletDepthMm },
      ]
    : []
}

const bearersOf = (bay: Bay, { built, leg }: RowLeg): CutBearer[] =>
  (built.rack?.bearerShims ?? []).map(({ fromHighMm, shimMm }) => ({
    sMm: fromHighMm,
    levelMm: datumAt(bay.levels, built.part, floorOf(leg, fromHighMm)) + (built.rack?.bearerTopMm ?? 0),
    shimMm,
  }))

const tipsOf = (bay: Bay, { built, trough, leg }: RowLeg): CutLevel[] => {
  const { rack } = built
  if (!rack) return []
  return trough.stationFromHighMm
    .map((sMm) => ({ sMm, levelMm: datumAt(bay.levels, built.part, floorOf(leg, sMm)) + rack.tipMm }))
    .toSorted((a, b) => a.sMm - b.sMm)
}

/** The row as it is drawn on the section; `drainCrownMm` where its outlet drops into one. */
export const cutRow = (bay: Bay, row: RowLeg, drainCrownMm: number | undefined): CutRow => {
  const { built, trough, line } = row
  return {
    part: built.part,
    line,
    outletMm: trough.outletFromHighMm,
    toMm: trough.runMm,
    depthMm: gutterCut(trough).depthMm,
    boreMm: trough.outletBoreMm,
    inverts: invertsOf(bay, row),
    water: waterOf(bay, built.part, trough.outletFromHighMm),
    bearers: bearersOf(bay, row),
    tips: tipsOf(bay, row),
    drainCrownMm,
  }
}
