import { useEffect, useState } from 'react'

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

/**
 * An answer that takes longer than a frame: asked once the bay stands still, and known to be stale until then. `about`
 * names the question, such as the row that it is about; `of` is what the answer depends on.
 */
export const useAnswer = <T>(about: string, of: readonly unknown[], ask: () => T): Known<T> => {
  const [answered, setAnswered] = useState<Answered<T>>()
  const [held, setHeld] = useState(of)
  const to = isSame(held, of) ? held : of
  if (to !== held) setHeld(to)
  const isCurrent = answered?.about === about && answered.to === to
  useEffect(() => {
    if (isCurrent) return undefined
    const timer = setTimeout(() => setAnswered({ about, to, answer: ask() }), QUIET_MS)
    return () => clearTimeout(timer)
  })
  return { answer: answered?.about === about ? answered.answer : undefined, isCurrent }
}
