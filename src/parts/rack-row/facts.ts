import { widthAtDepth } from '../../catalogue/gutter'
import { offset, turnHeading, type Heading } from '../../geometry/motion'
import type { BearerShim, DrilledFor, RackFace, RackFacts, RailJoint } from '../../model/rackFacts'
import { inches } from '../../units/length'
import { canopyHalfMm } from './bodies'
import { insertedMm, jointHalfMm } from './joints'
import { invertAt } from './levels'
import { standingPairs } from './pairs'
import type { RackPlan } from './plan'
import type { RackRow } from './schema'

/** A tip hangs over the invert by the water's depth and 3/4 in of air. Common practice, no source. */
const TIP_OVER_INVERT_MM = inches(1)

/** And below the lip even at the low end, so that nothing splashes out. Common practice, no source. */
const TIP_BELOW_LIP_MM = inches(1 / 4)

/** The run over which the fall uses up the window between drowned and splashing tips, mm. */
const longestRun = ({ part, materials: { gutter } }: RackPlan): number =>
  ((gutter.depthMm - TIP_OVER_INVERT_MM - TIP_BELOW_LIP_MM) / part.gutterFall) * 1000

/** Clear gap between a riser and the bar nearest to one, mm; negative where they meet, Infinity without a riser. */
const barToRiser = ({ part, positions, materials }: RackPlan): number => {
  if (part.carriedBy === 'house') return Infinity
  let leastMm = Infinity
  for (const bar of positions.barU)
    for (const pair of positions.pairU) leastMm = Math.min(leastMm, Math.abs(bar - pair))
  return leastMm - materials.lumber.thickMm / 2 - materials.bar.odMm / 2
}

/** From the outlets' place along the row to the bar nearest to it, mm. */
const outletToStation = ({ positions: { barU, outletU } }: RackPlan): number =>
  barU.reduce((least, u) => Math.min(least, Math.abs(u - outletU)), Infinity)

/** Bars stand half a pitch off every rack line, so that is how near one comes to a joint. */
const barToSleeve = ({ part, positions, materials }: RackPlan): number =>
  part.racks === 1 ? Infinity : positions.pitchMm / 2 - jointHalfMm(part) - materials.bar.odMm / 2

const faceAt = ({ part, positions }: RackPlan, rightMm: number, facing: Heading): RackFace => ({
  from: offset(part.at, part.heading, 0, rightMm),
  to: offset(part.at, part.heading, positions.lengthMm, rightMm),
  facing,
})

const sizeFacts = (plan: RackPlan, towers: number) => {
  const { part, positions } = plan
  const halfMm = canopyHalfMm(plan)
  return {
    racks: part.racks,
    lines: part.lines,
    stations: positions.barU.length,
    towers,
    sites: towers * part.sites,
    pitchMm: positions.pitchMm,
    lineSpacingMm: part.lineSpacingMm,
    lineReachMm: positions.lineV.map((v) => v + halfMm),
    bodyMm: part.bodyMm,
    barToRiserMm: barToRiser(plan),
    barToSleeveMm: barToSleeve(plan),
    outletToStationMm: outletToStation(plan),
    runMm: positions.lengthMm,
    longestRunMm: longestRun(plan),
  }
}

/**
 * From the top of each bearer up to the invert above it: the least shim at the low end, and more by the fall as far as
 * the bearer stands uphill of it.
 */
const bearerShims = ({ part, levels, positions }: RackPlan): BearerShim[] =>
  positions.bearerU.map((u) => ({
    fromHighMm: u,
    shimMm: invertAt(part, levels, u) - levels.bearerTopMm,
  }))

/** What the risers are drilled for, plain holes first; only holes that there are. */
const drilledFor = (plan: RackPlan): DrilledFor[] => {
  const { plainBitMm, sleeveBitMm } = plan.levels.holes
  const { rail, big } = plan.materials
  const pairs = standingPairs(plan)
  return [
    { isBig: false, conduit: rail, bitMm: plainBitMm },
    { isBig: true, conduit: big, bitMm: sleeveBitMm },
  ].flatMap(({ isBig, conduit: { key, odMm }, bitMm }) =>
    pairs.some((pair) => pair.isBig === isBig) ? [{ stock: key, odMm, bitMm }] : [],
  )
}

const railJoint = ({ part, materials }: RackPlan): RailJoint | undefined => {
  if (part.racks === 1 || part.joint === 'J5') return undefined
  const { rail, big, dowel } = materials
  const insertionMm = insertedMm(part, materials)
  return part.joint === 'J4'
    ? { goesIn: 'dowel', insideOdMm: dowel.odMm, boreMm: rail.idMm, insertionMm }
    : { goesIn: 'rail', insideOdMm: rail.odMm, boreMm: big.idMm, insertionMm }
}

const levelFacts = (plan: RackPlan) => {
  const { part, levels, positions, materials, lengths } = plan
  const { plainMm, sleeveMm, plainBitMm, sleeveBitMm } = levels.holes
  return {
    tipMm: levels.tipMm,
    tipNeededMm: levels.tipNeededMm,
    tipLowestMm: levels.invertHighMm + TIP_OVER_INVERT_MM,
    tipHighestMm: levels.lipLowMm - TIP_BELOW_LIP_MM,
    lipHighMm: levels.lipHighMm,
    lipLowMm: levels.lipLowMm,
    invertHighMm: levels.invertHighMm,
    invertOutletMm: invertAt(part, levels, positions.outletU),
    invertLowMm: levels.invertLowMm,
    bearerTopMm: levels.bearerTopMm,
    bearerShims: bearerShims(plan),
    barTopMm: levels.barTopMm,
    lateralMm: levels.lateralMm,
    liftTopMm: levels.liftTopMm,
    plainHoleMm: plainMm,
    sleeveHoleMm: sleeveMm,
    plainHoleBottomMm: plainMm - plainBitMm / 2,
    sleeveHoleBottomMm: sleeveMm - sleeveBitMm / 2,
    drilledFor: drilledFor(plan),
    railJoint: railJoint(plan),
    riserMm: lengths.riserMm,
    riserNeededMm: levels.riserNeededMm,
    tipWidthMm: part.tipMm,
    // Where the trough is narrowest around a tip: at the high end, where the tip hangs deepest.
    troughAtTipMm: widthAtDepth(materials.gutter, levels.lipHighMm - levels.tipMm),
  }
}

/** What its loads and its checks must know of how it is built. */
const builtFacts = ({ joint, carriedBy, bracing, hold, treated, drips, weighedKg }: RackRow) => ({
  joint,
  carriedBy,
  bracing,
  hold,
  treated,
  drips,
  towerKg: weighedKg ?? undefined,
})

/** What the row says about itself, for checks that must not know its parameters. */
export const rackFacts = (plan: RackPlan, towers: number): RackFacts => {
  const halfMm = canopyHalfMm(plan)
  const { heading } = plan.part
  return {
    ...sizeFacts(plan, towers),
    ...levelFacts(plan),
    ...builtFacts(plan.part),
    leftFace: faceAt(plan, -halfMm, turnHeading(heading, 1)),
    rightFace: faceAt(plan, halfMm, turnHeading(heading, 3)),
  }
}
