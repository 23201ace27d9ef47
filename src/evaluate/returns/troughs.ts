import { gutterOf } from '../../catalogue/gutter'
import type { Bay } from '../../checks/context'
import type { Built } from '../../model/built'
import type { PartId } from '../../model/ids'
import type { TroughReturn } from '../../model/returns'
import type { TroughFacts } from '../../model/troughFacts'
import type { RowWater } from '../../model/water'
import { growthMm } from '../../solvers/gravity/growth'
import { ventedLph } from '../../solvers/gravity/outlet'
import type { Profile } from '../../solvers/gravity/profile'
import { inches } from '../../units/length'
import { dropOver } from '../../units/slope'
import { fallOnSite, type TroughLine, troughLines } from './troughLines'
import { troughWater } from './troughWater'

type TroughInputs = Pick<Bay, 'built' | 'levels' | 'settings' | 'water'>

/** From a frosty night to a hot noon under plastic, degrees C. Common practice, no source. */
const SWING_C = 30

/** Left at each joiner for the gutter to grow. Common practice, no source. */
const JOINER_ROOM_MM = inches(1 / 4)

interface LineFlow extends TroughLine {
  readonly flowLph: number
}

/** What each line of a part's troughs carries: what its tubes give, or what is wanted of its towers where nothing was solved. */
const lineFlows = (
  built: Built,
  facts: TroughFacts,
  water: RowWater | undefined,
  targetLph: number,
): LineFlow[] =>
  troughLines(built, facts).map((line) => {
    let flowLph = line.towers.length * targetLph
    if (water) {
      flowLph = 0
      for (const tower of line.towers) flowLph += Math.max(0, water.tubeLph[tower] ?? 0)
    }
    return { ...line, flowLph }
  })

/** How far along a profile so many mm from the high end are: the index of the first place there or beyond it. */
const depthAt = (
  { alongMm, depthMm }: Profile,
  mm: number,
  from: number,
): { depthMm: number; index: number } => {
  let index = from
  while (index < alongMm.length - 1 && (alongMm[index] ?? 0) < mm) index += 1
  const [before, after] = [Math.max(0, index - 1), index]
  const [a, b] = [alongMm[before] ?? 0, alongMm[after] ?? 0]
  const share = b > a ? Math.min(1, Math.max(0, (mm - a) / (b - a))) : 0
  return { depthMm: (depthMm[before] ?? 0) * (1 - share) + (depthMm[after] ?? 0) * share, index }
}

/** From the tips to the water under them, where it is least, mm. */
const tipAir = ({ dripsMm }: TroughLine, facts: TroughFacts, profile: Profile): number | undefined => {
  const { tipOverHighInvertMm, fallMmPerM } = facts
  if (tipOverHighInvertMm === undefined || dripsMm.length === 0) return undefined
  let [least, index] = [Infinity, 0]
  for (const mm of dripsMm) {
    const water = depthAt(profile, mm, index)
    index = water.index
    least = Math.min(least, tipOverHighInvertMm + dropOver(mm, fallMmPerM) - water.depthMm)
  }
  return least
}

/** Film behind the outlet when nothing runs, at the end that lies lower than the outlet, mm. */
const puddle = ({ runMm, outletFromHighMm }: TroughFacts, fallMmPerM: number): number =>
  Math.max(
    dropOver(Math.max(0, runMm - outletFromHighMm), fallMmPerM),
    dropOver(outletFromHighMm, -fallMmPerM),
  )

const most = (lines: readonly LineFlow[]): LineFlow | undefined =>
  lines.reduce<LineFlow | undefined>(
    (best, line) => (best && best.flowLph >= line.flowLph ? best : line),
    undefined,
  )

const returnOf = (built: Built, facts: TroughFacts, inputs: TroughInputs): TroughReturn | undefined => {
  const { settings, water, levels } = inputs
  const row = water.rows.get(built.part)
  const lines = lineFlows(built, facts, row, settings.targetLph)
  const worst = most(lines)
  const at = (line: LineFlow) => troughWater(built, line.line, line.flowLph, inputs)
  const held = worst && at(worst)
  if (!worst || !held) return undefined
  const { profile, blockedMm } = held
  const { depthMm, growthPerC } = gutterOf(facts.gutter)
  return {
    part: built.part,
    line: worst.line,
    towers: worst.towers.length,
    flowLph: worst.flowLph,
    totalLph: lines.reduce((sum, { flowLph }) => sum + flowLph, 0),
    isWanted: row === undefined && worst.towers.length > 0,
    deepestMm: profile.deepestMm,
    deepestAtMm: profile.deepestAtMm,
    outletDepthMm: profile.outletDepthMm,
    outletRegime: profile.outletRegime,
    ventedLph: ventedLph(facts.outletBoreMm),
    standingL: lines.reduce((sum, line) => sum + (at(line)?.profile.standingL ?? 0), 0),
    puddleMm: puddle(facts, fallOnSite(built, levels)),
    freeboardMm: depthMm - profile.deepestMm,
    blockedFreeboardMm: depthMm - blockedMm(),
    tipAirMm: tipAir(worst, facts, profile),
    growthMm: growthMm(facts.runMm, growthPerC, SWING_C),
    growthRoomMm: facts.joiners * JOINER_ROOM_MM,
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
