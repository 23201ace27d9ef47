import { useEffect, useLayoutEffect, useRef, useState } from 'react'

/** An answer found step by step, so that the page can do something else in between. */
export type Steps<T> = Generator<undefined, T>

interface Answered<T> {
  readonly to: readonly unknown[]
  readonly about: string
  readonly answer: T
}

interface Known<T> {
  /** The last one found for the same question, which may be of the bay before its last change; undefined before the first. */
  readonly answer: T | undefined
  /** It is of the bay as it stands. */
  readonly isCurrent: boolean
}

/** While something is dragged the bay changes more often than this, ms; a long answer then would hold the drag up. */
const QUIET_MS = 150

const isSame = (a: readonly unknown[], b: readonly unknown[]): boolean =>
  a.length === b.length && a.every((item, i) => Object.is(item, b[i]))

/** Goes through the steps between whatever else the page does; gives back what stops it. */
const walk = <T>(steps: Steps<T>, onFound: (answer: T) => void): (() => void) => {
  const turn = () => {
    const step = steps.next()
    if (step.done) onFound(step.value)
    else timer = setTimeout(turn)
  }
  let timer = setTimeout(turn, QUIET_MS)
  return () => clearTimeout(timer)
}

/**
 * An answer that takes longer than a frame: asked once the bay stands still, a step at a time, and known to be stale
 * until it is there. `about` names the question, such as the row that it is about; `of` is what the answer depends on.
 */
export const useAnswer = <T>(about: string, of: readonly unknown[], ask: () => Steps<T>): Known<T> => {
  const [answered, setAnswered] = useState<Answered<T>>()
  const [to, setTo] = useState(of)
  if (!isSame(to, of)) setTo(of)
  const isCurrent = answered?.about === about && answered.to === to
  // It is another function at every drawing; what it asks is told by `about` and `of`.
  const asked = useRef(ask)
  useLayoutEffect(() => {
    asked.current = ask
  }, [ask])
  useEffect(() => {
    if (isCurrent) return undefined
    return walk(asked.current(), (answer) => setAnswered({ about, to, answer }))
  }, [about, to, isCurrent])
  return { answer: answered?.about === about ? answered.answer : undefined, isCurrent }
}

/** Steps of an answer that is found in one. */
export function* inOne<T>(find: () => T): Steps<T> {
  yield
  return find()
}
