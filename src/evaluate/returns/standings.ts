import { type Cascade, storageSteps } from '../../solvers/gravity/storage'

/** What stands in each store at one time, L. */
export type Standing = ArrayLike<number>

/** An answer in parts, so that a page can do something else in between. */
export type InParts<T> = Generator<undefined, T>

/** So many moments are found at a go: a few thousandths of a second of a common bay. */
const AT_A_GO = 6

/** What stands where at each of some times, s. */
export function* standings(cascade: Cascade, times: readonly number[]): InParts<readonly Standing[]> {
  const seen: Standing[] = []
  for (const standing of storageSteps(cascade, times)) {
    seen.push(standing)
    if (seen.length % AT_A_GO === 0) yield undefined
  }
  return seen
}

/** The whole of an answer at once. */
export const atOnce = <T>(parts: InParts<T>): T => {
  let part = parts.next()
  while (part.done !== true) part = parts.next()
  return part.value
}
