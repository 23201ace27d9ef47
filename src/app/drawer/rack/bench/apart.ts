import type { Mark } from '../../../../model/drawing'
import { memberName } from '../../../../model/memberNames'
import type { RowSpot } from '../../../../model/strength'
import { ladder } from '../../../../sheets/assembly/ladder'
import { likeMembers } from '../../../../sheets/assembly/memberTable'
import type { Member } from '../../../../sheets/assembly/members'
import { FROM_HIGH_END, FROM_SIDE, type Laid, onSheet, type View } from '../../../../sheets/assembly/shapes'
import { ruled } from '../../../../sheets/ink'
import { spread } from '../../../../sheets/spread'
import { type Arranged, arrange, type Room, type Views } from './arrange'
import { extentOf, ROOM } from './fit'
import type { BenchGiven } from './given'
import { LETTER_MM, LINE_MM, ladderWidth } from './glass'
import { type Drawing, shapesOf } from './shape'
import { countedIn, drawnIn, isRiser } from './stretch'

/** Members that go in together, with the band of the drawing that they have for themselves; mm of the rack. */
interface Band {
  readonly members: readonly Member[]
  readonly lowMm: number
  readonly highMm: number
  /** A line for each mark and length. */
  readonly lines: readonly string[]
}

/** Between two bands, mm of glass. */
const GAP_MM = 1.1

/** Risers are one family, and so are rails; braces of both ways lie in one band, for each is seen in one view alone. */
const familyOf = ({ stick, from, to }: Member): string => {
  const isUpright = Math.abs(to.z - from.z) > 0
  const leans = isUpright && Math.hypot(to.u - from.u, to.v - from.v) > Math.abs(to.z - from.z) / 4
  const isBrace = leans && Math.abs(to.z - from.z) > Math.hypot(to.u - from.u, to.v - from.v) / 4
  return isBrace ? 'brace' : (stick.mark.split('-')[0] ?? stick.mark)
}

const byFamily = (members: readonly Member[]): ReadonlyMap<string, readonly Member[]> => {
  const families = new Map<string, Member[]>()
  for (const member of members) {
    const family = families.get(familyOf(member))
    if (family) family.push(member)
    else families.set(familyOf(member), [member])
  }
  return families
}

const meanZ = (members: readonly Member[]): number =>
  members.reduce((sum, { from, to }) => sum + (from.z + to.z) / 2, 0) / members.length

const lineWords = (members: readonly Member[], { write }: BenchGiven, isNamed: boolean): readonly string[] =>
  likeMembers(members).map(({ first: { stick }, count }) =>
    [
      `${count} × ${stick.mark}`,
      ...(isNamed ? [memberName(stick.mark)] : []),
      write.onTape(stick.lengthMm),
    ].join(' '),
  )

/** From the top down, as they come off. What only shares a rack is drawn with it, but counted with the rack that brings it. */
const bandsOf = (given: BenchGiven, isNamed: boolean): readonly Band[] => {
  const counted = byFamily(countedIn(given.frame, given.stretch))
  return [...byFamily(drawnIn(given.frame, given.stretch))]
    .toSorted(([, a], [, b]) => meanZ(b) - meanZ(a))
    .map(([family, members]) => {
      const { y0, y1 } = extentOf(members, FROM_SIDE)
      const own = members.map(({ from, to, stick }) => Math.min(from.z, to.z) - stick.heightMm / 2)
      return {
        members,
        lowMm: Math.max(y0, Math.min(...own)),
        highMm: y1,
        lines: lineWords(counted.get(family) ?? [], given, isNamed),
      }
    })
}

/** However thin its members, a band is so high, mm of glass. */
const LEAST_BAND_MM = 1.7

const tall = ({ lowMm, highMm }: Band, scale: number): number =>
  Math.max((highMm - lowMm) * scale, LEAST_BAND_MM)

const heightOf = (bands: readonly Band[], scale: number): number =>
  bands.reduce((sum, band) => sum + tall(band, scale) + GAP_MM, GAP_MM)

/** The largest scale at which all bands have room, found by halving. */
const scaleFor = (bands: readonly Band[], heightMm: number, most: number): number => {
  let [low, high] = [0, most]
  for (let step = 0; step < 30; step++) {
    const middle = (low + high) / 2
    if (heightOf(bands, middle) <= heightMm) low = middle
    else high = middle
  }
  return low
}

/** A rack is never drawn smaller, mm of glass a mm of the rack: about 1 to 100 on a page. */
const LEAST_SCALE = 0.006

interface Laying {
  readonly scale: number
  readonly heightMm: number
  readonly bands: readonly (Band & { readonly y: number })[]
}

const middleOf = ({ y, lowMm, highMm }: Laying['bands'][number], scale: number): number =>
  y + ((highMm - lowMm) * scale) / 2

