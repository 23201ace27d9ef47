import { fittings } from '../catalogue/fittings'
import { shimKey, shimStack } from '../catalogue/shims'
import { stocks } from '../catalogue/stock'
import { tapeOf } from '../catalogue/threads'
import type { Bay } from '../checks/context'
import { placeAlong } from '../geometry/path'
import type { Place, Point } from '../geometry/point'
import type { Built } from '../model/built'
import type { PartId } from '../model/ids'
import { rememberEach } from '../model/remember'
import type { Evaluation } from './evaluation'
import { atJoin } from './takeOff/atJoins'
import { stockAndMark } from './takeOff/pieces'
import { fittingsOf, holeItem } from './takeOff/tally'

/** Where the pieces of a counted thing are, floor coordinates in mm; flat, for a painter. */
export interface Places {
  /** x, y of each piece that stands at a place; several may stand at one. */
  readonly points: readonly number[]
  /** Whose each of these is, in the same order. */
  readonly owners: readonly PartId[]
  /** x0, y0, x1, y1 of each piece that lies along a line, and of each leg of a run of pipe. */
  readonly lines: readonly number[]
  /** How many pieces and runs these are. */
  readonly count: number
}

interface Growing {
  readonly points: number[]
  readonly owners: PartId[]
  readonly lines: number[]
  count: number
}

const none = (): Growing => ({ points: [], owners: [], lines: [], count: 0 })

const addPoint = (places: Growing, part: PartId, { x, y }: Point): void => {
  places.points.push(x, y)
  places.owners.push(part)
  places.count += 1
}

/** Seen from above a shorter line is a place, mm. */
const LEAST_LINE_MM = 20

const addPath = (places: Growing, part: PartId, path: readonly Place[]): void => {
  const [first] = path
  const legs = path.slice(1).flatMap((to, index) => {
    const from = path[index] ?? to
    return Math.hypot(to.x - from.x, to.y - from.y) < LEAST_LINE_MM ? [] : [from.x, from.y, to.x, to.y]
  })
  if (legs.length > 0) {
    places.lines.push(...legs)
    places.count += 1
  } else if (first) addPoint(places, part, first)
}

const stockKeys: ReadonlySet<string> = new Set(stocks.map(({ key }) => key))
const fittingKeys: ReadonlySet<string> = new Set(fittings.map(({ key }) => key))

const addPieces = (places: Growing, { part, sticks, tubes }: Built, item: string): void => {
  const [wanted, mark] = stockAndMark(item)
  for (const { stock, mark: own, from, to } of sticks)
    if (stock === wanted && (mark === undefined || mark === own)) addPath(places, part, [from, to])
  for (const { stock, role, path } of tubes)
    if (stock === wanted && (mark === undefined || mark === role)) addPath(places, part, path)
}

const isMade = (item: string, wanted: string): boolean =>
  wanted === 'ptfe-tape' ? tapeOf(item) > 0 : item === wanted

const addFittings = (places: Growing, built: Built, wanted: string): void => {
  for (const { item, at } of fittingsOf(built)) if (isMade(item, wanted)) addPoint(places, built.part, at)
  if (wanted.endsWith('-hole'))
    for (const stick of built.sticks)
      if (holeItem(stick) === wanted) for (const _ of stick.holes) addPoint(places, built.part, stick.from)
}

/** Where one part has a thing; remembered while the part and the question stay the same. */
const ofBuilt = rememberEach<Built, string, Places>((built, item) => {
  const places = none()
  if (stockKeys.has(stockAndMark(item)[0]) && !fittingKeys.has(item)) addPieces(places, built, item)
  else addFittings(places, built, item)
  return places
})

const addJoins = (places: Growing, { joins, builtOf }: Bay, item: string): void => {
  for (const join of joins)
    for (const made of atJoin(join, builtOf)) if (made.item === item) addPoint(places, join.from, made.at)
}

/** Of a stack that only an absurd floor asks for no more are pointed out. */
const MOST_SHIMS = 20

const addFootShims = (places: Growing, { levels }: Bay, item: string): void => {
  for (const [part, feet] of levels.feet)
    for (const { at, shimMm } of feet)
      for (const { thickMm, count } of shimStack(shimMm))
        if (shimKey('foot-shim', thickMm) === item)
          for (let shim = 0; shim < Math.min(count, MOST_SHIMS); shim += 1) addPoint(places, part, at)
}

const addBells = (places: Growing, { levels, builtOf }: Bay): void => {
  for (const [part, { bellsMm }] of levels.drains) {
    const path = builtOf.get(part)?.tubes.find(({ role }) => role === 'drain')?.path
    if (path) for (const alongMm of bellsMm) addPoint(places, part, placeAlong(path, alongMm))
  }
}

/** What stands where parts meet, under feet, and between the sticks of a drain. */
const between = (bay: Bay, item: string): Places => {
  const places = none()
  addJoins(places, bay, item)
  if (item.startsWith('foot-shim-')) addFootShims(places, bay, item)
  if (item === 'bell-joint') addBells(places, bay)
  return places
}

/**
 * Where the pieces of a line of the take-off are: of a counted thing by its catalogue key, of a stock by its key, with a length
 * behind it or not, and of its pieces of one mark. Nothing for what the bay has none of.
 */
export const placesOf = (evaluation: Evaluation, item: string): Places => {
  const { bay } = evaluation
  const all = none()
  const parts = [...bay.built, ...bay.joinedPipes].map((built) => ofBuilt(built, item))
  for (const places of [...parts, between(bay, item)]) {
    for (const coordinate of places.points) all.points.push(coordinate)
    for (const owner of places.owners) all.owners.push(owner)
    for (const coordinate of places.lines) all.lines.push(coordinate)
    all.count += places.count
  }
  return all
}
