import { mayGain } from '../../evaluate/cutting/mayGain'
import { withProof } from '../../evaluate/withProof'
import type { CutList } from '../../model/cutList'
import type { Proof } from '../../solvers/cutting/proof'
import type { Planner, PlannerState } from '../../store/planner'
import { putLast, type Proving } from '../../store/proving'
import type { ProofWorker } from './proofWorker'

/** The bay has stood still when it has not changed for so long, ms: not between two frames, nor two presses of an arrow key. */
const QUIET_MS = 200

const LOST =
  'The search for cheaper cutting plans broke off. The plans that are shown are whole and can be cut as they stand; the Cuts tab can look on.'

/** A search that goes on. */
interface Run {
  readonly key: string
}

const piecesIn = ({ problem }: CutList): number => problem.pieces.reduce((sum, { count }) => sum + count, 0)

/** Few different lengths before many, then few pieces before many: what is soon proved is not kept waiting. */
const bySize = (a: CutList, b: CutList): number =>
  a.problem.pieces.length - b.problem.pieces.length || piecesIn(a) - piecesIn(b)

const isSame = (a: ReadonlyMap<string, Proving>, b: ReadonlyMap<string, Proving>): boolean =>
  a.size === b.size && [...a].every(([key, value]) => b.get(key) === value)

/**
 * Looks for cheaper plans, and for the proof that there is none, of every cut list of the bay that is not proven: one list at a
 * time in a worker, the smallest first, whenever the bay stands still. Nothing is looked for while something is dragged; a change that
 * a list does not outlive ends its search at once, and so does the person. What is found goes into the planner's `proofs`, and what
 * goes on into `proving`. Gives back what stops it all.
 */
export const createProver = (planner: Planner, startWorker: () => ProofWorker): (() => void) => {
  const { store } = planner
  /** Searched to the end of what the search tries: no use to look again while its proof is kept. */
  const ended = new Set<string>()
  let worker: ProofWorker | undefined
  let run: Run | undefined
  let timer: ReturnType<typeof setTimeout> | undefined

  const isProven = (list: CutList, { proofs }: PlannerState): boolean =>
    withProof(list, proofs.get(list.key)).standing.kind === 'proven'

  /** What a search is still owed: the bay's own lists first, of these the ones that it may make cheaper. */
  const openLists = (state: PlannerState): CutList[] => {
    const { settled, proofs, proving, earlierCuts } = state
    const isDone = (key: string): boolean => ended.has(key) && proofs.has(key)
    const owed = (lists: readonly CutList[]): CutList[] => {
      const open = lists.filter(
        ({ key, boards }) => boards.length > 0 && !isDone(key) && proving.get(key) !== 'stopped',
      )
      const unproven = open.filter((list) => !isProven(list, state))
      const tied = open.filter((list) => isProven(list, state) && mayGain(list))
      return [...unproven.sort(bySize), ...tied.sort(bySize)]
    }
    const own = new Set(settled.cuts.map(({ key }) => key))
    return [...owed(settled.cuts), ...owed(earlierCuts.filter(({ key }) => !own.has(key)))]
  }

  const endRun = () => {
    if (run === undefined) return
    run = undefined
    worker?.end()
    worker = undefined
  }

  const tell = (lists: readonly CutList[]) => {
    const state = store.getState()
    const { proving } = state
    const stopped = [...proving].filter(([, doing]) => doing === 'stopped')
    const looking = lists.filter((list) => !isProven(list, state)).map(({ key }) => [key, 'looking'] as const)
    const next = new Map<string, Proving>([...stopped, ...looking])
    if (!isSame(proving, next)) planner.set({ proving: next })
  }

  const keep = (key: string, proof: Proof) =>
    planner.set({ proofs: putLast(store.getState().proofs, key, proof) })

  /** Without a worker nothing is looked for; whoever looks on starts another. */
  const lose = () => {
    endRun()
    const proving = new Map(store.getState().proving)
    for (const { key } of openLists(store.getState())) proving.set(key, 'stopped')
    planner.set({ proving, notice: { tone: 'trouble', text: LOST } })
  }

  const search = async (list: CutList) => {
    const mine: Run = { key: list.key }
    run = mine
    const best = store.getState().proofs.get(list.key)?.plan
    try {
      worker ??= startWorker()
      const proof = await worker.prove(list.problem, best, (better) => {
        if (run === mine) keep(list.key, better)
      })
      if (run !== mine) return
      run = undefined
      ended.add(list.key)
      keep(list.key, proof)
      turn()
    } catch {
      if (run === mine) lose()
    }
  }

  const begin = () => {
    const [next] = openLists(store.getState())
    if (run === undefined && next !== undefined) void search(next)
  }

  /** Whatever changed: ends what is not wanted any more, says what goes on, and sees to it that the next begins. */
  const turn = () => {
    const state = store.getState()
    clearTimeout(timer)
    if (state.preview !== undefined) {
      endRun()
      return
    }
    const open = openLists(state)
    const going = run?.key
    if (going !== undefined && !open.some(({ key }) => key === going)) endRun()
    if (run === undefined && open.length > 0) timer = setTimeout(begin, QUIET_MS)
    tell(open)
  }

  const unsubscribe = store.subscribe((state, before) => {
    if (
      state.settled !== before.settled ||
      state.preview !== before.preview ||
      state.proving !== before.proving ||
      state.earlierCuts !== before.earlierCuts
    )
      turn()
  })
  // A worker that can't be had is told of when it is first missed.
  worker = startWorker()
  worker.warm().catch(() => undefined)
  turn()
  return () => {
    unsubscribe()
    clearTimeout(timer)
    endRun()
    worker?.end()
  }
}
