import { drainPipeOf } from '../../catalogue/pipe'
import type { Built } from '../../model/built'
import type { PartId } from '../../model/ids'
import { DRAIN_BACK_UNDER_OVERFLOW_MM, type PitFacts } from '../../model/pitFacts'
import type { DrainReturn, PitReturn, PitState, Transit, TroughReturn } from '../../model/returns'
import { volumeL } from '../../solvers/gravity/basin'
import { MINUTES_PER_HOUR } from '../../units/time'
import type { ReturnInputs } from '../4-returns'
import { type BackThrough, backThroughPumps, NOTHING_BACK } from './backThrough'
import { homeward } from './homeward'
import { boreMm2, litresIn } from './pipes'
import { type RowTransit, rowTransit } from './transit'

/** What runs in troughs and drains, and so what stands in them when the pump stops. */
export interface Running {
  readonly troughs: ReadonlyMap<PartId, TroughReturn>
  readonly drains: ReadonlyMap<PartId, DrainReturn>
}

/** A drain is reckoned to hold at least this share of what its bore does, for roots hold water back. Common practice, no source. */
const DRAIN_SHARE = 1 / 4

/** A quarter more than what comes home, as pits are sized. Common practice, no source. */
const DESIGN_TIMES = 1.25

/** Litres nearer than this are the same. */
const CLOSE_L = 1e-6

const drainL = (drain: PartId, { drains }: Running, { builtOf, levels }: ReturnInputs): number => {
  const stock = builtOf.get(drain)?.tubes.find(({ role }) => role === 'drain')?.stock
  const run = levels.drains.get(drain)
  if (stock === undefined || !run) return 0
  const quarterL = DRAIN_SHARE * litresIn(boreMm2(drainPipeOf(stock).idMm), run.lengthMm)
  return Math.max(quarterL, drains.get(drain)?.standingL ?? 0)
}

/** Where the water of one pit comes from. */
interface Sources {
  readonly drains: readonly PartId[]
  /** With the share of a row's lines whose water comes here. */
  readonly rows: ReadonlyMap<PartId, number>
  readonly back: BackThrough
}

const transitOf = (
  { drains, rows, back }: Sources,
  transits: ReadonlyMap<PartId, RowTransit>,
  running: Running,
  inputs: ReturnInputs,
): Transit => {
  let [towersL, troughsL, lateralsL] = [0, 0, back.risersL]
  for (const [row, share] of rows) {
    const transit = transits.get(row)
    if (!transit) continue
    towersL += share * transit.towersL
    troughsL += share * transit.troughsL
    lateralsL += share * transit.overTubesL
  }
  const drainsL = drains.reduce((sum, drain) => sum + drainL(drain, running, inputs), 0)
  const totalL = towersL + troughsL + drainsL + back.mainsL + lateralsL
  return { towersL, troughsL, drainsL, mainsL: back.mainsL, lateralsL, totalL }
}

const stateOf = (toMarginL: number, toOverflowL: number, designL: number, transitL: number): PitState => {
  if (toMarginL >= designL - CLOSE_L) return 'Holds'
  return toOverflowL >= transitL - CLOSE_L ? 'Thin' : 'Spills'
}

/** How a pit's depth is spent. */
const budgetOf = (pit: PitFacts, { totalL }: Transit, alarmMin: number) => {
  const underL = (levelMm: number): number => volumeL(pit.basin, levelMm - pit.bottomMm)
  const runningL = underL(pit.runningMm)
  const overflowL = underL(pit.overflowMm)
  const roomL = underL(pit.overflowMm - DRAIN_BACK_UNDER_OVERFLOW_MM) - runningL
  const deadL = underL(pit.pumpOffMm)
  const designL = DESIGN_TIMES * totalL
  return {
    designL,
    deadL,
    swingL: runningL - deadL,
    roomL,
    freeboardL: underL(pit.rimMm) - overflowL,
    surgeL: (pit.makeUpLph * alarmMin) / MINUTES_PER_HOUR,
    state: stateOf(roomL, overflowL - runningL, designL, totalL),
  }
}

/** What comes in at a pit's own drains: lines that end on others come with these. */
const inOf = (pit: PartId, { joins }: ReturnInputs, { drains }: Running): number =>
  joins.reduce(
    (sum, { kind, from, to }) =>
      kind === 'drain-to-pit' && to === pit ? sum + (drains.get(from)?.flowLph ?? 0) : sum,
    0,
  )

const pitReturn = (
  { part }: Built,
  pit: PitFacts,
  sources: Sources,
  transits: ReadonlyMap<PartId, RowTransit>,
  running: Running,
  inputs: ReturnInputs,
): PitReturn => {
  const transit = transitOf(sources, transits, running, inputs)
  return {
    part,
    drains: sources.drains,
    rows: [...sources.rows.keys()],
    inLph: inOf(part, inputs, running),
    transit,
    ...budgetOf(pit, transit, inputs.settings.alarmMin),
  }
}

const rowTransits = (inputs: ReturnInputs, { troughs }: Running): ReadonlyMap<PartId, RowTransit> =>
  new Map(
    inputs.built
      .filter(({ trough, feed }) => trough !== undefined || feed !== undefined)
      .map((built) => [built.part, rowTransit(built, troughs.get(built.part), inputs)]),
  )

/** What comes to every pit as it runs and when its pumps stop, and whether it has room. */
export const pitReturns = (inputs: ReturnInputs, running: Running): ReadonlyMap<PartId, PitReturn> => {
  const pits = inputs.built.filter(({ pit }) => pit !== undefined)
  if (pits.length === 0) return new Map()
  const { drains, rows } = homeward(inputs)
  const transits = rowTransits(inputs, running)
  const back = backThroughPumps(inputs, transits)
  return new Map(
    pits.flatMap((built) => {
      const { part, pit } = built
      const sources = {
        drains: drains.get(part) ?? [],
        rows: rows.get(part) ?? new Map<PartId, number>(),
        back: back.get(part) ?? NOTHING_BACK,
      }
      return pit ? [[part, pitReturn(built, pit, sources, transits, running, inputs)] as const] : []
    }),
  )
}
