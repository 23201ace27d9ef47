import type { Beam } from './beam'

/**
 * Places closer than this are one place, mm: under what a saw or a drill can tell apart, and far enough apart that the stiffness
 * of the piece between them does not drown that of its neighbours.
 */
const CLOSE_MM = 0.25

/** How a place is held: not at all, up and down, or level as well. */
export const free = 0
export const held = 1
export const clamped = 2

/**
 * A beam cut into pieces of one stiffness at its ends, supports, hinges and changes of section. Piece k runs from place k to
 * place k + 1. Each place has a row for its sag and one for its slope; a hinge has one more, for the slope to its right.
 */
export interface Pieces {
  readonly atMm: Float64Array
  readonly eiNmm2: Float64Array
  readonly isHinge: Uint8Array
  readonly hold: Uint8Array
  /** Place of each support, in their order. */
  readonly supportPlace: Int32Array
  /** Row of each place's sag; its slope to the left comes next. */
  readonly row: Int32Array
  readonly rows: number
}

/** Row of a place's slope to its right. */
export const slopeRow = (pieces: Pieces, place: number): number =>
  (pieces.row[place] ?? 0) + (pieces.isHinge[place] === 1 ? 2 : 1)

interface Wanted {
  readonly atMm: number
  /** Of two that are close, the lesser moves. */
  readonly rank: number
}

const wantedPlaces = (beam: Beam): Wanted[] =>
  [
    { atMm: beam.fromMm, rank: 0 },
    { atMm: beam.toMm, rank: 0 },
    ...beam.supports.map(({ atMm }) => ({ atMm, rank: 1 })),
    ...beam.hinges.map((atMm) => ({ atMm, rank: 2 })),
    ...beam.sections.map(({ toMm }) => ({ atMm: toMm, rank: 3 })),
  ]
    .filter(({ atMm }) => atMm >= beam.fromMm && atMm <= beam.toMm)
    .toSorted((a, b) => a.atMm - b.atMm || a.rank - b.rank)

const placesOf = (beam: Beam): Float64Array => {
  const kept: Wanted[] = []
  for (const place of wantedPlaces(beam)) {
    const last = kept.at(-1)
    if (last === undefined || place.atMm - last.atMm >= CLOSE_MM) kept.push(place)
    else if (place.rank < last.rank) kept[kept.length - 1] = place
  }
  return Float64Array.from(kept, ({ atMm }) => atMm)
}

/** Index of the last place at or before `mm`, the first where there is none. */
export const placeBefore = (places: Float64Array, mm: number): number => {
  let low = 0
  let high = places.length - 1
  while (low < high) {
    const middle = (low + high + 1) >> 1
    if ((places[middle] ?? 0) <= mm) low = middle
    else high = middle - 1
  }
  return low
}

const nearestPlace = (places: Float64Array, mm: number): number => {
  const before = placeBefore(places, mm)
  const after = Math.min(before + 1, places.length - 1)
  return (places[after] ?? 0) - mm < mm - (places[before] ?? 0) ? after : before
}

const stiffnesses = (beam: Beam, places: Float64Array): Float64Array => {
  let section = 0
  return Float64Array.from({ length: places.length - 1 }, (_, k) => {
    const middle = ((places[k] ?? 0) + (places[k + 1] ?? 0)) / 2
    while (section < beam.sections.length - 1 && (beam.sections[section]?.toMm ?? 0) < middle) section += 1
    return beam.sections[section]?.eiNmm2 ?? 0
  })
}

const hingesOf = (beam: Beam, places: Float64Array): Uint8Array => {
  const isHinge = new Uint8Array(places.length)
  for (const mm of beam.hinges) isHinge[nearestPlace(places, mm)] = 1
  isHinge[0] = 0
  isHinge[places.length - 1] = 0
  return isHinge
}

/** A hinge beside a clamp leaves nothing to keep level. */
const holdsOf = (beam: Beam, places: Float64Array, isHinge: Uint8Array): Uint8Array => {
  const hold = new Uint8Array(places.length)
  for (const { atMm, isClamped } of beam.supports) {
    const place = nearestPlace(places, atMm)
    hold[place] = isClamped && isHinge[place] === 0 ? clamped : Math.max(held, hold[place] ?? free)
  }
  return hold
}

const rowsOf = (isHinge: Uint8Array): Int32Array => {
  const row = new Int32Array(isHinge.length + 1)
  for (let place = 0; place < isHinge.length; place += 1)
    row[place + 1] = (row[place] ?? 0) + 2 + (isHinge[place] ?? 0)
  return row
}

/** The pieces of a beam whose supports lie on it. */
export const piecesOf = (beam: Beam): Pieces => {
  const atMm = placesOf(beam)
  const isHinge = hingesOf(beam, atMm)
  const row = rowsOf(isHinge)
  return {
    atMm,
    eiNmm2: stiffnesses(beam, atMm),
    isHinge,
    hold: holdsOf(beam, atMm, isHinge),
    supportPlace: Int32Array.from(beam.supports, ({ atMm: mm }) => nearestPlace(atMm, mm)),
    row,
    rows: row[atMm.length] ?? 0,
  }
}
