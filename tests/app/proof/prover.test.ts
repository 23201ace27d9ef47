import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest'
import { createProver } from '../../../src/app/proof/prover'
import type { OnBetter, ProofWorker } from '../../../src/app/proof/proofWorker'
import { movePartsBy } from '../../../src/layout/edits'
import type { Layout } from '../../../src/layout/schema'
import { firstPlan } from '../../../src/solvers/cutting/firstPlan'
import type { CuttingProblem } from '../../../src/solvers/cutting/problem'
import type { Proof } from '../../../src/solvers/cutting/proof'
import { createPlanner, type Planner } from '../../../src/store/planner'
import { lookOn, stopLooking } from '../../../src/store/proving'
import { inches } from '../../../src/units/length'
import { scenarios } from '../../support/scenarios'

/** What was asked of a worker, and its end. */
interface Asked {
  readonly problem: CuttingProblem
  readonly best: unknown
  readonly better: OnBetter
  readonly answer: (proof: Proof) => void
  readonly fail: () => void
}

/** A worker that answers when the test says so. */
const waitingWorkers = () => {
  const asked: Asked[] = []
  const ends = { started: 0, ended: 0 }
  const start = (): ProofWorker => {
    ends.started += 1
    return {
      warm: () => Promise.resolve(),
      prove: (problem, best, better) =>
        new Promise((answer, reject) => {
          asked.push({ problem, best, better, answer, fail: () => reject(new Error('lost')) })
        }),
      end: () => {
        ends.ended += 1
      },
    }
  }
  return { asked, ends, start }
}

const proofOf = (problem: CuttingProblem, isProven: boolean): Proof => ({
  plan: firstPlan(problem),
  bound: 0,
  proven: { cost: isProven, boards: false, waste: false },
})

/** In the sample bay the lumber alone is not proven by its first bound. */
const sample = () => {
  const planner = createPlanner(scenarios['kestrel-bend-house-2']!())
  const workers = waitingWorkers()
  return { planner, ...workers, stop: createProver(planner, workers.start) }
}

const lumberKey = (planner: Planner): string =>
  planner.store.getState().settled.cuts.find(({ stock }) => stock === 'lumber-2x4')!.key

const withKerf =
  (in16ths: number) =>
  (layout: Layout): Layout => ({ ...layout, settings: { ...layout.settings, kerfMm: inches(in16ths / 16) } })

const rowOf = ({ store }: Planner) =>
  store.getState().layout.parts.find(({ kind }) => kind === 'rack-row')!.id

/** How often a list was asked about: others follow whose boards may be cut in fewer ways. */
const timesAsked = (asked: readonly Asked[], wanted: CuttingProblem): number =>
  asked.filter(({ problem }) => problem === wanted).length

const still = () => vi.advanceTimersByTimeAsync(1000)

beforeEach(() => vi.useFakeTimers())
afterEach(() => vi.useRealTimers())

