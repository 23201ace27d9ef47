interface Keyed {
  readonly key: string
}

/** What has the same key in two lists; `said` is that of the later list where it is there, else that of the earlier. */
export interface Pair<T> {
  readonly before: T | undefined
  readonly after: T | undefined
  readonly said: T
}

/** Two lists by their keys: in the order of `after`, then what is gone in the order of `before`. A key stands once in a list. */
export const paired = <T extends Keyed>(before: readonly T[], after: readonly T[]): readonly Pair<T>[] => {
  const was = new Map(before.map((one) => [one.key, one]))
  const is = new Set(after.map(({ key }) => key))
  return [
    ...after.map((one) => ({ before: was.get(one.key), after: one, said: one })),
    ...before.filter(({ key }) => !is.has(key)).map((one) => ({ before: one, after: undefined, said: one })),
  ]
}
