import type { Evaluation } from '../../evaluate/evaluation'
import { boxOf, joined } from '../../geometry/box'
import type { Point } from '../../geometry/point'
import { isInside } from '../../geometry/polygon'
import type { Body, BodyRole, Built, Tube } from '../../model/built'
import { type Row, said, type Table } from '../../model/table'
import { fromWalls } from '../baseline'
import { cornersOf } from './rowCorners'
import { fromWestSouth, lengthCell, type Pegging } from './rowTables'

/** A place of a line or a pit that is pegged. */
interface Pegged {
  readonly key: string
  readonly place: string
  readonly at: Point
}

/** Points of a line by what they are; bends count from its first end. */
const pointsOf = (path: readonly Point[], first: string, last: string): readonly Pegged[] =>
  path.map((at, i) => {
    if (i === 0) return { key: 'first', place: first, at }
    if (i === path.length - 1) return { key: 'last', place: last, at }
    return { key: `bend ${i}`, place: `Bend ${i}`, at }
  })

const ENDS: Partial<Readonly<Record<Tube['role'], readonly [string, string]>>> = {
  drain: ['High end', 'Low end'],
  main: ['Beginning', 'End'],
}

/** A rise or a drop is no place of its own on the floor. */
const onFloor = (path: readonly Point[]): readonly Point[] =>
  path.filter((p, i) => {
    const before = path[i - 1]
    return before === undefined || Math.hypot(p.x - before.x, p.y - before.y) > 1
  })

const peggedOf = ({ tubes, bodies }: Built): readonly Pegged[] => [
  ...tubes.flatMap(({ role, path }) => {
    const ends = ENDS[role]
    return ends ? pointsOf(onFloor(path), ...ends) : []
  }),
  ...bodies
    .filter(({ role }) => role === 'pit')
    .flatMap(({ outline }) =>
      cornersOf(boxOf(outline)).map(({ corner, at }) => ({ key: corner, place: `Corner ${corner}`, at })),
    ),
]

/** Ends and bends of drains and mains, corners of pits. */
export const placeTable = ({ bay }: Evaluation, { house, write }: Pegging): Table => ({
  id: 'places',
  title: 'Drains, pits and mains',
  columns: [
    { key: 'what', title: 'What', unit: 'text' },
    { key: 'place', title: 'Place', unit: 'text' },
    ...fromWestSouth,
  ],
  rows: bay.built.flatMap((built) =>
    peggedOf(built).map(({ key, place, at }): Row => {
      const { westMm, southMm } = fromWalls(house, at)
      return {
        key: `${built.part} ${key}`,
        cells: [
          said(write.name(built.part)),
          said(place),
          lengthCell(westMm, write),
          lengthCell(southMm, write),
        ],
      }
    }),
  ),
})

/** What nothing may stand in, whatever its height. */
const CLEAR: readonly BodyRole[] = ['post', 'equipment', 'keep-clear', 'door-swing']

const isClearOf = ({ role }: Body): boolean => CLEAR.includes(role)

/** Posts outside of the walls are in nobody's way. */
const isIndoors = ({ outline }: Body, house: readonly Point[]): boolean => {
  const { x0, y0, x1, y1 } = boxOf(outline)
  return isInside(house, { x: (x0 + x1) / 2, y: (y0 + y1) / 2 })
}

const clearRow = ({ part }: Built, bodies: readonly Body[], { house, write }: Pegging): Row[] => {
  const [first, ...others] = bodies.map(({ outline }) => boxOf(outline))
  if (!first) return []
  const box = others.reduce(joined, first)
  const [low, high] = [fromWalls(house, { x: box.x0, y: box.y0 }), fromWalls(house, { x: box.x1, y: box.y1 })]
  const reads = [low.westMm, high.westMm, low.southMm, high.southMm]
  return [{ key: part, cells: [said(write.name(part)), ...reads.map((mm) => lengthCell(mm, write))] }]
}

/** What is kept clear: posts, equipment and doors indoors, each with the room before it. */
export const clearTable = ({ bay }: Evaluation, pegging: Pegging): Table => ({
  id: 'keep-clear',
  title: 'Keep clear: the room of what stands there already, doors and the room before them',
  columns: [
    { key: 'what', title: 'What', unit: 'text' },
    { key: 'westFromMm', title: 'From west wall: from', unit: 'mm' },
    { key: 'westToMm', title: 'to', unit: 'mm' },
    { key: 'southFromMm', title: 'From south wall: from', unit: 'mm' },
    { key: 'southToMm', title: 'to', unit: 'mm' },
  ],
  rows: bay.built
    .filter(({ rack, trough }) => !rack && !trough)
    .flatMap((built) =>
      clearRow(
        built,
        built.bodies.filter((body) => isClearOf(body) && isIndoors(body, pegging.house.outline)),
        pegging,
      ),
    ),
})
