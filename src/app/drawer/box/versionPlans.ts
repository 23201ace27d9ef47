import type { Judged } from '../../../evaluate/evaluation'
import type { KeptPlan, Layout } from '../../../layout/schema'
import { keptBeside, type Proofs } from '../../../sheets/onPaper'
import { placeChanges, type PlaceChange } from '../../../evaluate/compare/placeChanges'
import { differenceTables } from '../../../sheets/change/differenceTables'
import { figureColumns } from '../../../sheets/change/figureColumns'
import { toldOf } from '../../../sheets/change/told'
import type { CutList } from '../../../model/cutList'
import type { Table } from '../../../model/table'
import type { Units } from '../../../units/length'
import { atSaw } from '../../../units/precision'
import type { Steps } from '../steps'

/** The bay as it is, among the plans that can be chosen. */
export const NOW = 'now'

/** A plan that can be held against another. */
export interface Choice {
  readonly id: string
  readonly title: string
  /** undefined for the bay as it is. */
  readonly plan: KeptPlan | undefined
}

/** Versions first, then what was issued, then the bay as it is. */
export const choicesIn = ({ papers }: Layout): readonly Choice[] => {
  const last = papers.issues.at(-1)
  return [
    ...papers.versions.map(({ name, plan }) => ({ id: `version ${name}`, title: name, plan })),
    ...(last && papers.issued ? [{ id: 'issued', title: `Issue ${last.number}`, plan: papers.issued }] : []),
    { id: NOW, title: 'The bay as it is', plan: undefined },
  ]
}

/** Two plans side by side. */
export interface SideBySide {
  readonly figures: Table
  readonly tables: readonly Table[]
  /** Only where one of the two is the bay as it is, which the floor plan shows. */
  readonly places: readonly PlaceChange[] | undefined
  /** Cut lists of both, as far as they are proven by now. */
  readonly cuts: readonly CutList[]
}

/** The bay as it is with what it is held beside: what is proved of cut lists, and the units of the reader. */
interface Beside {
  readonly now: Judged
  readonly proofs: Proofs
  readonly units: Units
}

const planOf = ({ plan }: Choice, { now, proofs }: Beside): Judged =>
  plan ? keptBeside(now, plan, proofs) : now

/** Holds two plans against each other, a plan a step. */
export function* sideSteps(a: Choice, b: Choice, beside: Beside): Steps<SideBySide> {
  const { units } = beside
  yield
  const was = planOf(a, beside)
  yield
  const is = planOf(b, beside)
  yield
  const told = toldOf(was, is, units, atSaw)
  const isDrawn = a.plan === undefined || b.plan === undefined
  return {
    figures: figureColumns(told, { was: a.title, now: b.title }),
    tables: differenceTables(told),
    cuts: [...was.cuts, ...is.cuts],
    // The floor plan shows the bay as it is: what is not in it is drawn as the other place.
    places: isDrawn ? placeChanges(b.plan ? is : was, b.plan ? was : is) : undefined,
  }
}
