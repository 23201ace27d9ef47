import type { Beam, BeamLoad } from './beam'
import type { Bent } from './bent'
import { beamOf, type Loose } from './solve'

/** A beam on supports that it may lift off. */
export interface Rested {
  readonly ok: true
  readonly bent: Bent
  /** Upward, of every support of the beam in their order, N; 0 where the beam has lifted off. */
  readonly reactionsN: readonly number[]
  /** How far the beam lies above each support, mm; 0 where it bears. */
  readonly gapsMm: readonly number[]
}

interface Trial {
  readonly bears: readonly boolean[]
  readonly result: Rested
  /** Supports that pull, or that the beam lies below. */
  readonly wrong: readonly number[]
}

/** Of the largest load or sag: what is less is nothing. */
const NOTHING = 1e-9

const keepOnly = (beam: Beam, bears: readonly boolean[]): Beam => ({
  ...beam,
  supports: beam.supports.filter((_, k) => bears[k]),
})

const reactionsOf = (bears: readonly boolean[], reactionsN: readonly number[]): number[] => {
  let next = 0
  return bears.map((isBearing) => {
    if (!isBearing) return 0
    next += 1
    return reactionsN[next - 1] ?? 0
  })
}

const largest = (values: readonly number[]): number => Math.max(...values.map(Math.abs))

const tryWith = (beam: Beam, load: BeamLoad, bears: readonly boolean[]): Trial | Loose => {
  const solved = beamOf(keepOnly(beam, bears))
  if (!solved.ok) return solved
  const bent = solved.bend(load)
  const reactionsN = reactionsOf(bears, bent.reactionsN)
  const gapsMm = beam.supports.map(({ atMm }, k) => (bears[k] ? 0 : -bent.sagAt(atMm)))
  const { most, least } = bent.sags(beam.fromMm, beam.toMm)
  const nothingN = NOTHING * largest(reactionsN)
  const nothingMm = NOTHING * largest([most.value, least.value])
  const wrong = beam.supports.flatMap(({ holds }, k) =>
    holds === 'up' && ((reactionsN[k] ?? 0) < -nothingN || (gapsMm[k] ?? 0) < -nothingMm) ? [k] : [],
  )
  return { bears, result: { ok: true, bent, reactionsN, gapsMm }, wrong }
}

const turned = (bears: readonly boolean[], which: readonly number[]): boolean[] =>
  bears.map((isBearing, k) => (which.includes(k) ? !isBearing : isBearing))

/** Rounds in which all that is wrong is turned at once; then the first alone, which always ends. */
const TOGETHER = 8

const tips: Loose = {
  ok: false,
  why: 'The beam tips off its supports: nothing holds down the end that lifts.',
  fromMm: undefined,
}

const nextTrial = (beam: Beam, load: BeamLoad, { bears, wrong }: Trial, round: number): Trial | undefined => {
  const sets = [...(round < TOGETHER ? [wrong] : []), ...wrong.map((k) => [k])]
  for (const which of sets) {
    const trial = tryWith(beam, load, turned(bears, which))
    if ('wrong' in trial) return trial
  }
  return undefined
}

/**
 * A load on a beam whose supports marked `up` let go where they would have to pull, or why it falls off them. The set that bears is
 * found by turning what is wrong, least first, which comes to an end for every beam that stands. Source: Murty, *Linear
 * Complementarity* (1988), chapter 3, from memory.
 */
export const restOn = (beam: Beam, load: BeamLoad): Rested | Loose => {
  let trial = tryWith(
    beam,
    load,
    beam.supports.map(() => true),
  )
  if (!('wrong' in trial)) return trial
  const mostRounds = TOGETHER + 4 * beam.supports.length ** 2
  for (let round = 0; trial.wrong.length > 0; round += 1) {
    const next: Trial | undefined = round < mostRounds ? nextTrial(beam, load, trial, round) : undefined
    if (next === undefined) return tips
    trial = next
  }
  return trial.result
}
