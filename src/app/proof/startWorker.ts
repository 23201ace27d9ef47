import { proxy, releaseProxy, wrap } from 'comlink'
import type { CutWorker, ProofWorker } from './proofWorker'

/** Rejects once the browser can't load the worker, or ends it. */
const lossOf = (worker: Worker): Promise<never> =>
  new Promise((_, reject) => {
    const lost = () => reject(new Error('The worker that looks for cutting plans is lost.'))
    worker.addEventListener('error', lost)
    worker.addEventListener('messageerror', lost)
  })

/** Starts a worker of its own, so that a search never holds the page up. */
export const startWorker = (): ProofWorker => {
  const worker = new Worker(new URL('./cutWorker.ts', import.meta.url), { type: 'module' })
  const far = wrap<CutWorker>(worker)
  const loss = lossOf(worker)
  // Whoever waits for an answer hears of the loss; nobody waiting is no trouble.
  loss.catch(() => undefined)
  return {
    warm: () => Promise.race([far.warm(), loss]),
    prove: (problem, best, onBetter) => Promise.race([far.prove(problem, best, proxy(onBetter)), loss]),
    end: () => {
      far[releaseProxy]()
      worker.terminate()
    },
  }
}
