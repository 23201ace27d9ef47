import { rankOf, type Finding } from '../../model/finding'
import type { Judged } from '../evaluation'

/** What warns in one plan and not in the other; or in both, in another state. By their keys, so that other numbers alone are no change. */
export type FindingChange =
  | { readonly kind: 'new'; readonly finding: Finding }
  | { readonly kind: 'gone'; readonly finding: Finding }
  | { readonly kind: 'changed'; readonly finding: Finding; readonly was: Finding }

const warnings = ({ findings }: Judged): readonly Finding[] => findings.filter((one) => rankOf(one) > 0)

const changeOf = (was: Finding | undefined, finding: Finding): readonly FindingChange[] => {
  if (!was) return [{ kind: 'new', finding }]
  return was.state === finding.state ? [] : [{ kind: 'changed', finding, was }]
}

export const findingChanges = (before: Judged, after: Judged): readonly FindingChange[] => {
  const was = new Map(warnings(before).map((one) => [one.key, one]))
  const is = new Set(warnings(after).map(({ key }) => key))
  return [
    ...warnings(after).flatMap((one) => changeOf(was.get(one.key), one)),
    ...warnings(before)
      .filter(({ key }) => !is.has(key))
      .map((finding): FindingChange => ({ kind: 'gone', finding })),
  ]
}
