/** An answer found step by step, so that the page can do something else in between. */
export type Steps<T> = Generator<unknown, T>

/** While something is dragged the bay changes more often than this, ms; a long answer then would hold the drag up. */
const QUIET_MS = 150

/** Goes through the steps between whatever else the page does; gives back what stops it. */
export const walk = <T>(steps: Steps<T>, onFound: (answer: T) => void): (() => void) => {
  const turn = () => {
    const step = steps.next()
    if (step.done) onFound(step.value)
    else timer = setTimeout(turn)
  }
  let timer = setTimeout(turn, QUIET_MS)
  return () => clearTimeout(timer)
}

/** Steps of an answer that is found in one. */
export function* inOne<T>(find: () => T): Steps<T> {
  yield
  return find()
}
