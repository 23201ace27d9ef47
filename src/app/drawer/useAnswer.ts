import { useEffect, useLayoutEffect, useRef, useState } from 'react'
import { type Steps, walk } from './steps'

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

const isSame = (a: readonly unknown[], b: readonly unknown[]): boolean =>
  a.length === b.length && a.every((item, i) => Object.is(item, b[i]))

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
