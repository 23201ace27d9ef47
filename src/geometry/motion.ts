import type { Point } from './point'

/** Degrees anticlockwise from east; parts turn by quarter turns only. */
export type Heading = 0 | 90 | 180 | 270

/** A quarter-turn motion of the floor: turn about `pivot`, then shift. */
export interface Motion {
  readonly pivot: Point
  readonly quarterTurns: 0 | 1 | 2 | 3
  readonly dxMm: number
  readonly dyMm: number
}

/** A mirror in a line across the floor: `axis` 'x' is the line x = atMm (east and west swap), 'y' the line y = atMm. */
export interface Mirror {
  readonly axis: 'x' | 'y'
  readonly atMm: number
}

export const shift = (dxMm: number, dyMm: number): Motion => ({
  pivot: { x: 0, y: 0 },
  quarterTurns: 0,
  dxMm,
  dyMm,
})

export const quarterTurn = (pivot: Point, quarterTurns: 0 | 1 | 2 | 3 = 1): Motion => ({
  pivot,
  quarterTurns,
  dxMm: 0,
  dyMm: 0,
})

const turned = ({ x, y }: Point, quarterTurns: number): Point => {
  switch (quarterTurns) {
    case 1:
      return { x: -y, y: x }
    case 2:
      return { x: -x, y: -y }
    case 3:
      return { x: y, y: -x }
    default:
      return { x, y }
  }
}

export const movePoint = (p: Point, m: Motion): Point => {
  const t = turned({ x: p.x - m.pivot.x, y: p.y - m.pivot.y }, m.quarterTurns)
  return { x: t.x + m.pivot.x + m.dxMm, y: t.y + m.pivot.y + m.dyMm }
}

export const turnHeading = (heading: Heading, quarterTurns: number): Heading =>
  (((heading / 90 + quarterTurns) % 4) * 90) as Heading // a sum of quarter turns mod 4 is one of the four headings

export const mirrorPoint = (p: Point, m: Mirror): Point =>
  m.axis === 'x' ? { x: 2 * m.atMm - p.x, y: p.y } : { x: p.x, y: 2 * m.atMm - p.y }

/** Where a heading points after a mirror. */
export const mirrorHeading = (heading: Heading, m: Mirror): Heading => {
  const reversed = m.axis === 'x' ? heading === 0 || heading === 180 : heading === 90 || heading === 270
  return reversed ? turnHeading(heading, 2) : heading
}

/** Unit vector of a heading. */
export const along = (heading: Heading): Point => turned({ x: 1, y: 0 }, heading / 90)

/** Unit vector to the right of a heading. */
export const right = (heading: Heading): Point => turned({ x: 0, y: -1 }, heading / 90)

/** The place `alongMm` ahead of `origin` on its heading and `rightMm` to the right of it. */
export const offset = (origin: Point, heading: Heading, alongMm: number, rightMm: number): Point => {
  const a = along(heading)
  const r = right(heading)
  return { x: origin.x + a.x * alongMm + r.x * rightMm, y: origin.y + a.y * alongMm + r.y * rightMm }
}
