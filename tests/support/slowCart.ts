import type { Box } from '../../src/geometry/box'
import type { Face } from '../../src/geometry/cartStand'
import type { FreeFloor } from '../../src/geometry/passage'
import type { Point } from '../../src/geometry/point'

/*
 * A slow way to find the widest cart on a small floor of whole units: stand the square at every half unit, look at every
 * unit of floor under it, and walk by half units. A unit of floor is either wholly blocked or wholly free, so at half units the
 * square meets every case that it can meet anywhere.
 */

/** Even-odd rule for the middle of a unit of floor, which is never on the outline. */
const isInHouse = (outline: readonly Point[], x: number, y: number): boolean => {
  let within = false
  outline.forEach((a, i) => {
    const b = outline[(i + 1) % outline.length]!
    if (a.y > y !== b.y > y && x < a.x + ((y - a.y) / (b.y - a.y)) * (b.x - a.x)) within = !within
  })
  return within
}

const isFreeUnit = ({ blocks, outline }: FreeFloor, x: number, y: number): boolean =>
  isInHouse(outline, x + 0.5, y + 0.5) &&
  !blocks.some((b) => b.x0 <= x && x + 1 <= b.x1 && b.y0 <= y && y + 1 <= b.y1)

const freeUnits = (floor: FreeFloor): Set<string> => {
  const free = new Set<string>()
  const most = Math.max(...floor.outline.flatMap(({ x, y }) => [x, y]))
  for (let x = 0; x < most; x++)
    for (let y = 0; y < most; y++) if (isFreeUnit(floor, x, y)) free.add(`${x} ${y}`)
  return free
}

/** Whether a square with its south-west corner at (x, y) has only free floor under it. */
const isFreeAt = (units: Set<string>, x: number, y: number, width: number): boolean => {
  for (let u = Math.floor(x); u < x + width; u++)
    for (let v = Math.floor(y); v < y + width; v++) if (!units.has(`${u} ${v}`)) return false
  return true
}

const halfSteps = (from: number, to: number): number[] => {
  const steps: number[] = []
  for (let at = from; at <= to; at += 0.5) steps.push(at)
  return steps
}

/** South-west corners of squares that touch the door's box and lie between its jambs. */
const startsAt = ({ x0, y0, x1, y1 }: Box, width: number): [number, number][] => {
  const isLevel = x1 - x0 >= y1 - y0
  const xs = isLevel ? halfSteps(x0, x1 - width) : halfSteps(x0 - width, x1)
  const ys = isLevel ? halfSteps(y0 - width, y1) : halfSteps(y0, y1 - width)
  return xs.flatMap((x) => ys.map((y): [number, number] => [x, y]))
}

const walkFrom = (units: Set<string>, doors: readonly Box[], width: number): Set<string> => {
  const reached = new Set<string>()
  const waiting = doors.flatMap((door) => startsAt(door, width))
  for (let at = waiting.pop(); at; at = waiting.pop()) {
    const [x, y] = at
    if (reached.has(`${x} ${y}`) || !isFreeAt(units, x, y, width)) continue
    reached.add(`${x} ${y}`)
    waiting.push([x - 0.5, y], [x + 0.5, y], [x, y - 0.5], [x, y + 0.5])
  }
  return reached
}

/** South-west corners of squares beside a face, from the first that is flush with one end to the last, flush with the other. */
const standsAt = ({ from, to, facing }: Face, width: number): string[] => {
  const slide = (a: number, b: number) => halfSteps(Math.min(a, b - width), Math.max(a, b - width))
  if (facing === 0 || facing === 180) {
    const x = facing === 0 ? from.x : from.x - width
    return slide(Math.min(from.y, to.y), Math.max(from.y, to.y)).map((y) => `${x} ${y}`)
  }
  const y = facing === 90 ? from.y : from.y - width
  return slide(Math.min(from.x, to.x), Math.max(from.x, to.x)).map((x) => `${x} ${y}`)
}

const lengthOf = ({ from, to }: Face): number => Math.abs(to.x - from.x) + Math.abs(to.y - from.y)

/** Widest cart of whole units for each face, tried one unit after another; 0 where none comes. */
export const walkWidest = (
  floor: FreeFloor,
  doors: readonly Box[],
  faces: readonly Face[],
  { leastMm, mostMm }: { leastMm: number; mostMm: number },
): number[] => {
  const units = freeUnits(floor)
  const widest = faces.map(() => 0)
  for (let width = leastMm; width <= mostMm; width++) {
    const reached = walkFrom(units, doors, width)
    faces.forEach((face, i) => {
      const stands = standsAt(face, width)
      const isReached = (stand: string) => reached.has(stand)
      if (width <= lengthOf(face) ? stands.every(isReached) : stands.some(isReached)) widest[i] = width
    })
  }
  return widest
}
