import { drainPipeOf } from '../../catalogue/pipe'
import { pointAlong, segmentsOf } from '../../geometry/polyline'
import type { Built } from '../../model/built'
import { drainState, fallState, worstDrainState } from '../../model/drainState'
import type { PartId } from '../../model/ids'
import { rememberEach } from '../../model/remember'
import type { DrainReach, DrainReturn } from '../../model/returns'
import { fillDepthMm } from '../../solvers/gravity/fill'
import { flowForVelocityLph, halfFullLph, velocityMS } from '../../solvers/gravity/manning'
import { areaMm2, type Section } from '../../solvers/gravity/section'
import { feetPerSecond } from '../../units/velocity'
import type { ReturnInputs } from '../4-returns'
import { type Inflow, type Inflows, inflowsOf } from './inputs'
import { litresIn } from './pipes'

/** Places on a drain nearer than this are one: outlets over the same station of two lines. */
const SAME_PLACE_MM = 1

/** At 2 ft/s a sewer scours itself clean. Recommended Standards for Wastewater Facilities (2014), 33.41. */
const SCOUR_MS = feetPerSecond(2)

/** A drain as its water meets it. */
interface Line {
  readonly part: PartId
  readonly path: Built['tubes'][number]['path']
  readonly lengthMm: number
  /** Of its bends, from the high end. */
  readonly bendsMm: readonly number[]
  readonly section: Section & { readonly shape: 'circle' }
  readonly slopeMmPerM: number
  readonly leastMmPerM: number
}

/** A part's drain; undefined for a part that is none. */
const lineOf = rememberEach<Built, null, Line | undefined>(({ part, tubes, drain }) => {
  const tube = tubes.find(({ role }) => role === 'drain')
  if (!tube || !drain) return undefined
  const legs = segmentsOf(tube.path)
  const last = legs.at(-1)
  return {
    part,
    path: tube.path,
    lengthMm: last ? last.startMm + last.lengthMm : 0,
    bendsMm: legs.slice(1).map(({ startMm }) => startMm),
    section: { shape: 'circle', diameterMm: drainPipeOf(tube.stock).idMm },
    slopeMmPerM: drain.slopeMmPerM,
    leastMmPerM: drain.leastSlopeMmPerM,
  }
})

/** Both ends and all places between at which water comes in or the line turns, from the high end down, mm. */
const placesOf = ({ lengthMm, bendsMm }: Line, inflows: readonly Inflow[]): readonly number[] => {
  const places = [0]
  const between = [...bendsMm, ...inflows.map(({ alongMm }) => alongMm)].sort((a, b) => a - b)
  for (const mm of between)
    if (mm > (places.at(-1) ?? 0) + SAME_PLACE_MM && mm < lengthMm - SAME_PLACE_MM) places.push(mm)
  return [...places, lengthMm]
}

/** How a flow, L/h, runs in a line. */
type Running = Pick<DrainReach, 'flowLph' | 'depthMm' | 'share' | 'velocityMS' | 'state'>

const runningIn = ({ section, slopeMmPerM, leastMmPerM }: Line, flowLph: number, n: number): Running => {
  const boreMm = section.diameterMm
  // Water that does not fit, or that nothing carries off, fills the pipe.
  const depthMm = flowLph <= 0 ? 0 : (fillDepthMm(boreMm, flowLph, slopeMmPerM, n) ?? boreMm)
  const share = depthMm / boreMm
  return {
    flowLph,
    depthMm,
    share,
    velocityMS: velocityMS(section, depthMm, flowLph),
    state: drainState(slopeMmPerM, leastMmPerM, share),
  }
}

const reachesOf = (line: Line, inflows: readonly Inflow[], n: number): readonly DrainReach[] => {
  const places = placesOf(line, inflows)
  const points = places.map((mm) => pointAlong(line.path, mm))
  const rising = inflows.toSorted((a, b) => a.alongMm - b.alongMm)
  const reaches: DrainReach[] = []
  let [next, flowLph, running] = [0, 0, runningIn(line, 0, n)]
  places.slice(1).forEach((toMm, i) => {
    const [fromMm, from, to] = [places[i] ?? 0, points[i], points[i + 1]]
    for (
      let inflow = rising[next];
      inflow && inflow.alongMm <= fromMm + SAME_PLACE_MM;
      inflow = rising[next]
    ) {
      flowLph += inflow.lph
      next += 1
    }
    if (flowLph !== running.flowLph) running = runningIn(line, flowLph, n)
    if (from && to) reaches.push({ fromMm, toMm, from, to, ...running })
  })
  return reaches
}

interface Context {
  readonly inflows: readonly Inflow[]
  readonly n: number
}

const isSameInflow = (a: Inflow, b: Inflow | undefined): boolean =>
  a.alongMm === b?.alongMm && a.lph === b.lph

const isSameContext = (a: Context, b: Context): boolean =>
  a.n === b.n &&
  a.inflows.length === b.inflows.length &&
  a.inflows.every((inflow, i) => isSameInflow(inflow, b.inflows[i]))

const standingIn = ({ section }: Line, reaches: readonly DrainReach[]): number =>
  reaches.reduce(
    (sum, { depthMm, fromMm, toMm }) => sum + litresIn(areaMm2(section, depthMm), toMm - fromMm),
    0,
  )

/** What a line is worth empty, whatever runs in it. */
const capacityOf = rememberEach<Line, number, Pick<DrainReturn, 'halfFullLph' | 'scourLph'>>(
  ({ section: { diameterMm }, slopeMmPerM }, n) => ({
    halfFullLph: halfFullLph(diameterMm, slopeMmPerM, n),
    scourLph: flowForVelocityLph(diameterMm, slopeMmPerM, n, SCOUR_MS) ?? 0,
  }),
)

const returnOf = rememberEach<Line, Context, DrainReturn | undefined>((line, { inflows, n }) => {
  const reaches = reachesOf(line, inflows, n)
  const [first] = reaches
  if (!first) return undefined
  return {
    part: line.part,
    reaches,
    flowLph: inflows.reduce((sum, { lph }) => sum + lph, 0),
    state: worstDrainState([
      fallState(line.slopeMmPerM, line.leastMmPerM),
      ...reaches.map(({ state }) => state),
    ]),
    // The lowest of the fullest, for what is over half full there has most to carry.
    fullest: reaches.reduce((full, reach) => (reach.share >= full.share ? reach : full), first),
    ...capacityOf(line, n),
    standingL: standingIn(line, reaches),
  }
}, isSameContext)

const NONE: readonly Inflow[] = []

/**
 * The water in every drain, reach by reach: normal depth by Manning, at the roughness of the settings. A line without
 * length has no reach and is not in it.
 */
export const drainReturns = (
  inputs: ReturnInputs,
  inflows: Inflows = inflowsOf(inputs),
): ReadonlyMap<PartId, DrainReturn> => {
  const found = new Map<PartId, DrainReturn>()
  for (const built of inputs.built) {
    const line = lineOf(built, null)
    const context = {
      part: built.part,
      inflows: inflows.get(built.part) ?? NONE,
      n: inputs.settings.manningN,
    }
    const known = line && returnOf(line, context)
    if (known) found.set(built.part, known)
  }
  return found
}
