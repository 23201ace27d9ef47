import { CHECK_DRAWS, KEEPS, PUMP_DRAWS, drawnTo, isBlocked, lossOfOneWay } from './oneWay'
import { found, lossEitherWay, lossOf } from './resistance'
import { PLAIN, PUMP, SHUT, type Work } from './work'

// Bound once, as in sweep.ts.
const plain = PLAIN
const lossAt = lossEitherWay
const lost = found

/*
 * The core is solved for the changes of its heads. So what a link misses is carried by its flow, and whatever rounding
 * does to it no water is lost at a joint.
 */

/** Slopes in the core are no smaller, s/m2: at 10 L/s it would be 10 nm of head. */
const LEAST_SLOPE = 1e-6

/** A fitting's slope is taken no smaller than where it loses this much, m: at rest it would be 0. */
const TRACE_M = 1e-7

/** What a link of the core is taken to pass at the start, so that its slope is of the right size. */
const START_REYNOLDS = 5000
const START_LOSS_M = 0.01

/** At the very start nobody knows which way a ring runs: each link counts as a straight resistance at rest. */
const lossAtStart = (work: Work, slot: number): void => {
  const perFlow = work.links.reynolds[slot] ?? 0
  const square = work.links.square[slot] ?? 0
  const flow = perFlow > 0 ? START_REYNOLDS / perFlow : square > 0 ? Math.sqrt(START_LOSS_M / square) : 1
  lossOf(work.links, slot, flow)
  found.slope = found.loss / flow
  found.loss = 0
  work.flow[slot] = 0
}

const lossInCore = (work: Work, slot: number, isFirst: boolean): void => {
  if (work.kind[slot] !== plain) lossOfOneWay(work, slot)
  else if (isFirst) lossAtStart(work, slot)
  else lossAt(work.links, slot, work.flow[slot] ?? 0)
  const trace = 2 * Math.sqrt(TRACE_M * (work.links.square[slot] ?? 0))
  lost.slope = Math.max(lost.slope, LEAST_SLOPE, trace)
}

const add = (to: Float64Array, at: number, what: number): void => {
  to[at] = (to[at] ?? 0) + what
}

/** A link that passes nothing: it says at most where a joint that nothing else holds comes to rest. */
const gatherBlocked = (work: Work, slot: number): void => {
  const { shape, head, conductance, supply, kind } = work
  const a = shape.upper[slot] ?? 0
  const b = shape.lower[slot] ?? 0
  work.flow[slot] = 0
  work.slope[slot] = Infinity
  add(conductance, a, KEEPS)
  add(conductance, b, KEEPS)
  if (kind[slot] === SHUT) return
  const draws = kind[slot] === PUMP ? PUMP_DRAWS : CHECK_DRAWS
  add(conductance, b, draws)
  add(supply, b, draws * (drawnTo(work, slot, head[a] ?? 0) - (head[b] ?? 0)))
}

/** Turns a link into a conductance, and what flows in it at the last heads into supplies. */
const gatherOpen = (work: Work, slot: number, isFirst: boolean): void => {
  const { shape, head, conductance, supply, flow, slope } = work
  lossInCore(work, slot, isFirst)
  const a = shape.upper[slot] ?? 0
  const b = shape.lower[slot] ?? 0
  const missed = (head[a] ?? 0) - (head[b] ?? 0) - lost.loss
  if (Math.abs(missed) > work.misfit) work.misfit = Math.abs(missed)
  const through = 1 / lost.slope
  const carried = (flow[slot] ?? 0) + missed * through
  flow[slot] = carried
  slope[slot] = lost.slope
  add(supply, a, -carried)
  add(supply, b, carried)
  const shared = shape.core.edgeOf[slot - shape.treeCount] ?? -1
  if (shared >= 0) add(work.edge, shared, through)
  else {
    add(conductance, a, through)
    add(conductance, b, through)
  }
}

const gather = (work: Work, isFirst: boolean): void => {
  const { shape, head, conductance, supply, edge, kind } = work
  const { treeCount, upper, core } = shape
  edge.fill(0)
  const end = treeCount + core.nodes.length
  for (let place = treeCount; place < end; place += 1)
    add(supply, place, -(conductance[place] ?? 0) * (head[place] ?? 0))
  for (let slot = treeCount; slot < upper.length; slot += 1)
    if (kind[slot] !== plain && isBlocked(work, slot)) gatherBlocked(work, slot)
    else gatherOpen(work, slot, isFirst)
}

/** Eliminates joint by joint: a star of conductances becomes a mesh between its points. All terms are positive. */
const eliminate = ({ shape, conductance, supply, edge }: Work): void => {
  const { treeCount, core } = shape
  const { start, neighbour, neighbourEdge, pairEdge } = core
  let pair = 0
  for (let joint = 0; joint < core.nodes.length; joint += 1) {
    const first = start[joint] ?? 0
    const end = start[joint + 1] ?? 0
    const own = conductance[treeCount + joint] ?? 0
    let all = own
    for (let i = first; i < end; i += 1) all += edge[neighbourEdge[i] ?? 0] ?? 0
    const surplus = supply[treeCount + joint] ?? 0
    for (let i = first; i < end; i += 1) {
      const part = (edge[neighbourEdge[i] ?? 0] ?? 0) / all
      const place = treeCount + (neighbour[i] ?? 0)
      add(conductance, place, part * own)
      add(supply, place, part * surplus)
      for (let j = first; j < i; j += 1) {
        add(edge, pairEdge[pair] ?? 0, part * (edge[neighbourEdge[j] ?? 0] ?? 0))
        pair += 1
      }
    }
    conductance[treeCount + joint] = all
  }
}

/** Changes of head, last joint first; they take the room of `supply`. */
const substitute = (work: Work): void => {
  const { shape, head, conductance, supply, edge } = work
  const { treeCount, core } = shape
  const { start, neighbour, neighbourEdge } = core
  for (let joint = core.nodes.length - 1; joint >= 0; joint -= 1) {
    const place = treeCount + joint
    let sum = supply[place] ?? 0
    for (let i = start[joint] ?? 0; i < (start[joint + 1] ?? 0); i += 1)
      sum += (edge[neighbourEdge[i] ?? 0] ?? 0) * (supply[treeCount + (neighbour[i] ?? 0)] ?? 0)
    const by = sum / (conductance[place] ?? 1)
    supply[place] = by
    add(head, place, by)
    work.change = Math.max(work.change, Math.abs(by))
  }
}

const carry = ({ shape, supply, flow, slope }: Work): void => {
  const { treeCount, upper, lower, core } = shape
  const end = treeCount + core.nodes.length
  const changeAt = (place: number): number => (place < end ? (supply[place] ?? 0) : 0)
  for (let slot = treeCount; slot < upper.length; slot += 1)
    add(flow, slot, (changeAt(upper[slot] ?? 0) - changeAt(lower[slot] ?? 0)) / (slope[slot] ?? 1))
}

/** Heads and flows of the core, once what hangs from it has been taken. */
export const sweepCore = (work: Work, isFirst: boolean): void => {
  if (work.shape.core.links.length === 0) return
  gather(work, isFirst)
  eliminate(work)
  substitute(work)
  carry(work)
}
