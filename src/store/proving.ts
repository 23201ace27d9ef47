import type { Planner, PlannerState } from './planner'

/** What goes on with a cut list that is not proven: a cheaper plan is looked for, or the person has stopped it. */
export type Proving = 'looking' | 'stopped'

const withoutKey = <T>(map: ReadonlyMap<string, T>, key: string): Map<string, T> => {
  const rest = new Map(map)
  rest.delete(key)
  return rest
}

/** So many stopped lists and proofs are kept: an undo, or a drag to and fro, meets them again. */
const MOST_KEPT = 64

/** Puts a value last in a map that keeps its newest. */
export const putLast = <T>(map: ReadonlyMap<string, T>, key: string, value: T): Map<string, T> => {
  const next = withoutKey(map, key)
  next.set(key, value)
  const [oldest] = next.keys()
  if (next.size > MOST_KEPT && oldest !== undefined) next.delete(oldest)
  return next
}

const provingOf = ({ store }: Planner): PlannerState['proving'] => store.getState().proving

/** Ends the search for a cheaper plan of a list; the best plan found so far stays. */
export const stopLooking = (planner: Planner, key: string): void =>
  planner.set({ proving: putLast(provingOf(planner), key, 'stopped') })

/** Takes the search up again. */
export const lookOn = (planner: Planner, key: string): void =>
  planner.set({ proving: withoutKey(provingOf(planner), key) })
