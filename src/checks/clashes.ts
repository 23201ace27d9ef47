import { overlaps } from '../geometry/box'
import { gapBetween } from '../geometry/polygon'
import type { Point } from '../geometry/point'
import type { Body } from '../model/built'
import type { PartId } from '../model/ids'
import { shareHeight, type Solid, type Solids } from './solids'
import { CLOSE_MM } from './found'
import { partingShift } from './parting'

/** Two bodies of two parts in one place; `deepMm` is the least shift that parts them. */
export interface Clash {
  readonly a: Body
  readonly b: Body
  readonly deepMm: number
  readonly from: Point
  readonly to: Point
  /** The least shift of the first part that takes all of it clear of the second; none where no shift is obvious. */
  readonly shift?: Point
}

export interface Owner {
  readonly part: PartId
  readonly solids: Solids
}

const deeper = (worst: Clash | undefined, a: Solid, b: Solid): Clash | undefined => {
  if (!overlaps(a.box, b.box) || !shareHeight(a.body, b.body)) return worst
  const gap = gapBetween(a.body.outline, b.body.outline)
  const deepMm = -gap.gapMm
  if (deepMm <= CLOSE_MM || (worst && worst.deepMm >= deepMm)) return worst
  return { a: a.body, b: b.body, deepMm, from: gap.from, to: gap.to }
}

/** Where two parts run deepest into each other, if they do. */
export const worstClash = (a: Solids, b: Solids): Clash | undefined => {
  let worst: Clash | undefined
  for (const one of a.all)
    if (overlaps(one.box, b.box)) for (const other of b.all) worst = deeper(worst, one, other)
  return worst
}

const withShift = (clash: Clash, a: Solids, b: Solids): Clash => {
  const { from, to } = clash
  const shift = partingShift(a, b, { x: to.x - from.x, y: to.y - from.y })
  return { ...clash, ...(shift && { shift }) }
}

/** For each pair of parts that run into each other, the worst place. `left` and `right` may be the same list. */
export const clashesBetween = (left: readonly Owner[], right: readonly Owner[]): Clash[] => {
  const clashes: Clash[] = []
  left.forEach((a, index) => {
    right.forEach((b, other) => {
      const isPairSeen = left === right && other <= index
      if (isPairSeen || a.part === b.part || !overlaps(a.solids.box, b.solids.box)) return
      const clash = worstClash(a.solids, b.solids)
      if (clash) clashes.push(withShift(clash, a.solids, b.solids))
    })
  })
  return clashes
}
