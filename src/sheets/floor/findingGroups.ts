import type { Words } from '../../checks/context'
import { quantityWords } from '../../checks/measuredWords'
import { sentence } from '../../checks/words'
import type { Finding, Quantity } from '../../model/finding'

/** Findings that say the same of several parts: one line of the list, one number on the plan, at every place of it. */
export interface FindingGroup {
  readonly worst: Finding
  /** Worst first. */
  readonly others: readonly Finding[]
}

/** So many findings with a mend each are still listed one by one, since each mend is another. */
const MENDS_APART = 3
/** So many others are named with their numbers; more are found by the flags on the plan. */
const NAMED = 5

/** How far a finding is off its limit. */
const overshoot = ({ measured, limit }: Finding): number => Math.abs(measured.value - limit.value)

/** A mend whichever part it is for. */
const mendAnywhere = ({ mend }: Finding) => mend && { ...mend, part: undefined }

/**
 * Equal for findings whose sentences differ in one name and one number; unlike for what concerns two parts or more. Of
 * water the worst row names its least tower for all that one mend would help.
 */
const likeness = (finding: Finding): string => {
  const { key, rule, subject, state, parts, limit, facts } = finding
  const same = subject === 'flow' ? mendAnywhere(finding) : facts
  return parts.length === 1 ? JSON.stringify([rule, state, limit, same]) : key
}

const groupsIn = (alike: readonly Finding[]): FindingGroup[] => {
  const inOrder = alike.toSorted((a, b) => overshoot(b) - overshoot(a))
  const isMendedApart = alike.some(({ mend, subject }) => mend !== undefined && subject !== 'flow')
  if (alike.length <= MENDS_APART && isMendedApart) return alike.map((worst) => ({ worst, others: [] }))
  const [worst, ...others] = inOrder
  return worst === undefined ? [] : [{ worst, others }]
}

/** Findings with the like ones together, where the first of each stood. */
export const findingGroups = (findings: readonly Finding[]): FindingGroup[] => {
  const alike = new Map<string, Finding[]>()
  for (const finding of findings) {
    const like = likeness(finding)
    alike.set(like, [...(alike.get(like) ?? []), finding])
  }
  return [...alike.values()].flatMap(groupsIn)
}

export const membersOf = ({ worst, others }: FindingGroup): readonly Finding[] => [worst, ...others]

/** True where the others are too many to be named. */
export const isMany = ({ others }: FindingGroup): boolean => others.length > NAMED

/** A list beside a plan has all its lengths in feet. */
const listedWords = (quantity: Quantity, write: Words): string =>
  quantityWords(quantity.unit === 'mm' ? { ...quantity, isInFeet: true } : quantity, write)

/** Whose it is, and how much: `S2 2"`. A negative measure is words' matter, not a number's. */
const inShort = ({ parts, measured }: Finding, write: Words): string => {
  const name = write.name(parts[0] ?? '')
  return measured.value < 0 ? name : `${name} ${listedWords(measured, write)}`
}

/** The line of a group: state, then what is wrong with the worst, and what the others measure. */
export const groupWords = ({ worst, others }: FindingGroup, write: Words): string => {
  const count = others.length + 1
  if (count === 1) return `${worst.state}. ${sentence(worst, write)}`
  if (isMany({ worst, others }))
    return `${worst.state} at ${count} places, flagged as far as there is room. The worst: ${sentence(worst, write)}`
  const also = others.map((finding) => inShort(finding, write)).join('; ')
  return `${worst.state} at ${count} places, worst first. ${sentence(worst, write)} Also ${also}.`
}
