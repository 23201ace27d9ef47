import type { Judged } from '../../../evaluate/evaluation'
import type { KeptPlan, Layout } from '../../../layout/schema'
import { keptBeside } from '../../../sheets/onPaper'
import { placeChanges, type PlaceChange } from '../../../evaluate/compare/placeChanges'
import { differenceTables } from '../../../sheets/change/differenceTables'
import { figureColumns } from '../../../sheets/change/figureColumns'
import { toldOf } from '../../../sheets/change/told'
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
}

const planOf = (choice: Choice, now: Judged): Judged => (choice.plan ? keptBeside(now, choice.plan) : now)

/** Holds two plans against each other, a plan a step. */
export function* sideSteps(a: Choice, b: Choice, now: Judged, units: Units): Steps<SideBySide> {
  yield
  const was = planOf(a, now)
  yield
  const is = planOf(b, now)
  yield
  const told = toldOf(was, is, units, atSaw)
  const isDrawn = a.plan === undefined || b.plan === undefined
  return {
    figures: figureColumns(told, { was: a.title, now: b.title }),
    tables: differenceTables(told),
    // The floor plan shows the bay as it is: what is not in it is drawn as the other place.
    places: isDrawn ? placeChanges(b.plan ? is : was, b.plan ? was : is) : undefined,
  }
}
