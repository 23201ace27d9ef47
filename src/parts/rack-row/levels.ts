import { polyOf } from '../../catalogue/pipe'
import { inches } from '../../units/length'
import { dropOver } from '../../units/slope'
import { rowLengthMm } from './frame'
import { isBigRack } from './joints'
import type { Materials } from './materials'
import type { RackRow } from './schema'

/** Levels of the gutters, mm above the rack datum. */
export interface TroughLevels {
  readonly runnerTopMm: number
  /** What the gutter shims stand on. */
  readonly bearerTopMm: number
  readonly fallMm: number
  readonly invertHighMm: number
  readonly invertLowMm: number
  readonly lipHighMm: number
  readonly lipLowMm: number
  /** Where the tips must hang for this gutter, this fall and these bearers. */
  readonly tipNeededMm: number
}

/** From the foot plate up to the tower tips: the first half of the stack. */
export const troughLevels = (part: RackRow, { lumber, gutter }: Materials): TroughLevels => {
  const runnerTopMm = part.footPlateMm + lumber.wideMm
  const onRunnersMm = part.base === 'short-runners' ? runnerTopMm : runnerTopMm + lumber.thickMm
  const bearerTopMm = part.bearerTopMm ?? onRunnersMm
  const fallMm = dropOver(rowLengthMm(part), part.gutterFall)
  const invertLowMm = bearerTopMm + part.leastShimMm
  const invertHighMm = invertLowMm + fallMm
  const lipHighMm = invertHighMm + gutter.depthMm
  return {
    runnerTopMm,
    bearerTopMm,
    fallMm,
    invertHighMm,
    invertLowMm,
    lipHighMm,
    lipLowMm: invertLowMm + gutter.depthMm,
    tipNeededMm: lipHighMm - part.tipBelowLipMm,
  }
}

/** Level of a gutter's invert at u, mm. */
export const invertAt = (part: RackRow, { invertHighMm }: TroughLevels, u: number): number =>
  invertHighMm - dropOver(u, part.gutterFall)

/**
 * Heights of the holes in the risers, mm from the riser's foot to the hole's centre: `plain` takes the rail, `sleeve`
 * the sleeve or the big stick. Conduit lies on the bottom of its hole, and the rail inside the bigger one a wall
 * above that, so for a level rail
 *
 *   sleeve - plain = (sleeve bit - rail bit) / 2 - wall of the bigger conduit
 */
export interface Holes {
  readonly plainMm: number
  readonly sleeveMm: number
  readonly plainBitMm: number
  readonly sleeveBitMm: number
}

/** The tie stays this far below the centre of a plain hole, and below the bottom of any. Common practice, no source. */
const TIE_BELOW_CENTRE_MM = inches(3 / 4)
const TIE_BELOW_HOLE_MM = inches(1 / 8)

/** Top edge of the top ties, mm above the rack datum. */
export const tieTopOf = ({ footPlateMm }: RackRow, holes: Holes): number => {
  const { plainMm, sleeveMm, plainBitMm, sleeveBitMm } = holes
  const lowestHoleMm = Math.min(plainMm - plainBitMm / 2, sleeveMm - sleeveBitMm / 2)
  return footPlateMm + Math.min(plainMm - TIE_BELOW_CENTRE_MM, lowestHoleMm - TIE_BELOW_HOLE_MM)
}

/** The conduit that carries the towers whose tips hang at the bay's level: J3 reckons from its big racks. */
const referenceConduit = (part: RackRow, { rail, big }: Materials) => (part.joint === 'J3' ? big : rail)

const bitsOf = ({ oneBit, railBitMm, sleeveBitMm }: RackRow) => ({
  plainBitMm: oneBit ? sleeveBitMm : railBitMm,
  sleeveBitMm,
})

/** From tower tip to the centre of the hole that carries the reference conduit, measured as foot to centre; mm. */
const tipToHole = (part: RackRow, materials: Materials): number => {
  const conduit = referenceConduit(part, materials)
  const { plainBitMm, sleeveBitMm } = bitsOf(part)
  const bitMm = part.joint === 'J3' ? sleeveBitMm : plainBitMm
  const railCentreMm = part.towerMm + part.hookMm - materials.bar.odMm - conduit.odMm / 2
  return railCentreMm + (bitMm - conduit.odMm) / 2 - part.footPlateMm
}

