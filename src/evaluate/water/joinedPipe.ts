import { lossKOf } from '../../catalogue/losses'
import { pathLength } from '../../geometry/path'
import { length3, type Place } from '../../geometry/point'
import type { Built, Tube } from '../../model/built'
import type { PartId } from '../../model/ids'
import { toM } from './metres'
import { SHORTEST_M } from './rowPiece'

/** A pipe between two parts. */
export interface JoinedPipe {
  readonly lengthM: number
  readonly lossK: number
}

/** The pipes that belong to each part and lie between it and what gives or takes its water. */
export type JoinedTubes = ReadonlyMap<PartId, readonly Tube[]>

export const joinedTubesOf = (joinedPipes: readonly Built[]): JoinedTubes =>
  new Map(joinedPipes.filter(({ tubes }) => tubes.length > 0).map(({ part, tubes }) => [part, tubes]))

/** The pipe that ends nearest to where it should; undefined of none. */
const endingAt = (tubes: readonly Tube[], to: Place): Tube | undefined => {
  const gapTo = ({ path }: Tube) => length3(path.at(-1) ?? to, to)
  const [first] = tubes
  return first && tubes.reduce((near, tube) => (gapTo(tube) < gapTo(near) ? tube : near), first)
}

/** How many corners a pipe has between its ends. */
const corners = ({ path }: Tube): number => Math.max(0, path.length - 2)

/**
 * The pipe of a part that leads to a place, with the tee that it leaves or meets a main by and an elbow for each of its
 * corners; straight and as long as the way is, where the two fittings meet and no pipe is laid.
 */
export const joinedPipe = (from: Place, to: Place, part: PartId, tubes: JoinedTubes): JoinedPipe => {
  const tube = endingAt(tubes.get(part) ?? [], to)
  const lengthMm = tube ? pathLength(tube.path) : length3(from, to)
  return {
    lengthM: Math.max(SHORTEST_M, toM(lengthMm)),
    lossK: lossKOf('tee-branch') + (tube ? corners(tube) * lossKOf('elbow') : 0),
  }
}
