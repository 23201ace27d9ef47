import { gutterOf } from '../../catalogue/gutter'
import type { Bay } from '../../checks/context'
import type { Built } from '../../model/built'
import type { PartId } from '../../model/ids'
import type { TroughReturn } from '../../model/returns'
import type { TroughFacts } from '../../model/troughFacts'
import type { RowWater } from '../../model/water'
import { growthMm } from '../../solvers/gravity/growth'
import { ventedLph } from '../../solvers/gravity/outlet'
import { inches } from '../../units/length'
import { dropOver } from '../../units/slope'
import { fallOnSite, type TroughLine, troughLines } from './troughLines'
import { type TroughWater, troughWaters } from './troughWater'

type TroughInputs = Pick<Bay, 'built' | 'levels' | 'settings' | 'water'>

/** Left at each joiner for the gutter to grow. Common practice, no source. */
const JOINER_ROOM_MM = inches(1 / 4)

/** What each line of a part's troughs carries, L/h: what its tubes give, or what is wanted of its towers where nothing was solved. */
const lineFlows = (
  lines: readonly TroughLine[],
  water: RowWater | undefined,
  targetLph: number,
): readonly number[] =>
  lines.map(({ towers }) => {
    if (!water) return towers.length * targetLph
    let flowLph = 0
    for (const tower of towers) flowLph += Math.max(0, water.tubeLph[tower] ?? 0)
    return flowLph
  })

/** Film behind the outlet when nothing runs, at the end that lies lower than the outlet, mm. */
const puddle = ({ runMm, outletFromHighMm }: TroughFacts, fallMmPerM: number): number =>
  Math.max(
    dropOver(Math.max(0, runMm - outletFromHighMm), fallMmPerM),
    dropOver(outletFromHighMm, -fallMmPerM),
  )

const tipAir = (facts: TroughFacts, { towers }: TroughLine, water: TroughWater): number | undefined =>
  facts.tipOverHighInvertMm === undefined || towers.length === 0
    ? undefined
    : facts.tipOverHighInvertMm + water.airMm()

const sumOf = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0)

/** Each joiner takes up what one section grows; the ends are free. */
const growthOf = ({ gutter, runMm, joiners }: TroughFacts, swingC: number) => {
  const { growthPerC, sectionMm } = gutterOf(gutter)
  return {
    growthMm: growthMm(runMm, growthPerC, swingC),
    joinerGrowthMm: joiners > 0 ? growthMm(sectionMm, growthPerC, swingC) : 0,
    joinerRoomMm: joiners > 0 ? JOINER_ROOM_MM : 0,
  }
}

/** Of the gutter itself, whatever runs in it. */
const dryFacts = (built: Built, facts: TroughFacts, { levels, settings }: TroughInputs) => ({
  ventedLph: ventedLph(facts.outletBoreMm),
  puddleMm: puddle(facts, fallOnSite(built, levels)),
  ...growthOf(facts, settings.swingC),
})

const wetFacts = (facts: TroughFacts, line: TroughLine, water: TroughWater) => {
  const { profile } = water
  const { depthMm } = gutterOf(facts.gutter)
  return {
    deepestMm: profile.deepestMm,
    deepestAtMm: profile.deepestAtMm,
    outletDepthMm: profile.outletDepthMm,
    outletRegime: profile.outletRegime,
    freeboardMm: depthMm - profile.deepestMm,
    blockedFreeboardMm: depthMm - water.blockedMm(),
    tipAirMm: tipAir(facts, line, water),
  }
}

const returnOf = (built: Built, facts: TroughFacts, inputs: TroughInputs): TroughReturn | undefined => {
  const { settings, water } = inputs
  const row = water.rows.get(built.part)
  const lines = troughLines(built, facts)
  const flows = lineFlows(lines, row, settings.targetLph)
  const waters = troughWaters(built, flows, inputs)
  const flowLph = Math.max(...flows)
  const worst = flows.indexOf(flowLph)
  const [line, most] = [lines[worst], waters[worst]]
  if (!line || !most) return undefined
  return {
    part: built.part,
    line: line.line,
    towers: line.towers.length,
    flowLph,
    totalLph: sumOf(flows),
    isWanted: row === undefined && line.towers.length > 0,
    standingL: waters.reduce((sum, { profile }) => sum + profile.standingL, 0),
    ...dryFacts(built, facts, inputs),
    ...wetFacts(facts, line, most),
  }
}

/** What runs in the troughs of every row and in every lone trough, told by the line that carries most. */
export const troughReturns = (inputs: TroughInputs): ReadonlyMap<PartId, TroughReturn> => {
  const found = new Map<PartId, TroughReturn>()
  for (const built of inputs.built) {
    const known = built.trough && returnOf(built, built.trough, inputs)
    if (known) found.set(built.part, known)
  }
  return found
}
