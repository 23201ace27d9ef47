/** A place on the floor, mm: x grows east, y grows north. */
export interface Point {
  readonly x: number
  readonly y: number
}

/** A place in the house, mm: z grows upward; what it is measured from is said where it is used. */
export interface Place extends Point {
  readonly z: number
}

export const distance = (a: Point, b: Point): number => Math.hypot(b.x - a.x, b.y - a.y)

export const length3 = (a: Place, b: Place): number => Math.hypot(b.x - a.x, b.y - a.y, b.z - a.z)

/** The point a share `t` (0..1) of the way from `a` to `b`. */
export const between = (a: Point, b: Point, t: number): Point => ({
  x: a.x + (b.x - a.x) * t,
  y: a.y + (b.y - a.y) * t,
})
