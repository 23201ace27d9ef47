import type { Frame } from '../../../../evaluate/loads/frame'
import { stateWords } from '../../../../model/finding'
import type { RowStrength, StrengthState } from '../../../../model/strength'
import type { RackBuilt } from '../../../../sheets/assembly/rowBuilt'
import type { Writer } from '../../../../units/writer'
import type { Stretch } from './stretch'

/** What the drawings of a row are made of. */
export interface BenchGiven {
  readonly frame: Frame
  /** The rack that is drawn, or the first one of the row. */
  readonly rack: RackBuilt | undefined
  readonly stretch: Stretch
  readonly strength: RowStrength | undefined
  /** Yield of conduit that the bay assumes, MPa. */
  readonly yieldMpa: number
  readonly write: Writer
  /** Reads to the finer step of the drill. */
  readonly drill: Writer
}

/** The worst state of each mark that is screened. */
export const statesOf = (strength: RowStrength | undefined): ReadonlyMap<string, StrengthState> => {
  const rank = (state: StrengthState | undefined) => (state ? stateWords.strength.indexOf(state) : -1)
  const states = new Map<string, StrengthState>()
  for (const { mark, state } of strength?.screens ?? [])
    if (rank(state) > rank(states.get(mark))) states.set(mark, state)
  return states
}
