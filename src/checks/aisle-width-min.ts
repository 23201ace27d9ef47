import type { Box } from '../geometry/box'
import type { Point } from '../geometry/point'
import { nearestOn } from '../geometry/polyline'
import type { Finding, Mend, StateWord } from '../model/finding'
import type { PartId } from '../model/ids'
import { type Aisle, aisleClass, type AisleClass, aisleState } from './aisles'
import { worstClash } from './clashes'
import type { Bay, BayRule, Words } from './context'
import { CLOSE_MM, found, lengthOf, term } from './found'
import { standingOf } from './solids'
import { rowBoxes } from './standing'

const RULE = 'aisle-width-min'

const partsOf = (aisle: Aisle): PartId[] =>
  aisle.other === undefined ? [aisle.row] : [aisle.row, aisle.other]

/** Unit shift that takes the row away from what it is too near to. */
const away = ({ out }: Aisle): Point => ({ x: 0 - out.x, y: 0 - out.y })

const isSameWay = (a: Point, b: Point) => a.x === b.x && a.y === b.y

/** Room behind a row, on the side away from the narrow aisle, over what the aisles there need. */
const roomBehind = (row: PartId, way: Point, bay: Bay): number => {
  let room = Infinity
  for (const other of bay.aislesAt.get(row) ?? []) {
    const behind = other.row === row ? other.out : away(other)
    if (isSameWay(behind, way)) room = Math.min(room, other.widthMm - other.needMm)
  }
  return room
}

const isLevelWith = (a: Box, b: Box, { along }: Aisle, way: Point): boolean =>
  along === 'end' && (way.x === 0 ? a.y0 === b.y0 && a.y1 === b.y1 : a.x0 === b.x0 && a.x1 === b.x1)

/** Rows that lie side by side in one block: along themselves they are only moved together. */
const blockOf = (aisle: Aisle, way: Point, bay: Bay): PartId[] => {
  const rows = rowBoxes(bay.built)
  const mine = rows.find(({ part }) => part === aisle.row)
  const mates = rows
    .filter(({ box }) => mine && isLevelWith(box, mine.box, aisle, way))
    .map(({ part }) => part)
  return mates.length > 0 ? mates : [aisle.row]
}

/** Outlets that have a drain must have one after the move too. */
const keepsDrains = (parts: readonly PartId[], shift: Point, bay: Bay): boolean => {
  const drains = bay.built.flatMap(({ tubes }) => tubes.filter(({ role }) => role === 'drain'))
  return bay.joins
    .filter((join) => join.kind === 'outlet-to-drain' && join.to !== undefined && parts.includes(join.from))
    .every(({ at }) => {
      const moved = { x: at.x + shift.x, y: at.y + shift.y }
      return drains.some(({ path }) => nearestOn(path, moved).gapMm <= bay.settings.outletReachMm + CLOSE_MM)
    })
}

/** The row, or its whole block, moved away by what is missing, where there is room behind and the drains stay under the outlets. */
const mendFor = (aisle: Aisle, bay: Bay): Mend | undefined => {
  const short = aisle.needMm - aisle.widthMm
  const way = away(aisle)
  const shift = { x: way.x * short, y: way.y * short }
  const parts = blockOf(aisle, way, bay)
  if (parts.some((part) => roomBehind(part, way, bay) < short) || !keepsDrains(parts, shift, bay))
    return undefined
  return { kind: 'move', parts, dxMm: shift.x, dyMm: shift.y }
}

const findingOf = (aisle: Aisle, state: StateWord, bay: Bay): Finding => {
  const mend = mendFor(aisle, bay)
  return found({
    rule: RULE,
    subject: 'fit',
    state,
    parts: partsOf(aisle),
    detail: aisle.otherIs === 'wall' ? `${aisle.out.x},${aisle.out.y}` : '',
    at: { x: (aisle.from.x + aisle.to.x) / 2, y: (aisle.from.y + aisle.to.y) / 2 },
    span: [aisle.from, aisle.to],
    measured: lengthOf(aisle.widthMm),
    limit: lengthOf(aisle.needMm),
    facts: {
      is: aisle.otherIs,
      along: aisle.along,
      class: aisleClass(aisle.widthMm, bay.settings),
      cartMm: bay.settings.cartMm,
      workMm: bay.settings.workAisleMm,
    },
    terms: [
      term('Leaf reach, now', lengthOf(bay.site.leafReachMm)),
      term('Leaf to leaf, now', lengthOf(aisle.widthMm)),
      term('Wanted', lengthOf(aisle.needMm)),
      term('Nobody passes under', lengthOf(aisle.clashBelowMm)),
    ],
    ...(mend && { mend }),
  })
}

/** Two things in one place are said as that, not as an aisle without width as well. */
const isOverlap = ({ row, other, widthMm }: Aisle, { builtOf }: Bay): boolean => {
  if (widthMm >= 0 || other === undefined) return false
  const [a, b] = [row, other]
    .map((part) => builtOf.get(part))
    .map((built) => built && standingOf(built, null))
  return a !== undefined && b !== undefined && worstClash(a, b) !== undefined
}

/** What stands across the way, and what is wanted of the way to it. */
const wants = ({ facts, limit }: Finding, { onTape }: Words): string => {
  if (facts['is'] === 'obstacle') return 'the way past it wants'
  if (facts['is'] === 'wall') return 'wanted there is'
  const cartMm = Number(facts['cartMm'])
  return limit.value > Number(facts['workMm']) ? `a ${onTape(cartMm)} cart wants` : 'a work aisle wants'
}

const classWords: Readonly<Record<AisleClass, string>> = {
  squeeze: ', a squeeze',
  scouting: ', a scouting aisle',
  cart: ', a cart aisle',
  work: ', a work aisle',
  main: ', a main aisle',
  'door/head': ', a head aisle',
}

/** What the trade calls an aisle between two rows of this width; other ways have no name. */
const classOf = ({ facts }: Finding): string =>
  // `class` is put in by findingOf above, from aisleClass.
  facts['is'] === 'row' ? classWords[facts['class'] as AisleClass] : ''

/** Aisles are measured leaf to leaf, between the widest parts of what stands on both sides. */
export const aisleWidthMin: BayRule = {
  over: 'bay',
  id: RULE,
  title: 'Aisle width',
  limit: 'Work aisle 36 in or cart + 12 in; row ends 36 in; leaf to wall 6 in; nobody passes under 18 in',
  source: 'Common practice, no source',
  mending: 'Move the row away from what it is too near to, or take a narrower crop or cart.',
  check: (bay) =>
    bay.aisles.flatMap((aisle) => {
      const state = aisleState(aisle)
      return state === 'Fits' || isOverlap(aisle, bay) ? [] : [findingOf(aisle, state, bay)]
    }),
  say: (finding, words) => {
    const { parts, measured, limit, facts } = finding
    const { onTape, name } = words
    const [row = '', other] = parts
    const way = facts['is'] === 'wall' ? `${name(row)} to the wall` : `${name(row)} to ${name(other ?? '')}`
    const deep = onTape(-measured.value)
    if (measured.value < 0)
      return deep === onTape(0) ? `${way}: they touch.` : `${way}: they run ${deep} into each other.`
    return `${way} is ${onTape(measured.value)} leaf to leaf${classOf(finding)}; ${wants(finding, words)} ${onTape(limit.value)}.`
  },
}