/** How far the lines of the list reach below and above the bands that they tell of, mm of glass. */
const listPast = ({ bands, scale, heightMm }: Laying): { belowMm: number; aboveMm: number } => {
  const middles = bands.toReversed().flatMap((band) => band.lines.map(() => middleOf(band, scale)))
  const ys = spread(middles, LINE_MM)
  const half = LINE_MM / 2
  return {
    belowMm: Math.max(0, half - (ys[0] ?? half)),
    aboveMm: Math.max(0, (ys.at(-1) ?? 0) + half - heightMm),
  }
}

const laying = (bands: readonly Band[], scale: number): Laying => {
  const heightMm = heightOf(bands, scale)
  let y = heightMm
  const laid = bands.map((band) => {
    y -= tall(band, scale) + GAP_MM
    return { ...band, y: y + (tall(band, scale) - (band.highMm - band.lowMm) * scale) / 2 }
  })
  const { belowMm, aboveMm } = listPast({ scale, heightMm, bands: laid })
  return {
    scale,
    heightMm: heightMm + belowMm + aboveMm,
    bands: laid.map((band) => ({ ...band, y: band.y + belowMm })),
  }
}

/** Where members went in: thin lines with dots, after ISO 128-2. */
const centreLines = (
  members: readonly Member[],
  view: View,
  xOf: (mm: number) => number,
  heightMm: number,
): readonly Mark[] => {
  const risers = members.filter(isRiser)
  const places = [...new Set(risers.map(({ from }) => Math.round(view.across(from))))]
  return places.map((mm) =>
    ruled({ x: xOf(mm), y: GAP_MM / 2 }, { x: xOf(mm), y: heightMm - GAP_MM / 2 }, 'centre'),
  )
}

const drawn = ({ scale, heightMm, bands }: Laying, view: View, x: number, widthMm: number): Drawing => {
  const xOf = (mm: number) => x + mm * scale
  const laidOf = ({ lowMm, y }: { lowMm: number; y: number }): Laid => ({ scale, x, y: y - lowMm * scale })
  const [first] = bands
  return {
    widthMm,
    heightMm,
    behind: centreLines(
      bands.flatMap(({ members }) => members),
      view,
      xOf,
      heightMm,
    ),
    members: bands.flatMap((band) => shapesOf(band.members, view, laidOf(band))),
    over: [],
    pills: [],
    placeOf: (spot: RowSpot) =>
      onSheet(first ? laidOf(first) : { scale, x, y: 0 }, { x: view.across(spot), y: spot.z }),
  }
}

const listMarks = ({ bands, scale }: Laying, x: number): readonly Mark[] => {
  const rungs = bands
    .toReversed()
    .flatMap((band) => band.lines.toReversed().map((text) => ({ y: middleOf(band, scale), text })))
  return ladder(rungs, x, { letterMm: LETTER_MM, lineMm: LINE_MM, side: 'right' }).marks
}

/** The views with all members drawn apart, each kind in a band of its own, and the list of them at the right. */
export interface Apart extends Arranged {
  readonly along: Drawing
  readonly across: Drawing
}

/** Narrower than this the list has marks alone: their names stand beside the drawing, mm of glass. */
const NAMED_MM = 105

export const apart = (given: BenchGiven, room: Room, zoom: number, views: Views | undefined): Apart => {
  const bands = bandsOf(given, room.widthMm >= NAMED_MM)
  const all = bands.flatMap(({ members }) => members)
  const long = extentOf(all, FROM_SIDE)
  const wide = extentOf(all, FROM_HIGH_END)
  const listMm = ladderWidth(bands.flatMap(({ lines }) => lines)) + ROOM.side
  const width = (lengthMm: number) => ({ besideMm: 2 * ROOM.side, lengthMm })
  const arranged = arrange(
    {
      along: width(long.x1 - long.x0),
      across: width(wide.x1 - wide.x0),
      scaleFor: (heightMm) => scaleFor(bands, heightMm - 2 * LINE_MM, 1),
      isRow: given.stretch.rack === undefined && given.frame.rack.racks > 1,
      leastScale: LEAST_SCALE,
      canStack: false,
    },
    { ...room, widthMm: room.widthMm - listMm },
    views,
  )
  const laid = laying(bands, zoom * Math.max(LEAST_SCALE, arranged.scale))
  const { scale } = laid
  const [longMm, endMm] = [long, wide].map(({ x0, x1 }) => 2 * ROOM.side + (x1 - x0) * scale)
  const along = drawn(laid, FROM_SIDE, ROOM.side - long.x0 * scale, longMm ?? 0)
  const across = drawn(laid, FROM_HIGH_END, ROOM.side - wide.x0 * scale, endMm ?? 0)
  const listed = (drawing: Drawing): Drawing => ({
    ...drawing,
    widthMm: drawing.widthMm + listMm,
    over: listMarks(laid, drawing.widthMm),
  })
  return arranged.views === 'along'
    ? { ...arranged, along: listed(along), across }
    : { ...arranged, along, across: listed(across) }
}
