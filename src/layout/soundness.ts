import { boxOf } from '../geometry/box'
import type { Point } from '../geometry/point'
import { signedArea } from '../geometry/polygon'
import { segmentGap, segmentsCross, TOUCH_MM } from '../geometry/segment'
import { feet } from '../units/length'
import { asTyped } from '../units/precision'
import { writerFor } from '../units/writer'
import type { House } from './house'
import { rememberEach } from '../model/remember'
import { quoted } from './faultWords'
import { measuredFault } from './measuredFault'
import type { KeptPlan, Layout, Papers, Part } from './schema'

/** A house under one square foot is a slip of the pen. */
const LEAST_AREA_MM2 = feet(1) ** 2

type Wall = readonly [Point, Point]

const wallsOf = (outline: readonly Point[]): Wall[] =>
  outline.map((from, index) => [from, outline[(index + 1) % outline.length] ?? from])

/** Two walls that share the corner b lie on each other where the far end of one lies on the other. */
const isFoldedBack = ([a, b]: Wall, [, c]: Wall): boolean =>
  segmentGap(b, c, a) <= TOUCH_MM || segmentGap(a, b, c) <= TOUCH_MM

/** Walls that follow each other share a corner, and may share no more; all others share nothing. */
const isMet = (walls: readonly Wall[], i: number, j: number): boolean => {
  const [first, second] = [walls[i], walls[j]]
  if (!first || !second) return false
  if (j === i + 1) return isFoldedBack(first, second)
  if (i === 0 && j === walls.length - 1) return isFoldedBack(second, first)
  return segmentsCross(first[0], first[1], second[0], second[1]) !== undefined
}

const crossing = (outline: readonly Point[]): readonly [number, number] | undefined => {
  const walls = wallsOf(outline)
  for (let i = 0; i < walls.length; i += 1)
    for (let j = i + 1; j < walls.length; j += 1) if (isMet(walls, i, j)) return [i + 1, j + 1]
  return undefined
}

const NO_AREA = "the house's outline has no area"

const outlineFault = (outline: readonly Point[]): string | undefined => {
  const { x0, y0, x1, y1 } = boxOf(outline)
  if ((x1 - x0) * (y1 - y0) < LEAST_AREA_MM2) return NO_AREA
  const met = crossing(outline)
  if (met) return `the house's outline crosses itself: wall ${met[0]} meets wall ${met[1]}`
  const areaMm2 = signedArea(outline)
  if (Math.abs(areaMm2) < LEAST_AREA_MM2) return NO_AREA
  if (areaMm2 < 0) return "the house's outline runs clockwise; its corners must be listed anticlockwise"
  return undefined
}

/** What the schema cannot say of a house: in words without a full stop, or undefined where it is sound. */
export const houseFault = ({ outline, curvedWalls }: House): string | undefined => {
  const lost = curvedWalls.findIndex(({ edge }) => edge >= outline.length)
  if (lost < 0) return outlineFault(outline)
  return `curved wall ${lost + 1} of the house stands on edge ${curvedWalls[lost]?.edge}, and the last edge is ${outline.length - 1}`
}

/** Two parts of one id could not be told apart by any edit. */
const idFault = (parts: readonly Part[]): string | undefined => {
  const seen = new Map<string, number>()
  for (const [index, { id }] of parts.entries()) {
    const first = seen.get(id)
    if (first !== undefined) return `part ${first + 1} and part ${index + 1} have the same id, ${id}`
    seen.set(id, index)
  }
  return undefined
}

/** What the schema cannot say of a plan: in words without a full stop, or undefined where it is sound. */
const planFault = ({ house, parts, bench, settings }: Layout | KeptPlan): string | undefined =>
  houseFault(house) ?? idFault(parts) ?? measuredFault(bench.measured, writerFor(settings.units, asTyped))

/** Kept plans are never changed, so that each is looked at once. */
const keptFault = rememberEach<KeptPlan, null, string | undefined>((plan) => planFault(plan))

const keptPlans = ({ issued, before, versions }: Papers): readonly (readonly [string, KeptPlan | null])[] => [
  ['the plan of the last issue', issued],
  ['the plan of the issue before the last', before],
  ...versions.map(({ name, plan }) => [`version ${quoted(name)}`, plan] as const),
]

/** Issues are told from each other by their numbers, and the newest has the greatest. */
const numberFault = ({ issues }: Papers): string | undefined => {
  const later = issues.findIndex(({ number }, index) => number <= (issues[index - 1]?.number ?? 0))
  if (later < 0) return undefined
  return `issue ${issues[later]?.number} of the papers comes after issue ${issues[later - 1]?.number}; numbers must rise`
}

const papersFault = (papers: Papers): string | undefined => {
  for (const [where, plan] of keptPlans(papers)) {
    const fault = plan && keptFault(plan, null)
    if (fault) return `${where}: ${fault}`
  }
  return numberFault(papers)
}

/** What the schema cannot say of a layout: in words without a full stop, or undefined where it is sound. */
export const layoutFault = (layout: Layout): string | undefined =>
  planFault(layout) ?? papersFault(layout.papers)
