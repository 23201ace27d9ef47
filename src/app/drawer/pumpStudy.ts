import type { WaterInputs } from '../../evaluate/water/plan'
import { planOf } from '../../evaluate/water/planOf'
import { waterOfPlan } from '../../evaluate/water/waterOf'
import type { PartId } from '../../model/ids'
import type { PumpFacts } from '../../model/supplyFacts'
import type { Water } from '../../model/water'
import { headAt, pumpCurveOf } from '../../solvers/water/pumpCurve'
import { fromM3PerS, toM3PerS } from '../../units/flow'
import { headM, toHeadM } from '../../units/head'

/** What a pump does at one speed, and what the towers get of it. */
export interface Duty {
  /** Share of the speed that its curve was taken at. */
  readonly speed: number
  readonly flowLph: number
  readonly headMm: number
  readonly watts: number
  readonly meanLph: number
  readonly leastLph: number
}

/** A pump's pit solved at several speeds, which traces what the network asks of it, exactly. */
export interface Trace {
  /** By rising speed; only where water comes to the towers. */
  readonly duties: readonly Duty[]
  /** At its own speed; undefined where the water could not be solved. */
  readonly own: Duty | undefined
}

export interface PumpStudy {
  readonly clean: Trace
  readonly dirty: Trace
}

/** From a pump that hardly lifts to one a size up. */
const SPEEDS = [0.6, 0.7, 0.8, 0.9, 1, 1.1, 1.2, 1.3]

const dutyOf = ({ pumps, bay }: Water, pit: PartId, speed: number): Duty | undefined => {
  const pump = pumps.get(pit)
  return (
    pump && {
      speed,
      flowLph: pump.flowLph,
      headMm: pump.headMm,
      watts: pump.watts,
      meanLph: bay?.meanLph ?? 0,
      leastLph: bay?.least.flowLph ?? 0,
    }
  )
}

const traceOf = (all: readonly Duty[]): Trace => ({
  duties: all.filter(({ meanLph }) => meanLph > 0),
  own: all.find(({ speed }) => speed === 1),
})

/**
 * What the network asks of the pumps of a pit at flows above and below their own, with the filter clean and due for
 * cleaning. All pumps of the bay are sped up alike. It is some sixteen solutions of the whole bay, so it stops after each
 * for whoever has more pressing things to do, and returns at the end.
 */
export function* studySteps(inputs: WaterInputs, pit: PartId): Generator<undefined, PumpStudy> {
  const plan = planOf(inputs)
  const solved: Record<'clean' | 'dirty', Duty[]> = { clean: [], dirty: [] }
  for (const filter of ['clean', 'dirty'] as const)
    for (const pumpSpeed of SPEEDS) {
      const duty = dutyOf(waterOfPlan(plan, { filter, pumpSpeed }), pit, pumpSpeed)
      if (duty) solved[filter].push(duty)
      yield undefined
    }
  return { clean: traceOf(solved.clean), dirty: traceOf(solved.dirty) }
}

/** Flow and head. */
export interface CurvePoint {
  readonly flowLph: number
  readonly headMm: number
}

const CURVE_STEPS = 24

/** The smooth curve of `pumps` like pumps side by side, at full speed, as far as its last point. */
export const pumpCurve = ({ curve }: PumpFacts, pumps: number): readonly CurvePoint[] => {
  const smooth = pumpCurveOf({
    flowM3S: Float64Array.from(curve, ({ flowLph }) => toM3PerS(flowLph)),
    headM: Float64Array.from(curve, ({ headMm }) => toHeadM(headMm)),
  })
  if (!smooth.ok) return []
  const mostM3S = smooth.flowM3S.at(-1) ?? 0
  return Array.from({ length: CURVE_STEPS + 1 }, (_, i) => {
    const flowM3S = (mostM3S * i) / CURVE_STEPS
    return { flowLph: pumps * fromM3PerS(flowM3S), headMm: headM(headAt(smooth, flowM3S, 1)) }
  })
}

/** What a pump would have to do for the towers to get `meanLph` on average; undefined outside what was traced. */
export const dutyFor = ({ duties }: Trace, meanLph: number): CurvePoint | undefined => {
  const after = duties.findIndex((duty) => duty.meanLph >= meanLph)
  const [a, b] = [duties[after - 1], duties[after]]
  if (!a || !b) return undefined
  const share = (meanLph - a.meanLph) / (b.meanLph - a.meanLph)
  return {
    flowLph: a.flowLph + share * (b.flowLph - a.flowLph),
    headMm: a.headMm + share * (b.headMm - a.headMm),
  }
}
