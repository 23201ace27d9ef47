import { push, rowOf } from './row'

/**
 * The places of the trees in runs. A branch is a run that hangs as a whole from the place of some later run, such as all
 * that lies behind a row's valve; what is left between branches is trunk. While nothing near it moves, a branch answers for
 * itself with two numbers, and the sweeps pass it over.
 */
export interface Blocks {
  /** Block `i` has the places `start[i] .. start[i + 1]` and, in their order, the mouths `mouth[i] .. mouth[i + 1]`. */
  readonly start: Int32Array
  readonly mouth: Int32Array
  readonly isBranch: Uint8Array
}

/** A smaller network is swept as a whole: the bookkeeping would cost more than it spares. */
const FEWEST_PLACES = 400
const MOST_IN_BRANCH = 250
const FEWEST_IN_BRANCH = 12

/** Ends of the branches, last first: of what hangs from each place, itself counted, the largest that is not too large. */
const cutBranches = (sizes: Int32Array): { readonly starts: number[]; readonly marks: number[] } => {
  const starts: number[] = []
  const marks: number[] = []
  let place = sizes.length - 1
  while (place >= 0) {
    const size = sizes[place] ?? 1
    const isBranch = size <= MOST_IN_BRANCH && size >= FEWEST_IN_BRANCH
    const start = isBranch ? place - size + 1 : place
    if (!isBranch && marks.at(-1) === 0) starts[starts.length - 1] = start
    else {
      starts.push(start)
      marks.push(isBranch ? 1 : 0)
    }
    place = start - 1
  }
  return { starts, marks }
}

/** The blocks of trees with so many places hanging from each place, and of mouths in the order of their places. */
export const blocksOf = (sizes: Int32Array, mouthPlace: Int32Array): Blocks => {
  const { starts, marks } = sizes.length < FEWEST_PLACES ? { starts: [0], marks: [0] } : cutBranches(sizes)
  const start = Int32Array.from([...starts.toReversed(), sizes.length])
  const mouth = rowOf(start.length)
  let next = 0
  for (const place of start) {
    while (next < mouthPlace.length && (mouthPlace[next] ?? 0) < place) next += 1
    push(mouth, next)
  }
  return { start, mouth: mouth.values.slice(0, mouth.length), isBranch: Uint8Array.from(marks.toReversed()) }
}
