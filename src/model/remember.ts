/**
 * Remembering by identity. What did not change is not computed again: a step that works part by part remembers its
 * answer for each part's object, for as long as the context object it was made in is the same.
 */

export const isSameList = <T>(a: readonly T[], b: readonly T[]): boolean =>
  a.length === b.length && a.every((item, index) => Object.is(item, b[index]))

/** `make(key, context)`, remembered for each key with the last context it was asked in; `isSame` compares contexts. */
export const rememberEach = <K extends object, C, V>(
  make: (key: K, context: C) => V,
  isSame: (a: C, b: C) => boolean = Object.is,
): ((key: K, context: C) => V) => {
  const known = new WeakMap<K, { context: C; value: V }>()
  return (key, context) => {
    const held = known.get(key)
    if (held && isSame(held.context, context)) return held.value
    const value = make(key, context)
    known.set(key, { context, value })
    return value
  }
}

/** Gives back the earlier list while its items are the same, so that a list can be a context. */
export const steadyList = <T>(): ((list: readonly T[]) => readonly T[]) => {
  let kept: readonly T[] = []
  return (list) => {
    if (!isSameList(kept, list)) kept = list
    return kept
  }
}

/** `make(...inputs)`, computed again only when one of the inputs is another object. */
export const rememberLast = <A extends readonly unknown[], V>(
  make: (...inputs: A) => V,
): ((...inputs: A) => V) => {
  let last: { inputs: A; value: V } | undefined
  return (...inputs) => {
    if (!last || !isSameList(last.inputs, inputs)) last = { inputs, value: make(...inputs) }
    return last.value
  }
}
