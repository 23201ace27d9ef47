import type { Words } from '../checks/context'
import type { Evaluation } from '../evaluate/evaluation'
import type { Point } from '../geometry/point'
import type { Units } from '../units/length'
import { inTrench } from '../units/precision'
import { sheetWords } from './sheetWords'

/** Where whoever is exposed stands. */
export type Stand = 'trench' | 'pit' | 'power' | 'saw' | 'racks' | 'water' | 'crop'

/** A place of a hazard on the floor, to be marked on a plan. */
export interface Spot {
  readonly name: string
  readonly at: Point
}

/** What can hurt someone, or the fish, at this very bay. */
export interface Hazard {
  /** Stays the same while it is the same hazard, whatever its numbers. */
  readonly key: string
  readonly title: string
  /** What to do, in whole sentences, as short as it can be said. */
  readonly words: string
  /** Where it is, and how deep, high or heavy: `Pit: 35-1/4" deep`. Empty where it is all over the bay. */
  readonly places: readonly string[]
  /** Papers of those who are exposed, by their ids. */
  readonly sheets: readonly string[]
  readonly stand: Stand
  /** Who says so: a publication, or `common practice, no source`. */
  readonly source: string
  readonly spots: readonly Spot[]
}

/** A bay as it is walked through for hazards. */
export interface Walk {
  readonly plan: Evaluation
  readonly units: Units
  /** Depths, heights and distances to what a tape gives in a trench. */
  readonly write: Words
}

export const walkOf = (plan: Evaluation, units: Units): Walk => ({
  plan,
  units,
  write: sheetWords(plan, units, inTrench),
})

/** A thing with what is to be said of it. */
export interface Reading {
  readonly name: string
  readonly says: string
}

const MOST_NAMES = 4
const MOST_PLACES = 6

/** `A, B and C`; of many the first three and how many more there are. */
export const namesTogether = (names: readonly string[]): string => {
  const isMany = names.length > MOST_NAMES
  const shown = isMany ? names.slice(0, MOST_NAMES - 1) : names.slice(0, -1)
  const last = isMany ? `${names.length - shown.length} more` : (names.at(-1) ?? '')
  return shown.length === 0 ? last : `${shown.join(', ')} and ${last}`
}

/** Things of which the same is said share a line, in the order in which they come; beyond six lines only how many. */
export const placesOf = (readings: readonly Reading[]): readonly string[] => {
  const alike = new Map<string, string[]>()
  for (const { name, says } of readings) {
    const known = alike.get(says)
    if (known) known.push(name)
    else alike.set(says, [name])
  }
  const lines = [...alike].map(([says, names]) => `${namesTogether(names)}: ${says}`)
  if (lines.length <= MOST_PLACES) return lines
  return [...lines.slice(0, MOST_PLACES - 1), `and ${lines.length - MOST_PLACES + 1} more such places`]
}

/** The words of one reader, where a number stands in a rule as it was printed. */
export const forReader = (units: Units, inFeet: string, metric: string): string =>
  units === 'metric' ? metric : inFeet
