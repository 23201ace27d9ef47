import { rankOf, type Finding, type Mend } from '../model/finding'
import type { PartId } from '../model/ids'
import { type Aisle, aisleClass } from './aisles'
import type { Bay, BayRule } from './context'
import { found, lengthOf, stateFor, term } from './found'

const RULE = 'aisle-width-min'

const partsOf = (aisle: Aisle): PartId[] =>
  aisle.other === undefined ? [aisle.row] : [aisle.row, aisle.other]

/** Unit shift that takes the row away from what it is too near to. */
const away = ({ from, to }: Aisle) => ({ x: Math.sign(from.x - to.x), y: Math.sign(from.y - to.y) })

const isSameWay = (a: { x: number; y: number }, b: { x: number; y: number }) => a.x === b.x && a.y === b.y

/** Room behind a row, on the side away from the narrow aisle, over what the aisles there need. */
const roomBehind = (row: PartId, way: { x: number; y: number }, bay: Bay): number => {
  let room = Infinity
  for (const other of bay.aisles) {
    const isMine = other.row === row || other.other === row
    if (!isMine) continue
    const out = away(other)
    const behind = other.row === row ? { x: -out.x, y: -out.y } : out
    if (isSameWay(behind, way)) room = Math.min(room, other.widthMm - other.needMm)
  }
  return room
}

/** Rows whose outlets share a drain with this row: across that drain they can only move together. */
const blockOf = (row: PartId, bay: Bay): PartId[] => {
  const drains = new Set(
    bay.joins.filter((join) => join.from === row && join.to !== undefined).map((join) => join.to),
  )
  const mates = bay.joins
    .filter((join) => join.kind === 'outlet-to-drain' && drains.has(join.to))
    .map((join) => join.from)
  return [...new Set([row, ...mates])]
}

const mendFor = (aisle: Aisle, bay: Bay): Mend | undefined => {
  const short = aisle.needMm - aisle.widthMm
  const way = away(aisle)
  const parts = aisle.along === 'end' ? blockOf(aisle.row, bay) : [aisle.row]
  if (parts.some((part) => roomBehind(part, way, bay) < short)) return undefined
  return { kind: 'move', parts, dxMm: way.x * short, dyMm: way.y * short }
}

const findingOf = (aisle: Aisle, bay: Bay): Finding => {
  const mend = mendFor(aisle, bay)
  return found({
    rule: RULE,
    subject: 'fit',
    state: stateFor('fit', aisle.widthMm, aisle.needMm, aisle.clashBelowMm),
    parts: partsOf(aisle),
    detail:
      aisle.otherIs === 'wall'
        ? `${Math.sign(aisle.to.x - aisle.from.x)},${Math.sign(aisle.to.y - aisle.from.y)}`
        : '',
    at: { x: (aisle.from.x + aisle.to.x) / 2, y: (aisle.from.y + aisle.to.y) / 2 },
    span: [aisle.from, aisle.to],
    measured: lengthOf(aisle.widthMm),
    limit: lengthOf(aisle.needMm),
    facts: {
      is: aisle.otherIs,
      along: aisle.along,
      class: aisleClass(aisle.widthMm, bay.settings),
      cartMm: bay.settings.cartMm,
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

const wants: Readonly<Record<string, string>> = {
  row: 'a work aisle wants',
  obstacle: 'the way past it wants',
  wall: 'wanted there is',
}

/** Aisles are measured leaf to leaf, between the widest parts of what stands on both sides. */
export const aisleWidthMin: BayRule = {
  over: 'bay',
  id: RULE,
  title: 'Aisle width',
  limit: 'Work aisle 36 in or cart + 12 in; row ends 36 in; leaf to wall 6 in; nobody passes under 18 in',
  source: 'Common practice, no source',
  mending: 'Move the row away from what it is too near to, or take a narrower crop or cart.',
  check: (bay) => bay.aisles.map((aisle) => findingOf(aisle, bay)).filter((finding) => rankOf(finding) > 0),
  say: ({ parts, measured, limit, facts }, { length, name }) => {
    const [row = '', other] = parts
    const way = facts['is'] === 'wall' ? `${name(row)} to the wall` : `${name(row)} to ${name(other ?? '')}`
    if (measured.value < 0) return `${way}: they run ${length(-measured.value)} into each other.`
    return `${way} is ${length(measured.value)} leaf to leaf; ${wants[String(facts['is'])]} ${length(limit.value)}.`
  },
}
