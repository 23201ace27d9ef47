import { polyOf } from '../../catalogue/pipe'
import type { BucketTest } from '../../layout/bucketTest'
import { LAMINAR_RE, reynoldsNumber, TURBULENT_RE } from '../../solvers/water/friction'
import { waterAt } from '../../solvers/water/properties'
import { calibratedBoreM, TUBE_LOSS_K, tubeFlowM3S } from '../../solvers/water/tube'
import { fromM3PerS, toM3PerS } from '../../units/flow'
import type { Writer } from '../../units/writer'
import { toM, toMm } from './metres'

/** What a bucket test says of a tube. */
export type TestedTube = ExplainedTest | ImpossibleTest

/** A bore explains it. Flows in litres an hour, bores in mm. */
export interface ExplainedTest {
  readonly kind: 'explained'
  readonly boreMm: number
  readonly markedMm: number
  /** What a tube with the bore that is marked on it would have passed. */
  readonly markedLph: number
  readonly reynolds: number
  /** Water that is neither smooth nor churned: another run of the same test may tell another bore. */
  readonly isInBetween: boolean
  /** Further from the mark than tubes are made: the head, the length or the clock was read wrong, or it is another tube. */
  readonly isUnlikely: boolean
}

/** More came out, or less, than any tube passes under such a head. */
export interface ImpossibleTest {
  readonly kind: 'too-much' | 'too-little'
  readonly markedMm: number
  readonly markedLph: number
}

/** Microtube is made to a few per cent of its bore: a fifth off is no scatter any more. Common practice, no source. */
const LIKELY_WITHIN = 0.2

interface Measured {
  readonly flowM3S: number
  readonly headM: number
  readonly lengthM: number
  readonly kinematicM2S: number
}

const measuredOf = ({ flowLph, headMm, lengthMm, waterC }: BucketTest): Measured => ({
  flowM3S: toM3PerS(flowLph),
  headM: toM(headMm),
  lengthM: toM(lengthMm),
  kinematicM2S: waterAt(waterC).kinematicM2S,
})

/** Bore that a bucket test says its tube has, m; undefined where none explains it. */
export const testedBoreM = (test: BucketTest): number | undefined =>
  calibratedBoreM(measuredOf(test), TUBE_LOSS_K)

/** What a test says of its tube, and whether that can be. */
export const testedTube = (test: BucketTest): TestedTube => {
  const { flowM3S, headM, lengthM, kinematicM2S } = measuredOf(test)
  const markedMm = polyOf(test.stock).idMm
  const marked = { lengthM, boreM: toM(markedMm), lossK: TUBE_LOSS_K }
  const markedLph = fromM3PerS(tubeFlowM3S(headM, marked, kinematicM2S))
  const boreM = testedBoreM(test)
  if (boreM === undefined)
    return { kind: test.flowLph > markedLph ? 'too-much' : 'too-little', markedMm, markedLph }
  const reynolds = reynoldsNumber(flowM3S, boreM, kinematicM2S)
  return {
    kind: 'explained',
    boreMm: toMm(boreM),
    markedMm,
    markedLph,
    reynolds,
    isInBetween: reynolds > LAMINAR_RE && reynolds < TURBULENT_RE,
    isUnlikely: Math.abs(toMm(boreM) / markedMm - 1) > LIKELY_WITHIN,
  }
}

/** What is wrong with a test, by how much, and what mends it; undefined where it can be taken as it is. */
export const bucketFault = (test: BucketTest, tested: TestedTube, writer: Writer): string | undefined => {
  const { flow, onTape, share, sightTube } = writer
  const expected = `${onTape(test.lengthMm)} of ${polyOf(test.stock).title} passes ${flow(tested.markedLph)} under ${sightTube(test.headMm)}, and ${flow(test.flowLph)} were measured`
  if (tested.kind !== 'explained')
    return `No tube does this: ${expected}. It is left out; measure the head from the water down to the open end, and time the bucket again.`
  const off = tested.boreMm / tested.markedMm - 1
  if (tested.isUnlikely)
    return `${expected}: its bore would have to be ${share(Math.abs(off))} ${off > 0 ? 'larger' : 'smaller'} than marked. Measure head, length and time again before you go by it.`
  if (tested.isInBetween)
    return `The tube ran between smooth and churned (Reynolds ${Math.round(tested.reynolds)}), where one run tells little. Test again under less water.`
  return undefined
}
