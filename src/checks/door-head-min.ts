import { boxOf, middle, type Box } from '../geometry/box'
import { facing, type Facing } from '../geometry/facing'
import type { Body } from '../model/built'
import type { Finding } from '../model/finding'
import { inches } from '../units/length'
import type { Bay, BayRule } from './context'
import { doorsOf } from './doors'
import { CLOSE_MM, found, lengthOf, stateFor, term } from './found'
import { rowBoxes, type Standing } from './standing'

const RULE = 'door-head-min'

/** A cart is turned and parked here, and two people meet. Common practice, no source. */
const HEAD_MM = inches(72)

interface Ahead extends Facing {
  readonly part: string
}

const acrossWall = ({ x0, y0, x1, y1 }: Box): 'x' | 'y' => (x1 - x0 >= y1 - y0 ? 'y' : 'x')

/** The line of the wall in which a door's threshold lies. */
const wallLine = (threshold: Box): Box => {
  const { x, y } = middle(threshold)
  return acrossWall(threshold) === 'y' ? { ...threshold, y0: y, y1: y } : { ...threshold, x0: x, x1: x }
}

/** The nearest row straight in front of a door. */
const nearestAhead = (door: Box, rows: readonly Standing[]): Ahead | undefined => {
  const wall = wallLine(door)
  let nearest: Ahead | undefined
  for (const { part, box } of rows) {
    const way = facing(wall, box, acrossWall(door))
    if (way && (!nearest || way.gapMm < nearest.gapMm)) nearest = { ...way, part }
  }
  return nearest
}

const findingsOf = (door: Body, rows: readonly Standing[], { settings }: Bay): Finding[] => {
  const box = boxOf(door.outline)
  const ahead = nearestAhead(box, rows)
  if (!ahead || ahead.gapMm >= HEAD_MM - CLOSE_MM) return []
  return [
    found({
      rule: RULE,
      subject: 'fit',
      state: stateFor('fit', ahead.gapMm, HEAD_MM, settings.workAisleMm),
      parts: [door.part, ahead.part],
      at: middle(box),
      span: [ahead.from, ahead.to],
      measured: lengthOf(ahead.gapMm),
      limit: lengthOf(HEAD_MM),
      terms: [
        term('Leaf to door, now', lengthOf(ahead.gapMm)),
        term('A work aisle', lengthOf(settings.workAisleMm)),
      ],
    }),
  ]
}

/** In front of a door that carts use there is room to turn one. */
export const doorHeadMin: BayRule = {
  over: 'bay',
  id: RULE,
  title: 'Head of the aisles at a door',
  limit: '6 ft from a door that carts use to the nearest row in front of it; a work aisle at the very least',
  source: 'Common practice, no source: door and head aisles 6 to 8 ft',
  mending: 'Move the row away from the door.',
  check: (bay) => {
    const rows = rowBoxes(bay.built)
    const doors = doorsOf(bay.built).filter(({ role }) => role === 'door')
    return doors.flatMap((door) => findingsOf(door, rows, bay))
  },
  say: ({ parts, measured, limit }, { onTape, name }) =>
    `${name(parts[1] ?? '')} stands ${onTape(measured.value)} in front of ${name(parts[0] ?? '')}; turning a cart there wants ${onTape(limit.value)}.`,
}
