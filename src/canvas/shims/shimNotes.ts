import { BLOCK_OVER_MM, REFUSED_OVER_MM, shimState } from '../../checks/shimLimits'
import type { Evaluation } from '../../evaluate/evaluation'
import type { Point } from '../../geometry/point'
import { distance } from '../../geometry/point'
import { nearestOnSegment } from '../../geometry/segment'
import type { Foot } from '../../model/levels'
import type { PartId } from '../../model/ids'
import { nameOf } from '../../store/partNames'
import { footPairs, stackWords } from '../../sheets/shims'
import type { Writer } from '../../units/writer'
import type { Label } from '../label'
import { pxOf, type Lens } from '../lens'
import { shimSpots, type ShimSpots } from './shimSpots'

const nameIn = ({ layout }: Evaluation, part: PartId): string => {
  const found = layout.parts.find(({ id }) => id === part)
  return found ? nameOf(found) : part
}

/** `N1, pair 3, left foot`; of a part that has no pairs its name. */
const footName = (evaluation: Evaluation, part: PartId, foot: number): string => {
  const { builtOf, levels } = evaluation.bay
  const name = nameIn(evaluation, part)
  const rack = builtOf.get(part)?.rack
  const feet = levels.feet.get(part) ?? []
  const wanted: Foot | undefined = feet[foot]
  const pair = rack && footPairs(rack, feet).find(({ left, right }) => left === wanted || right === wanted)
  return pair
    ? `${name}, pair ${pair.pair}, ${pair.left === wanted ? 'left' : 'right'} foot`
    : `${name}, foot`
}

/** What a foot's state asks for. */
const stateNotes = (shimMm: number, { onTape }: Writer): string[] => {
  const state = shimState(shimMm)
  if (state === 'Fits') return []
  return state === 'Tight'
    ? [`Tight: over ${onTape(BLOCK_OVER_MM)} a block is steadier`]
    : [`Clash: over ${onTape(REFUSED_OVER_MM)} grade the floor or step the row`]
}

/** Nearest of many within a reach, by index. */
const nearest = (count: number, reachMm: number, gapMm: (index: number) => number): number | undefined => {
  let found: number | undefined
  let least = reachMm
  for (let i = 0; i < count; i += 1)
    if (gapMm(i) <= least) {
      found = i
      least = gapMm(i)
    }
  return found
}

const footUnder = ({ feetXy, feetMm }: ShimSpots, at: Point, reachMm: number): number | undefined =>
  nearest(feetMm.length, reachMm, (i) =>
    Math.hypot((feetXy[2 * i] ?? 0) - at.x, (feetXy[2 * i + 1] ?? 0) - at.y),
  )

const bearerUnder = ({ bearers, bearersMm }: ShimSpots, at: Point, reachMm: number): number | undefined =>
  nearest(bearersMm.length, reachMm, (i) => {
    const from = { x: bearers[4 * i] ?? 0, y: bearers[4 * i + 1] ?? 0 }
    const to = { x: bearers[4 * i + 2] ?? 0, y: bearers[4 * i + 3] ?? 0 }
    return distance(nearestOnSegment(from, to, at), at)
  })

const bearerNote = (evaluation: Evaluation, spots: ShimSpots, bearer: number, writer: Writer): string => {
  const from = evaluation.bay.builtOf.get(spots.part)?.rack?.bearerShims[bearer]?.fromHighMm ?? 0
  const where = `bearer ${bearer + 1}, ${writer.length(from)} from the high end`
  return `${nameIn(evaluation, spots.part)}, ${where}: ${stackWords(spots.bearersMm[bearer] ?? 0, writer)}`
}

/** How near the pointer must come, px. */
const REACH_PX = 9

/** What is under the foot at a place, or on the bearer there: `N1, pair 3, left foot: 1-1/8" = 1" + 1/8"`. */
export const shimNotes = (evaluation: Evaluation, at: Point, { view, writer }: Lens): readonly string[] => {
  const reachMm = REACH_PX / view.pxPerMm
  const near = shimSpots(evaluation).filter(
    ({ box }) =>
      at.x >= box.x0 - reachMm &&
      at.x <= box.x1 + reachMm &&
      at.y >= box.y0 - reachMm &&
      at.y <= box.y1 + reachMm,
  )
  for (const spots of near) {
    const foot = footUnder(spots, at, reachMm)
    if (foot === undefined) continue
    const shimMm = spots.feetMm[foot] ?? 0
    const words = `${footName(evaluation, spots.part, foot)}: ${stackWords(shimMm, writer)}`
    return [words, ...stateNotes(shimMm, writer)]
  }
  for (const spots of near) {
    const bearer = bearerUnder(spots, at, reachMm)
    if (bearer !== undefined) return [bearerNote(evaluation, spots, bearer, writer)]
  }
  return []
}

const tallest = ({ feetMm }: ShimSpots): number =>
  feetMm.reduce((most, mm, index) => (mm > (feetMm[most] ?? 0) ? index : most), 0)

/** The tallest foot of each row that is over a limit, with its state, where it is in sight. */
export const shimLabels = (lens: Lens, evaluation: Evaluation): readonly Label[] =>
  shimSpots(evaluation).flatMap((spots) => {
    const foot = tallest(spots)
    const shimMm = spots.feetMm[foot] ?? 0
    const state = shimState(shimMm)
    if (state === 'Fits') return []
    const at = pxOf(lens, { x: spots.feetXy[2 * foot] ?? 0, y: spots.feetXy[2 * foot + 1] ?? 0 })
    if (at.x < 0 || at.y < 0 || at.x > lens.size.width || at.y > lens.size.height) return []
    const words = `${nameIn(evaluation, spots.part)}: ${state} ${lens.writer.onTape(shimMm)}`
    return [{ at: { x: at.x, y: at.y - 20 }, words, state }]
  })

/** How many feet of the bay stand on more than a stack of shims should be, worst first. */
export const shimCounts = (
  evaluation: Evaluation,
): readonly { readonly state: 'Tight' | 'Clash'; readonly feet: number }[] => {
  const states = shimSpots(evaluation).flatMap(({ feetMm }) => Array.from(feetMm, shimState))
  return (['Clash', 'Tight'] as const)
    .map((state) => ({ state, feet: states.filter((one) => one === state).length }))
    .filter(({ feet }) => feet > 0)
}
