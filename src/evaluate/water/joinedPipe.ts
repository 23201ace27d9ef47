import { lossKOf } from '../../catalogue/losses'
import { length3, type Place } from '../../geometry/point'
import { toM } from './metres'
import { SHORTEST_M } from './rowPiece'

/** A pipe between two parts. */
export interface JoinedPipe {
  readonly lengthM: number
  readonly lossK: number
}

/** The pipe that leads from a main or a row's valve to another row's inlet, or from a supply to a main. */
export const joinedPipe = (from: Place, to: Place): JoinedPipe => ({
  lengthM: Math.max(SHORTEST_M, toM(length3(from, to))),
  lossK: lossKOf('tee-branch'),
})
