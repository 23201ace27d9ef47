import { boxOf, corners } from '../geometry/box'
import type { Point } from '../geometry/point'
import type { House, Service } from '../layout/house'
import { inches } from '../units/length'

/** One line of a table of typed lengths, mm; a cell without one is empty. */
export type LengthRow = readonly (number | undefined)[]

export const pointRow = ({ x, y }: Point): LengthRow => [x, y]

/** A point that may have a height of its own. */
export interface RaisedPoint extends Point {
  readonly heightMm?: number | undefined
}

export const raisedRow = ({ x, y, heightMm }: RaisedPoint): LengthRow => [x, y, heightMm]

export const raisedPointOf = ([x = 0, y = 0, heightMm]: LengthRow): RaisedPoint =>
  heightMm === undefined ? { x, y } : { x, y, heightMm }

export const pointOf = ([x = 0, y = 0]: LengthRow): Point => ({ x, y })

const midway = (a: Point, b: Point): Point => ({ x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 })

/** A further corner in the middle of the wall that begins at a corner. */
export const cornerAfter = (outline: readonly Point[], corner: number): Point => {
  const from = outline[corner] ?? { x: 0, y: 0 }
  return midway(from, outline[(corner + 1) % outline.length] ?? from)
}

/** A further point in the middle of the leg after a point; after the last one, half a leg beyond it. */
export const pointAfter = (points: readonly Point[], point: number): Point => {
  const from = points[point] ?? { x: 0, y: 0 }
  const next = points[point + 1]
  if (next) return midway(from, next)
  const { x, y } = points[point - 1] ?? from
  return { x: from.x + (from.x - x) / 2, y: from.y + (from.y - y) / 2 }
}

/** West to east and south to north of a house with four square corners, mm; undefined for any other shape. */
export const rectangleOf = (outline: readonly Point[]): readonly [number, number] | undefined => {
  if (outline.length !== 4) return undefined
  const box = boxOf(outline)
  const isSquare = corners(box).every((corner) =>
    outline.some(({ x, y }) => x === corner.x && y === corner.y),
  )
  return isSquare ? [box.x1 - box.x0, box.y1 - box.y0] : undefined
}

/** A house of four square corners at another size; its south-west corner stays, and corners keep their order. */
export const withRectangle = (house: House, widthMm: number, lengthMm: number): House => {
  const box = boxOf(house.outline)
  const outline = house.outline.map(({ x, y }) => ({
    x: x === box.x0 ? box.x0 : box.x0 + widthMm,
    y: y === box.y0 ? box.y0 : box.y0 + lengthMm,
  }))
  return { ...house, outline }
}

export const spotLevelRows = ({ spotLevels }: House): readonly LengthRow[] =>
  spotLevels.map(({ at, levelMm }) => [at.x, at.y, levelMm])

export const withSpotLevels = (house: House, rows: readonly LengthRow[]): House => ({
  ...house,
  spotLevels: rows.map(([x = 0, y = 0, levelMm = 0]) => ({ at: { x, y }, levelMm })),
})

export type CurvedWall = House['curvedWalls'][number]

export const profileRows = ({ profile }: CurvedWall): readonly LengthRow[] =>
  profile.map(({ distanceMm, heightMm }) => [distanceMm, heightMm])

/** Heights in order of their distance, whatever the order of typing. */
export const withProfile = (wall: CurvedWall, rows: readonly LengthRow[]): CurvedWall => ({
  ...wall,
  profile: rows
    .map(([distanceMm = 0, heightMm = 0]) => ({ distanceMm, heightMm }))
    .sort((a, b) => a.distanceMm - b.distanceMm),
})

/** One thing of a list in place of another; undefined takes it out. */
export const withItem = <T>(list: readonly T[], index: number, item: T | undefined): T[] =>
  item === undefined ? list.filter((_, i) => i !== index) : list.map((old, i) => (i === index ? item : old))

/** A buried line across the middle of the house, to be put where it lies. */
export const newService = ({ outline }: House): Service => {
  const { x0, y0, x1, y1 } = boxOf(outline)
  const y = (y0 + y1) / 2
  return {
    name: 'Buried line',
    what: 'other',
    points: [
      { x: x0, y },
      { x: x1, y },
    ],
    depthMm: inches(18),
  }
}

/** The walls as choices: `1, to the north`, seen anticlockwise from the first corner. */
export const wallChoices = (
  outline: readonly Point[],
): readonly { readonly value: string; readonly words: string }[] =>
  outline.map((from, index) => {
    const to = outline[(index + 1) % outline.length] ?? from
    return { value: String(index), words: `${index + 1}, ${sideOf(from, to)}` }
  })

/** Which side of the house a wall is: the floor lies to the left of it. */
const sideOf = (from: Point, to: Point): string => {
  const [dx, dy] = [to.x - from.x, to.y - from.y]
  if (Math.abs(dx) >= Math.abs(dy)) return dx >= 0 ? 'south side' : 'north side'
  return dy >= 0 ? 'east side' : 'west side'
}
