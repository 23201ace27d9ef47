import { boxOf, grown, holds } from '../geometry/box'
import { placeAlong } from '../geometry/path'
import type { Place } from '../geometry/point'
import type { Built, Tube } from '../model/built'
import type { PartId } from '../model/ids'
import { type Join, type Levels, sitePlace } from '../model/levels'

/** Water's way from one part to another, before it is pipe. Levels from the benchmark's zero. */
export interface SupplyRun {
  readonly join: Join
  /** Where it leaves what gives the water, and where it comes to what takes it. */
  readonly from: Place
  readonly to: Place
  /** The next place along the main that a supply's water runs on to; undefined where it comes in along the main. */
  readonly on: Place | undefined
  readonly stock: string
  /** Of the main that a supply gives to or a row takes from; that of the run itself behind another row's valve. */
  readonly mainStock: string
  /** Where it meets the main is under the floor: one clamp an end is too few. */
  readonly isBuried: boolean
}

/** What runs are found from. */
export interface Ways {
  readonly builtOf: ReadonlyMap<PartId, Built>
  readonly levels: Levels
}

export const mainOf = ({ tubes }: Built): Tube | undefined => tubes.find(({ role }) => role === 'main')

/** Half the gap between a main's end and the last fitting on it, mm. */
const NEAR_MM = 25

/** Whether a main is wholly under the floor at a place on it. */
export const isUnderFloor = (main: Built, at: Place): boolean =>
  main.bodies.some(
    ({ role, toMm, outline }) => role === 'main' && toMm < 0 && holds(grown(boxOf(outline), NEAR_MM), at),
  )

/** Where a row's water is given: on a main, or at the head of another row's riser pipe. */
const givenAt = ({ kind, alongMm }: Join, giver: Built, levels: Levels): Place | undefined => {
  if (kind === 'zone-to-main') {
    const main = mainOf(giver)
    return main && placeAlong(main.path, alongMm)
  }
  const head = giver.feed?.joints[giver.feed.shareJoint]
  return head && sitePlace(levels, giver, head)
}

const rowRun = (join: Join, row: Built, giver: Built, levels: Levels): SupplyRun | undefined => {
  const from = givenAt(join, giver, levels)
  const stock = row.feed?.inletStock
  const mainStock = mainOf(giver)?.stock ?? stock
  return from && stock !== undefined && mainStock !== undefined
    ? {
        join,
        from,
        to: sitePlace(levels, row, join.at),
        on: undefined,
        stock,
        mainStock,
        isBuried: isUnderFloor(giver, from),
      }
    : undefined
}

const isSamePlace = (a: Place | undefined, b: Place | undefined): boolean =>
  a === b || (a !== undefined && b !== undefined && a.x === b.x && a.y === b.y && a.z === b.z)

/** The place after an end of a path; undefined between its ends, and on a ring, which has none. */
export const nextFrom = (path: readonly Place[], at: Place): Place | undefined => {
  const [isFirst, isLast] = [isSamePlace(path[0], at), isSamePlace(path.at(-1), at)]
  if (isFirst === isLast) return undefined
  return isFirst ? path[1] : path.at(-2)
}

const supplyRun = (join: Join, supply: Built, giver: Built): SupplyRun | undefined => {
  const main = mainOf(giver)
  const from = supply.pump?.at ?? supply.headBox?.at
  if (!main || !from) return undefined
  const to = placeAlong(main.path, join.alongMm)
  const stock = supply.pump?.stock ?? main.stock
  return {
    join,
    from,
    to,
    on: nextFrom(main.path, to),
    stock,
    mainStock: main.stock,
    isBuried: isUnderFloor(giver, to),
  }
}

/** The run of a join between a row or a supply and what it comes to; undefined where nothing is in reach. */
export const supplyRunOf = (join: Join, { builtOf, levels }: Ways): SupplyRun | undefined => {
  const from = builtOf.get(join.from)
  const to = join.to === undefined ? undefined : builtOf.get(join.to)
  if (!from || !to) return undefined
  switch (join.kind) {
    case 'zone-to-main':
    case 'zone-to-zone':
      return rowRun(join, from, to, levels)
    case 'pump-to-main':
    case 'box-to-main':
      return supplyRun(join, from, to)
    default:
      return undefined
  }
}

/** Whether two runs are the same pipe, whatever else was computed anew. */
export const isSameRun = (a: SupplyRun, b: SupplyRun): boolean =>
  a.join.kind === b.join.kind &&
  a.stock === b.stock &&
  a.mainStock === b.mainStock &&
  a.isBuried === b.isBuried &&
  isSamePlace(a.from, b.from) &&
  isSamePlace(a.to, b.to) &&
  isSamePlace(a.on, b.on)
