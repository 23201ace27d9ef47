import { placeOnCut } from '../../../evaluate/longCut/cut'
import type { LongCut } from '../../../evaluate/longCut/section'
import type { Bay } from '../../../checks/context'
import { type Finding, rankOf } from '../../../model/finding'
import { dropOver } from '../../../units/slope'
import { groundAt } from '../../../evaluate/longCut/groundAt'
import type { CutMark } from './LongCutDrawing'

/** Parts whose findings belong to a section: those it runs through, and those whose water comes in along it. */
const partsOf = ({ through, outlets, drains, pit }: LongCut): ReadonlySet<string> =>
  new Set([
    ...through,
    ...outlets.map(({ part }) => part),
    ...drains.flatMap(({ branches }) => branches.map(({ part }) => part)),
    ...(pit?.inlets.map(({ part }) => part) ?? []),
  ])

/** What a section shows of: how water falls home, what holds it, and where is dug; not how towers are fed nor how aisles fit. */
const isOfLevels = ({ subject, rule }: Finding): boolean =>
  subject === 'drain' ||
  subject === 'pit' ||
  /^(trench|service|suction|level-stack|pit|drain|outlet|tip|dig|hole|trough|gutter|overflow)-/.test(rule)

/** The worst finding of a way home; findings come worst first. */
export const worstOfWay = (findings: readonly Finding[], cut: LongCut): Finding | undefined => {
  const ours = partsOf(cut)
  return findings.find((finding) => isOfLevels(finding) && finding.parts.some((part) => ours.has(part)))
}

/** How far a length falls short of what is wanted, mm; nothing for what is no length. */
const shortMm = ({ measured, limit }: Finding): number =>
  measured.unit === 'mm' ? Math.abs(limit.value - measured.value) : 0

/**
 * The findings that a change brings or makes worse in rank, the one that broke first before the others: as far as levels move alike,
 * that is the one which by now is shortest of its limit.
 */
export const brokenBy = (before: readonly Finding[], after: readonly Finding[]): readonly Finding[] => {
  const ranks = new Map(before.map((finding) => [finding.key, rankOf(finding)]))
  return after
    .filter((finding) => rankOf(finding) > (ranks.get(finding.key) ?? 0))
    .toSorted((a, b) => rankOf(b) - rankOf(a) || shortMm(b) - shortMm(a))
}

/** The level at which a finding is marked: at the drain or the pit that it names first, else at the floor. */
const levelOf = (finding: Finding, cut: LongCut, sMm: number): number => {
  const inlet = cut.pit?.inlets.find(({ part }) => finding.parts.includes(part))
  if (cut.pit && sMm >= cut.pit.fromMm && inlet) return inlet.invertMm
  const drain = cut.drains.find(({ fromMm, toMm }) => sMm >= fromMm && sMm <= toMm)
  if (drain && finding.parts.includes(drain.part))
    return drain.highInvertMm - dropOver(sMm - drain.fromMm, drain.slopeMmPerM)
  const outlet = cut.outlets.find(({ part }) => finding.parts.includes(part))
  if (outlet) return outlet.invertMm
  return cut.pit && finding.parts.includes(cut.pit.part) ? cut.pit.facts.overflowMm : groundAt(cut, sMm)
}

/** A finding further aside of the section than this is not marked on it, mm: it is named in words alone. */
const NEAR_MM = 4000

/** Where a finding is marked on the section; undefined where it lies aside of it. */
export const markOf = (finding: Finding, cut: LongCut, bay: Bay): CutMark | undefined => {
  const on = placeOnCut(bay, cut.along, finding.at)
  if (!on || on.asideMm > NEAR_MM) return undefined
  // What is found where a drain comes in stands at the near wall, and what is found in a pit stays inside it.
  const isInlet = finding.parts.some((part) => cut.pit?.inlets.some((inlet) => inlet.part === part))
  const isInPit = cut.pit && finding.parts.includes(cut.pit.part)
  const sMm = isInlet && isInPit ? (cut.pit?.fromMm ?? on.sMm) : Math.min(on.sMm, cut.endMm)
  return { state: finding.state, sMm, levelMm: levelOf(finding, cut, sMm) }
}
