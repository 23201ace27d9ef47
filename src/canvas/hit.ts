import { boxOf, grown, joined, type Box } from '../geometry/box'
import { boxIndexOf, type BoxIndex } from '../geometry/boxIndex'
import type { Point } from '../geometry/point'
import { isInside, outlineDistance, signedArea } from '../geometry/polygon'
import type { Layout } from '../layout/schema'
import type { Body, BodyRole, Built } from '../model/built'
import type { PartId } from '../model/ids'
import type { Handle } from '../model/partKind'
import { rememberEach } from '../model/remember'
import { kindOf } from '../parts/index'

/** What is under the pointer, from our own index over the bodies: Konva is never asked. */
export interface HitIndex {
  /** The part at a place, or the nearest within `reachMm` of it; of several at one place the smallest, so that nothing hides under a row. */
  readonly at: (p: Point, reachMm: number) => PartId | undefined
  /** Parts that stand wholly inside a box, in the order of the layout. */
  readonly within: (box: Box) => readonly PartId[]
}

/** Feet lie under their rack and would only make the index long. */
const isUnseen = (role: BodyRole): boolean => role === 'foot'

/** Floor that is only kept clear is taken last. */
const isClearing = (role: BodyRole): boolean => role === 'keep-clear' || role === 'door-swing'

interface Target {
  readonly body: Body
  readonly box: Box
  readonly areaMm2: number
}

const targetsOf = rememberEach<Built, null, readonly Target[]>(({ bodies }) =>
  bodies
    .filter(({ role }) => !isUnseen(role))
    .map((body) => ({ body, box: boxOf(body.outline), areaMm2: Math.abs(signedArea(body.outline)) })),
)

const extentOf = (targets: readonly Target[]): Box | undefined => {
  const solid = targets.filter(({ body }) => !isClearing(body.role))
  return solid.length > 0 ? solid.map(({ box }) => box).reduce(joined) : undefined
}

/** How far a place is from a target, mm; 0 within it. */
const gapTo = ({ body }: Target, p: Point): number =>
  isInside(body.outline, p) ? 0 : outlineDistance(body.outline, p).gapMm

interface Found {
  readonly target: Target
  readonly gapMm: number
}

/** Solid before cleared, then what is nearer, then of all that lie under the place the smallest. */
const isBefore = (a: Found, b: Found): boolean => {
  const clearing = Number(isClearing(a.target.body.role)) - Number(isClearing(b.target.body.role))
  if (clearing !== 0) return clearing < 0
  return a.gapMm === b.gapMm ? a.target.areaMm2 < b.target.areaMm2 : a.gapMm < b.gapMm
}

const best = (targets: readonly Target[], index: BoxIndex, p: Point, reachMm: number): Target | undefined => {
  let found: Found | undefined
  for (const number of index.search(grown({ x0: p.x, y0: p.y, x1: p.x, y1: p.y }, reachMm))) {
    const target = targets[number]
    if (!target) continue
    const candidate = { target, gapMm: gapTo(target, p) }
    if (candidate.gapMm <= reachMm && (!found || isBefore(candidate, found))) found = candidate
  }
  return found?.target
}

const holdsBox = (outer: Box, inner: Box): boolean =>
  inner.x0 >= outer.x0 && inner.x1 <= outer.x1 && inner.y0 >= outer.y0 && inner.y1 <= outer.y1

/** An index over all that a bay is built of; made once for each list of built things. */
export const hitIndexOf = rememberEach<readonly Built[], null, HitIndex>((built) => {
  const targets = built.flatMap((b) => targetsOf(b, null))
  const index = boxIndexOf(targets.map(({ box }) => box))
  return {
    at: (p, reachMm) => best(targets, index, p, reachMm)?.body.part,
    within: (box) =>
      built
        .filter((b) => {
          const extent = extentOf(targetsOf(b, null))
          return extent !== undefined && holdsBox(box, extent)
        })
        .map(({ part }) => part),
  }
})

/** A handle with the part that it belongs to. */
export interface PartHandle extends Handle {
  readonly part: PartId
}

/** Handles of the parts chosen, except of those locked in place. */
export const handlesOf = ({ parts }: Layout, selection: readonly PartId[]): readonly PartHandle[] =>
  parts
    .filter(({ id, locked }) => !locked && selection.includes(id))
    .flatMap((part) =>
      kindOf(part)
        .handles(part)
        .map((handle) => ({ ...handle, part: part.id })),
    )

/** The handle nearest to a place, within reach. */
export const handleAt = (
  handles: readonly PartHandle[],
  p: Point,
  reachMm: number,
): PartHandle | undefined => {
  let found: PartHandle | undefined
  let least = reachMm
  for (const handle of handles) {
    const gapMm = Math.hypot(handle.at.x - p.x, handle.at.y - p.y)
    if (gapMm <= least) {
      found = handle
      least = gapMm
    }
  }
  return found
}