const holesOf = (part: RackRow, { big }: Materials, referenceMm: number): Holes => {
  const bits = bitsOf(part)
  const higherMm = part.oneBit ? 0 : (bits.sleeveBitMm - bits.plainBitMm) / 2 - big.wallMm
  return part.joint === 'J3'
    ? { ...bits, sleeveMm: referenceMm, plainMm: referenceMm - higherMm }
    : { ...bits, plainMm: referenceMm, sleeveMm: referenceMm + higherMm }
}

/** How much lower bars lie on J3's small rails than on its big ones, mm. */
const smallDrop = (part: RackRow, { rail, big }: Materials): number =>
  big.odMm - rail.odMm - (part.oneBit ? 0 : big.wallMm)

/** Laterals run so far above the bars: over the towers' tops with their hooks. Common practice, no source. */
const LATERAL_ABOVE_BAR_MM = inches(3.25)

/** A tower is off its bar when its tip is over the lip and its hook has risen by its opening. Common practice, no source. */
const HOOK_OPENING_MM = inches(1)

/** Centre of a lateral under the rails: it hangs from the lower of the two conduits, but for top ties that bear it. */
const underRail = (part: RackRow, materials: Materials, barTopMm: number, holes: Holes): number => {
  const { bar } = materials
  const halfMm = polyOf(part.lateral).odMm / 2
  const undersideMm = barTopMm - bar.odMm - referenceConduit(part, materials).odMm
  return Math.max(undersideMm - halfMm, tieTopOf(part, holes) + halfMm)
}

/** The whole stack, mm above the rack datum where nothing else is said. */
export interface RackLevels extends TroughLevels {
  /** Tips of this row, on big racks where there are two sizes. */
  readonly tipMm: number
  readonly barTopMm: number
  /** J3: how much lower everything hangs on a small rack. */
  readonly smallDropMm: number
  readonly holes: Holes
  /** Least riser for the tips that this row needs. */
  readonly riserNeededMm: number
  /** Centre of the laterals where water enters them. */
  readonly lateralMm: number
  readonly liftTopMm: number
}

/** A riser of fixed length lets the tips hang no higher than its top hole allows. */
const highestTip = (part: RackRow, materials: Materials): number =>
  part.riserMm === null ? Infinity : part.riserMm - part.topMarginMm - tipToHole(part, materials)

/**
 * Steps 1 to 9: trough, tip, bar, rail, holes, riser. The tips of all rows of a bay hang at one level, `bayTipMm`, so
 * that one drill height serves them all.
 */
export const rackLevels = (part: RackRow, materials: Materials, bayTipMm: number): RackLevels => {
  const trough = troughLevels(part, materials)
  const tipMm = Math.min(Math.max(bayTipMm, trough.tipNeededMm), highestTip(part, materials))
  const barTopMm = tipMm + part.towerMm + part.hookMm
  const toHoleMm = tipToHole(part, materials)
  const holes = holesOf(part, materials, tipMm + toHoleMm)
  const aboveBarsMm = barTopMm + LATERAL_ABOVE_BAR_MM
  return {
    ...trough,
    tipMm,
    barTopMm,
    smallDropMm: part.joint === 'J3' ? smallDrop(part, materials) : 0,
    holes,
    riserNeededMm: Math.max(tipMm, trough.tipNeededMm) + toHoleMm + part.topMarginMm,
    lateralMm: part.lateralAt === 'above-bars' ? aboveBarsMm : underRail(part, materials, barTopMm, holes),
    // A hook that is lifted off its bar reaches as high wherever the laterals lie.
    liftTopMm: aboveBarsMm + Math.max(0, trough.lipHighMm - tipMm) + HOOK_OPENING_MM,
  }
}

/** Top of the bars on a rack, mm. */
export const barTopOf = (part: RackRow, levels: RackLevels, rack: number): number =>
  levels.barTopMm - (part.joint === 'J3' && !isBigRack(part, rack) ? levels.smallDropMm : 0)

/** Where tower tops hang on a rack: the hook ring, mm. */
export const towerTopOf = (part: RackRow, levels: RackLevels, rack: number): number =>
  barTopOf(part, levels, rack) - part.hookMm
