import type { Words } from '../../checks/context'
import { namesTogether } from '../hazard'
import type { BaseKind, RackKind } from './kinds'
import type { RackBuilt } from './rowBuilt'

/** A kind of rack with the letter that the crew calls it by. */
export interface NamedKind {
  readonly kind: RackKind
  /** `A`, `B` ... in the order of the cards. */
  readonly letter: string
}

/** `A` to `Z`, then `AA`. */
const letterOf = (index: number): string =>
  (index >= 26 ? letterOf(Math.floor(index / 26) - 1) : '') + String.fromCodePoint(65 + (index % 26))

export const lettered = (kinds: readonly RackKind[]): readonly NamedKind[] =>
  kinds.map((kind, index) => ({ kind, letter: letterOf(index) }))

/** Where in its row such a rack stands. */
export const placeWords = ({ isHighEnd, isLowEnd }: RackBuilt): string => {
  if (isHighEnd && isLowEnd) return 'stands alone'
  if (isHighEnd) return 'high end of its row'
  return isLowEnd ? 'low end of its row' : 'middle of its row'
}

/** `Rack 1 of N1, N2 and N3; rack 2 of S1`, in order of the racks' numbers. */
export const whereWords = ({ all }: RackKind, { name }: Words): string => {
  const byNumber = new Map<number, string[]>()
  for (const { number, part } of all) {
    const names = byNumber.get(number) ?? []
    byNumber.set(number, names)
    names.push(name(part))
  }
  const words = [...byNumber]
    .toSorted(([a], [b]) => a - b)
    .map(([number, names]) => `rack ${number} of ${namesTogether(names)}`)
    .join('; ')
  return words.charAt(0).toUpperCase() + words.slice(1)
}

export const baseRows = ({ all }: BaseKind, { name }: Words): string =>
  namesTogether(all.map(({ part }) => name(part)))
