import type { PartId } from '../../model/ids'
import type { RowStrength } from '../../model/strength'
import type { Evaluation } from '../evaluation'
import { ailmentsOf, type Ailments, illness, isEased, isSound } from './ailments'
import { type Ailing, endsIn, type Idea, ideasFor, widerBases } from './ideas'
import { rowWith } from './rowTrial'

/** An idea and what the row by itself would be with it. */
export interface Tried extends Idea {
  readonly strength: RowStrength
  readonly ailments: Ailments
}

/** A row with its evaluation, to go through ideas with. */
interface Bench {
  readonly evaluation: Evaluation
  readonly id: PartId
}

/** The row by itself with an idea; undefined where the schema refuses it. */
export const tryIdea = ({ evaluation, id }: Bench, { values, weight }: Idea): Tried | undefined => {
  const strength = rowWith(evaluation, id, values)
  return strength && { values, weight, strength, ailments: ailmentsOf(strength) }
}

const isLess = (a: Tried, b: Tried): boolean => {
  const [[aSteps, aUsed], [bSteps, bUsed]] = [illness(a.ailments), illness(b.ailments)]
  return aSteps < bSteps || (aSteps === bSteps && aUsed < bUsed)
}

/** The best of a sweep, the first of two that are alike; undefined of none. */
function* bestOf(bench: Bench, ideas: readonly Idea[]): Generator<undefined, Tried | undefined> {
  let best: Tried | undefined
  for (const idea of ideas) {
    yield
    const tried = tryIdea(bench, idea)
    if (tried && (!best || isLess(tried, best))) best = tried
  }
  return best
}

const stands = ({ strength }: Tried): boolean => strength.stance.state === 'Stands'

/** The first of a sweep that stands; undefined where none does. */
function* firstStanding(bench: Bench, ideas: readonly Idea[]): Generator<undefined, Tried | undefined> {
  for (const idea of ideas) {
    yield
    const tried = tryIdea(bench, idea)
    if (tried && stands(tried)) return tried
  }
  return undefined
}

/** Every single idea that eases something that ails the row, as the row by itself tells. */
export function* easing(bench: Bench, ill: Ailing): Generator<undefined, readonly Tried[]> {
  const found = [yield* bestOf(bench, endsIn(ill)), yield* firstStanding(bench, widerBases(ill))]
  for (const idea of ideasFor(ill)) {
    yield
    found.push(tryIdea(bench, idea))
  }
  return found.filter((tried): tried is Tried => tried !== undefined && isEased(tried.ailments, ill.ailments))
}

/** What an idea is about: two of one sort are not put together. */
const sortOf = ({ values }: Idea): string => Object.keys(values)[0] ?? ''

const together = (a: Idea, b: Idea): Idea => ({
  values: { ...a.values, ...b.values },
  weight: a.weight + b.weight,
})

/** How many of each are put together further, and how many of what mends are given to be tried in the bay. */
const MOST_CARRIED = 8
const MOST_GIVEN = 6

const byName = ([a]: readonly [string, unknown], [b]: readonly [string, unknown]): number => (a < b ? -1 : 1)

/** Alike for ideas that set the same fields to the same values. */
const setsKey = ({ values }: Idea): string => JSON.stringify(Object.entries(values).sort(byName))

interface Combined {
  readonly tried: Tried
  readonly sorts: ReadonlySet<string>
}

const byWeight = (a: Combined, b: Combined): number => a.tried.weight - b.tried.weight

const byIllness = (a: Combined, b: Combined): number =>
  isLess(a.tried, b.tried) ? -1 : isLess(b.tried, a.tried) ? 1 : 0

/** Each of some with each single of another sort, once. */
function* grown(
  bench: Bench,
  from: readonly Combined[],
  singles: readonly Tried[],
): Generator<undefined, Combined[]> {
  const known = new Set<string>()
  const all: Combined[] = []
  for (const { tried, sorts } of from)
    for (const single of singles) {
      const sort = sortOf(single)
      if (sorts.has(sort)) continue
      const idea = together(tried, single)
      const key = setsKey(idea)
      if (known.has(key)) continue
      known.add(key)
      yield
      const next = tryIdea(bench, idea)
      if (next) all.push({ tried: next, sorts: new Set([...sorts, sort]) })
    }
  return all
}

/** A bigger size than will do is dearer and no better: of what sets the same things the lightest, and the lightest first. */
const lightestOfEach = (all: readonly Combined[]): readonly Combined[] => {
  const kept = new Map<string, Combined>()
  for (const each of all.toSorted(byWeight)) {
    const key = [...each.sorts].sort().join()
    if (!kept.has(key)) kept.set(key, each)
  }
  return [...kept.values()]
}

const givenOf = (all: readonly Combined[], most: number): readonly Tried[] =>
  all.slice(0, most).map(({ tried }) => tried)

/** No more than this many at once: a row that takes more is to be laid out anew. */
const MOST_TOGETHER = 4

/** Where none leaves the row sound, so many of the least ill are given. */
const MOST_EASING = 2

/**
 * Two ideas together that leave the row sound by itself, or three or four where no two do, the lightest first; the least ill where
 * nothing does. Each alone eases something.
 */
export function* combined(bench: Bench, singles: readonly Tried[]): Generator<undefined, readonly Tried[]> {
  let from: Combined[] = singles.map((tried) => ({ tried, sorts: new Set([sortOf(tried)]) }))
  let least: Combined[] = []
  for (let count = 2; count <= MOST_TOGETHER; count += 1) {
    const all = yield* grown(bench, from, singles)
    const sound = all.filter(({ tried }) => isSound(tried.strength))
    if (sound.length > 0) return givenOf(lightestOfEach(sound), MOST_GIVEN)
    from = all.toSorted(byIllness).slice(0, MOST_CARRIED)
    least = [...from, ...least].toSorted(byIllness)
  }
  return givenOf(least, MOST_EASING)
}
