import type { Entry } from './history'
import type { KeptPlan, Papers } from './schema'

/** Papers whose plans are of another type: as places among the plans of a history, say. */
export interface PapersOf<P> extends Omit<Papers, 'issued' | 'before' | 'versions'> {
  readonly issued: P | null
  readonly before: P | null
  readonly versions: { name: string; date: string; plan: P }[]
}

/** The same papers with each plan as `make` has it. */
export const papersWith = <P, Q>(papers: PapersOf<P>, make: (plan: P) => Q): PapersOf<Q> => ({
  ...papers,
  issued: papers.issued === null ? null : make(papers.issued),
  before: papers.before === null ? null : make(papers.before),
  versions: papers.versions.map((version) => ({ ...version, plan: make(version.plan) })),
})

type Fields<P> = Omit<Entry['difference']['from'], 'papers'> & { readonly papers?: PapersOf<P> }

/** An entry of the history whose papers have plans of another type. */
export type EntryOf<P> = Omit<Entry, 'difference'> & {
  readonly difference: Omit<Entry['difference'], 'from' | 'to'> & {
    readonly from: Fields<P>
    readonly to: Fields<P>
  }
}

const fieldsWith = <P, Q>({ papers, ...fields }: Fields<P>, make: (plan: P) => Q): Fields<Q> => ({
  ...fields,
  ...(papers && { papers: papersWith(papers, make) }),
})

/** The same entry with each plan as `make` has it. */
export const entryWith = <P, Q>({ difference, ...entry }: EntryOf<P>, make: (plan: P) => Q): EntryOf<Q> => ({
  ...entry,
  difference: {
    ...difference,
    from: fieldsWith(difference.from, make),
    to: fieldsWith(difference.to, make),
  },
})

/** Plans in the order in which they were first met, each once, whichever object it is. */
export const planShelf = () => {
  const texts: string[] = []
  const byText = new Map<string, number>()
  const byPlan = new Map<KeptPlan, number>()
  const placeOf = (plan: KeptPlan): number => {
    const text = JSON.stringify(plan)
    const known = byText.get(text)
    if (known !== undefined) return known
    byText.set(text, texts.length)
    return texts.push(text) - 1
  }
  /** The place of a plan, which is put on the shelf where it is not there yet. */
  const place = (plan: KeptPlan): number => {
    const found = byPlan.get(plan) ?? placeOf(plan)
    byPlan.set(plan, found)
    return found
  }
  return { texts, place }
}
