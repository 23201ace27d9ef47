import { boxOf, middle } from '../geometry/box'
import type { Built } from '../model/built'
import { placesOf, type Hazard, type Walk } from './hazard'

type Said = Pick<Hazard, 'key' | 'title' | 'words' | 'sheets' | 'source'>

/** A hazard at rows of racks, with what is to be said of each; none where there are no such rows. */
export const atRows = <T extends { readonly built: Built }>(
  walk: Walk,
  rows: readonly T[],
  says: (row: T) => string,
  said: Said,
): Hazard[] =>
  rows.length === 0
    ? []
    : [
        {
          ...said,
          places: placesOf(rows.map((row) => ({ name: walk.write.name(row.built.part), says: says(row) }))),
          stand: 'racks',
          spots: rows.map(({ built }) => ({
            name: walk.write.name(built.part),
            at: middle(boxOf(built.bodies.flatMap(({ outline }) => outline))),
          })),
        },
      ]
