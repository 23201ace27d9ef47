import { boxOf, middle } from '../geometry/box'
import { outlineDistance } from '../geometry/polygon'
import type { BayRule } from './context'
import { inches } from '../units/length'
import { CLOSE_MM, found, lengthOf } from './found'
import { doorsOf } from './doors'

const RULE = 'door-wall-max'

/** Half a wall: an outline is drawn to the inside of it, a door may be set to its middle. Common practice, no source. */
const WALL_MM = inches(2)

/** A door leads nowhere unless it stands in a wall. */
export const doorWallMax: BayRule = {
  over: 'bay',
  id: RULE,
  title: 'Door in a wall',
  limit: 'The middle of the threshold within 2 in of the house outline',
  source: 'Geometry; 2 in is common practice, no source',
  mending: 'Drag the door on to a wall: near one it goes in by itself.',
  check: ({ built, house }) =>
    doorsOf(built).flatMap(({ part, outline }) => {
      const at = middle(boxOf(outline))
      const { gapMm } = outlineDistance(house.outline, at)
      if (gapMm <= WALL_MM + CLOSE_MM) return []
      return [
        found({
          rule: RULE,
          subject: 'fit',
          state: 'Clash',
          parts: [part],
          at,
          measured: lengthOf(gapMm),
          limit: lengthOf(WALL_MM),
        }),
      ]
    }),
  say: ({ parts, measured }, { onTape, name }) =>
    `${name(parts[0] ?? '')} stands ${onTape(measured.value)} from the nearest wall, so it leads nowhere.`,
}
