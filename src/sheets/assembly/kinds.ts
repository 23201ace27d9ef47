import type { Evaluation } from '../../evaluate/evaluation'
import { alike } from './members'
import { type BaseBuilt, type RackBuilt, rowBuilt } from './rowBuilt'

/** Racks, or bases of rows, that are built of the same members in the same places with the same fixings. */
export interface Kind<T> {
  /** Stays the same while the first of them is of this kind. */
  readonly key: string
  /** The first of them, that all others are like. */
  readonly first: T
  readonly all: readonly T[]
}

export type RackKind = Kind<RackBuilt>
export type BaseKind = Kind<BaseBuilt>

/** Rows in the order of the plan, and of each its racks from the high end down. */
export const rackKinds = ({ bay }: Pick<Evaluation, 'bay'>): readonly RackKind[] =>
  alike(bay.built.flatMap((built) => rowBuilt(built, null)?.racks ?? [])).map((racks) => ({
    key: `${racks[0].part}-${racks[0].number}`,
    first: racks[0],
    all: racks,
  }))

/** Only of rows that have runners along them. */
export const baseKinds = ({ bay }: Pick<Evaluation, 'bay'>): readonly BaseKind[] =>
  alike(
    bay.built.flatMap((built) => {
      const base = rowBuilt(built, null)?.base
      return base && base.members.length > 0 ? [base] : []
    }),
  ).map((bases) => ({ key: bases[0].part, first: bases[0], all: bases }))