describe('looking for cheaper plans', () => {
  test('begins once the bay stands still, and says of which list', async () => {
    const { planner, asked } = sample()
    expect([...planner.store.getState().proving]).toEqual([[lumberKey(planner), 'looking']])
    expect(asked.length).toBe(0)
    await still()
    expect(asked.map(({ problem }) => problem)).toEqual([
      planner.store.getState().settled.cuts.find(({ stock }) => stock === 'lumber-2x4')!.problem,
    ])
  })

  test('keeps better plans as they come, and ends with what is proven', async () => {
    const { planner, asked } = sample()
    await still()
    const key = lumberKey(planner)
    const [{ problem, better, answer }] = asked as [Asked]
    const first = proofOf(problem, false)
    better(first)
    expect(planner.store.getState().proofs.get(key)).toBe(first)
    answer(proofOf(problem, true))
    await still()
    expect(planner.store.getState().proofs.get(key)?.proven.cost).toBe(true)
    expect([planner.store.getState().proving.size, timesAsked(asked, problem)]).toEqual([0, 1])
  })

  test('does not begin again where all was tried and nothing proven', async () => {
    const { planner, asked } = sample()
    await still()
    asked[0]!.answer(proofOf(asked[0]!.problem, false))
    await still()
    planner.commit('Move row', (layout) => movePartsBy(layout, [rowOf(planner)], 254, 0))
    await still()
    expect([planner.store.getState().proving.size, timesAsked(asked, asked[0]!.problem)]).toEqual([0, 1])
  })

  test('goes on to what earlier plans alone ask of the saw, for as long as they are looked at', async () => {
    const { planner, asked } = sample()
    await still()
    for (let i = 0; i < asked.length; i += 1) {
      asked[i]!.answer(proofOf(asked[i]!.problem, false))
      await still()
    }
    const others = asked.length
    const earlier = createPlanner(withKerf(3)(scenarios['kestrel-bend-house-2']!())).store.getState().settled
    planner.set({ earlierCuts: earlier.cuts })
    await still()
    const wanted = earlier.cuts.find(({ stock }) => stock === 'lumber-2x4')!
    expect(asked.slice(others).map(({ problem }) => problem)).toEqual([wanted.problem])
    asked.at(-1)!.answer(proofOf(wanted.problem, true))
    await still()
    expect(planner.store.getState().proofs.get(wanted.key)?.proven.cost).toBe(true)
  })

  test('rests while something is dragged, and takes up the best that was found', async () => {
    const { planner, asked, ends } = sample()
    await still()
    const found = proofOf(asked[0]!.problem, false)
    asked[0]!.better(found)
    planner.preview((layout) => movePartsBy(layout, [rowOf(planner)], 254, 0))
    await still()
    expect([asked.length, ends.ended]).toEqual([1, 1])
    planner.preview(undefined)
    await still()
    // A row that is only moved has the same pieces, so the same list is looked at again.
    expect([asked.length, asked[1]?.problem === asked[0]!.problem, asked[1]?.best]).toEqual([
      2,
      true,
      found.plan,
    ])
  })

  test('a change that leaves the list as it is lets the search go on; one that does not ends it', async () => {
    const { planner, asked, ends } = sample()
    await still()
    planner.commit('Move row', (layout) => movePartsBy(layout, [rowOf(planner)], 254, 0))
    await still()
    expect([asked.length, ends.ended]).toEqual([1, 0])
    const before = lumberKey(planner)
    planner.commit('Kerf', withKerf(3))
    await still()
    expect([asked.length, ends.ended]).toEqual([2, 1])
    expect(asked[1]!.problem.saw.kerfTicks).not.toBe(asked[0]!.problem.saw.kerfTicks)
    // What still comes of the search that was ended is nobody's.
    asked[0]!.better(proofOf(asked[0]!.problem, true))
    asked[0]!.answer(proofOf(asked[0]!.problem, true))
    await still()
    expect(planner.store.getState().proofs.has(before)).toBe(false)
    expect([...planner.store.getState().proving.keys()]).toEqual([lumberKey(planner)])
  })

  test('changes that follow each other quickly begin one search', async () => {
    const { planner, asked } = sample()
    for (const kerf of [3, 4, 5]) {
      planner.commit('Kerf', withKerf(kerf))
      await vi.advanceTimersByTimeAsync(100)
    }
    await still()
    expect(asked.length).toBe(1)
  })

  test('is stopped by the person, and taken up again', async () => {
    const { planner, asked, ends } = sample()
    await still()
    const key = lumberKey(planner)
    const { problem } = asked[0]!
    const lumberAsked = () => timesAsked(asked, problem)
    stopLooking(planner, key)
    await still()
    expect([planner.store.getState().proving.get(key), ends.ended, lumberAsked()]).toEqual(['stopped', 1, 1])
    lookOn(planner, key)
    for (const other of asked.slice(1)) other.answer(proofOf(other.problem, true))
    await still()
    expect([planner.store.getState().proving.get(key), lumberAsked()]).toEqual(['looking', 2])
  })

  test('a lost worker is told of once, the first plans stay, and looking on starts another', async () => {
    const { planner, asked, ends } = sample()
    await still()
    const key = lumberKey(planner)
    const { settled } = planner.store.getState()
    asked[0]!.fail()
    await still()
    const state = planner.store.getState()
    expect([state.notice?.tone, state.proving.get(key), state.settled]).toEqual([
      'trouble',
      'stopped',
      settled,
    ])
    expect([asked.length, ends.started]).toEqual([1, 1])
    lookOn(planner, key)
    await still()
    expect([asked.length, ends.started]).toEqual([2, 2])
  })

  test('ends with its page', async () => {
    const { planner, asked, ends, stop } = sample()
    await still()
    stop()
    planner.commit('Kerf', withKerf(3))
    await still()
    expect([asked.length, ends.ended]).toEqual([1, ends.started])
  })
})
