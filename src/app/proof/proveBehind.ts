import type { Planner } from '../../store/planner'

/** The plan has been drawn by then, and what a person first turns to has loaded. */
const AFTER_DRAWING_MS = 500

/** Looks for cheaper cutting plans behind the page, once the bay is drawn. Gives back what stops it. */
export const proveBehind = (planner: Planner): (() => void) => {
  let stop: (() => void) | undefined
  let isOver = false
  const start = async () => {
    await import('../../canvas/FloorPlan')
    const [{ createProver }, { startWorker }] = await Promise.all([
      import('./prover'),
      import('./startWorker'),
    ])
    if (!isOver) stop = createProver(planner, startWorker)
  }
  // Where its code does not come nothing is looked for: the first plans stay, and say how good they are known to be.
  const timer = setTimeout(() => void start().catch(() => undefined), AFTER_DRAWING_MS)
  return () => {
    isOver = true
    clearTimeout(timer)
    stop?.()
  }
}
