import type { Rule } from '../checks/context'
import { rules } from '../checks/index'
import type { Evaluation } from '../evaluate/evaluation'
import type { Accepted } from '../layout/settings'
import { type Finding, rankOf, type StateWord, stateWords, type Subject } from '../model/finding'
import { rememberEach } from '../model/remember'

/** What a warning is about, as the sidebar divides them. */
export const areas = ['Floor', 'Drains', 'Pits', 'Water', 'Racks', 'Strength'] as const
export type Area = (typeof areas)[number]

/** Like findings of one rule, worst first. */
export interface RuleGroup {
  readonly rule: Rule
  readonly findings: readonly Finding[]
}

export interface AreaGroup {
  readonly area: Area
  readonly rules: readonly RuleGroup[]
}

export interface AcceptedFinding {
  readonly finding: Finding
  readonly reason: string
  readonly by: string
}

export interface SortedFindings {
  readonly open: readonly Finding[]
  readonly accepted: readonly AcceptedFinding[]
}

const sortByAcceptance = (findings: readonly Finding[], accepted: readonly Accepted[]): SortedFindings => {
  const reasons = new Map(accepted.map((entry) => [entry.key, entry]))
  const open: Finding[] = []
  const lived: AcceptedFinding[] = []
  for (const finding of findings) {
    const entry = reasons.get(finding.key)
    if (rankOf(finding) === 0) continue
    if (entry) lived.push({ finding, reason: entry.reason, by: entry.by })
    else open.push(finding)
  }
  return { open, accepted: lived }
}

/** Findings that still warn, and those that the builder lives with; the same answer for the same lists, as often as it is asked. */
export const sortedByAcceptance = rememberEach(sortByAcceptance)

/** A rule that looks at one part alone looks at a rack, and so do some others; the rest of that subject look at the floor. */
const areaOf = (finding: Finding, rule: Rule): Area => {
  if (finding.subject === 'drain') return 'Drains'
  if (finding.subject === 'pit') return 'Pits'
  if (finding.subject === 'flow') return 'Water'
  if (finding.subject === 'strength' || finding.subject === 'stance') return 'Strength'
  return rule.over !== 'bay' || rule.isOfRacks ? 'Racks' : 'Floor'
}

const worstFirst = (findings: readonly Finding[]): Finding[] =>
  [...findings].sort((a, b) => rankOf(b) - rankOf(a))

const worstRank = (findings: readonly Finding[]): number => Math.max(0, ...findings.map(rankOf))

const ruleGroups = (byRule: ReadonlyMap<string, readonly Finding[]>, area: Area): RuleGroup[] =>
  rules
    .map((rule) => ({ rule, findings: byRule.get(rule.id) ?? [] }))
    .map(({ rule, findings }) => ({ rule, findings: findings.filter((f) => areaOf(f, rule) === area) }))
    .filter(({ findings }) => findings.length > 0)
    .map(({ rule, findings }) => ({ rule, findings: worstFirst(findings) }))
    .sort((a, b) => worstRank(b.findings) - worstRank(a.findings))

const worstOfArea = ({ rules: list }: AreaGroup): number =>
  Math.max(0, ...list.map(({ findings }) => worstRank(findings)))

/** Findings by area and rule, worst first; among equals in the order of the rules. Areas without any are left out. */
export const warningGroups = (findings: readonly Finding[]): readonly AreaGroup[] => {
  const byRule = new Map<string, Finding[]>()
  for (const finding of findings) {
    const list = byRule.get(finding.rule)
    if (list) list.push(finding)
    else byRule.set(finding.rule, [finding])
  }
  return areas
    .map((area) => ({ area, rules: ruleGroups(byRule, area) }))
    .filter(({ rules: list }) => list.length > 0)
    .sort((a, b) => worstOfArea(b) - worstOfArea(a))
}

export interface StateCount {
  readonly word: StateWord
  readonly rank: number
  /** 0 where the word stands for an area without a warning. */
  readonly count: number
}

export interface AreaState {
  readonly area: Area
  /** Worst first; the good word alone where nothing warns; none where there is nothing to judge yet. */
  readonly states: readonly StateCount[]
}

/** What an area is judged by; the good word of the first stands for the area where nothing warns. */
const subjects: Readonly<Record<Area, readonly [Subject, ...Subject[]]>> = {
  Floor: ['fit'],
  Drains: ['drain'],
  Pits: ['pit'],
  Water: ['flow'],
  Racks: ['fit'],
  Strength: ['strength', 'stance'],
}

const countsOf = (area: Area, findings: readonly Finding[]): StateCount[] =>
  subjects[area]
    .flatMap((subject) =>
      stateWords[subject].map((word, rank): StateCount => {
        const alike = findings.filter((finding) => finding.subject === subject && rankOf(finding) === rank)
        return { word, rank, count: alike.length }
      }),
    )
    .filter(({ count, rank }) => rank > 0 && count > 0)
    .sort((a, b) => b.rank - a.rank)

/** Whether the bay has anything yet that the area's rules could find fault with. */
const isBegun = (area: Area, { bay, towers }: Pick<Evaluation, 'bay' | 'towers'>): boolean => {
  switch (area) {
    case 'Racks':
    case 'Strength':
      return towers > 0
    case 'Drains':
      return bay.levels.drains.size > 0
    case 'Pits':
      return bay.built.some(({ pit }) => pit !== undefined)
    case 'Water':
      // Nobody may read that a bay is even before its flows are solved.
      return bay.water.rows.size > 0
    case 'Floor':
      return bay.built.length > 0
  }
}

/** How each area stands, in one line. */
export const areaStates = (
  groups: readonly AreaGroup[],
  evaluation: Pick<Evaluation, 'bay' | 'towers'>,
): readonly AreaState[] =>
  areas.map((area) => {
    const findings = groups.filter((g) => g.area === area).flatMap((g) => g.rules.flatMap((r) => r.findings))
    const good = { word: stateWords[subjects[area][0]][0], rank: 0, count: 0 }
    if (findings.length > 0) return { area, states: countsOf(area, findings) }
    return { area, states: isBegun(area, evaluation) ? [good] : [] }
  })

/** The worst rank among the findings that name a part; parts that none names are not in it. */
export const worstOfParts = (findings: readonly Finding[]): ReadonlyMap<string, Finding> => {
  const worst = new Map<string, Finding>()
  for (const finding of findings)
    for (const part of finding.parts) {
      const known = worst.get(part)
      if (!known || rankOf(finding) > rankOf(known)) worst.set(part, finding)
    }
  return worst
}
