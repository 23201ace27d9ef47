import { type Mesh, addEdge, edgeBetween, edgesIn, meshOf, neighboursOf } from './mesh'
import { type Row, push, rowOf, trimmed } from './row'

/**
 * The rings of a network, and joints between two levels: what is left when all leaves are picked. Its joints are
 * eliminated in an order that ties few of them together anew, and what each elimination writes to is laid out here once.
 */
export interface Core {
  /** In the order of elimination. */
  readonly nodes: Int32Array
  readonly links: Int32Array
  /** By link of the core: which edge it lies in, for links side by side share one; -1 where it touches a level. */
  readonly edgeOf: Int32Array
  /** Edges of the links, and those that elimination adds. */
  readonly edgeCount: number
  /** The joints still there when joint `i` goes are `neighbour[start[i] .. start[i + 1]]`, as places within the core. */
  readonly start: Int32Array
  readonly neighbour: Int32Array
  readonly neighbourEdge: Int32Array
  /** The edge between each two of them, pair by pair, joint by joint. */
  readonly pairEdge: Int32Array
  /** First node that no level reaches; -1 where there is none. */
  readonly strandedNode: number
}

/**
 * Picks what goes next: the joint with the fewest neighbours. A joint is put in anew whenever their number changes, and
 * what it was put in as before no longer counts.
 */
interface Queue {
  readonly stacks: Row[]
  fewest: number
}

const put = (queue: Queue, degree: number, joint: number): void => {
  while (queue.stacks.length <= degree) queue.stacks.push(rowOf(64))
  const stack = queue.stacks[degree]
  if (stack !== undefined) push(stack, joint)
  if (degree < queue.fewest) queue.fewest = degree
}

const takeFrom = (stack: Row, degree: number, mesh: Mesh): number => {
  while (stack.length > 0) {
    stack.length -= 1
    const joint = stack.values[stack.length] ?? 0
    if (mesh.isGone[joint] === 0 && mesh.degree[joint] === degree) return joint
  }
  return -1
}

const take = (queue: Queue, mesh: Mesh): number => {
  for (; queue.fewest < queue.stacks.length; queue.fewest += 1) {
    const stack = queue.stacks[queue.fewest]
    const joint = stack === undefined ? -1 : takeFrom(stack, queue.fewest, mesh)
    if (joint >= 0) return joint
  }
  return -1
}

/** Which of the joints are tied to a level through links that are not shut. `ends` beyond the last joint are levels. */
export const reachedFromLevels = (
  jointCount: number,
  upper: Int32Array,
  lower: Int32Array,
  isShut: (link: number) => boolean,
): Uint8Array => {
  const group = new Int32Array(jointCount + 1)
  for (let joint = 0; joint <= jointCount; joint += 1) group[joint] = joint
  const rootOf = (joint: number): number => {
    let root = Math.min(joint, jointCount)
    while (group[root] !== root) {
      group[root] = group[group[root] ?? 0] ?? 0
      root = group[root] ?? 0
    }
    return root
  }
  for (let link = 0; link < upper.length; link += 1)
    if (!isShut(link)) group[rootOf(upper[link] ?? 0)] = rootOf(lower[link] ?? 0)
  const levels = rootOf(jointCount)
  const isReached = new Uint8Array(jointCount)
  for (let joint = 0; joint < jointCount; joint += 1) isReached[joint] = rootOf(joint) === levels ? 1 : 0
  return isReached
}

interface Order {
  readonly joints: Row
  readonly start: Row
  readonly neighbour: Row
  readonly neighbourEdge: Row
  readonly pairEdge: Row
}

/** Ties all neighbours of a joint that goes to each other. */
const tieNeighbours = (mesh: Mesh, { neighbour, pairEdge }: Order, first: number): void => {
  for (let i = first; i < neighbour.length; i += 1)
    for (let j = first; j < i; j += 1) {
      const a = neighbour.values[i] ?? 0
      const b = neighbour.values[j] ?? 0
      const edge = edgeBetween(mesh, a, b)
      push(pairEdge, edge < 0 ? addEdge(mesh, a, b) : edge)
    }
}

const eliminate = (joint: number, mesh: Mesh, queue: Queue, order: Order): void => {
  const { neighbour } = order
  const first = neighbour.length
  mesh.isGone[joint] = 1
  neighboursOf(mesh, joint, neighbour, order.neighbourEdge)
  for (let i = first; i < neighbour.length; i += 1) {
    const a = neighbour.values[i] ?? 0
    mesh.degree[a] = (mesh.degree[a] ?? 0) - 1
  }
  tieNeighbours(mesh, order, first)
  for (let i = first; i < neighbour.length; i += 1) {
    const a = neighbour.values[i] ?? 0
    put(queue, mesh.degree[a] ?? 0, a)
  }
  push(order.joints, joint)
  push(order.start, neighbour.length)
}

const orderOf = (mesh: Mesh): Order => {
  const count = mesh.degree.length
  const order: Order = {
    joints: rowOf(count),
    start: rowOf(count + 1),
    neighbour: rowOf(3 * count),
    neighbourEdge: rowOf(3 * count),
    pairEdge: rowOf(3 * count),
  }
  push(order.start, 0)
  const queue: Queue = { stacks: [], fewest: 0 }
  for (let joint = 0; joint < count; joint += 1) put(queue, mesh.degree[joint] ?? 0, joint)
  for (let joint = take(queue, mesh); joint >= 0; joint = take(queue, mesh))
    eliminate(joint, mesh, queue, order)
  return order
}

interface Left {
  /** Nodes that are left, levels not among them. */
  readonly nodes: Int32Array
  readonly links: Int32Array
  /** By link, as indices into `nodes`; levels lie beyond the last. */
  readonly upper: Int32Array
  readonly lower: Int32Array
}

/** What the trees took: of the nodes all that have a place, of the links those in the first slots. */
interface Taken {
  readonly count: number
  readonly placeOf: Int32Array
  readonly linkAt: Int32Array
}

const linksLeft = (linkCount: number, { count, linkAt }: Taken): Int32Array => {
  const isTaken = new Uint8Array(linkCount)
  for (let slot = 0; slot < count; slot += 1) isTaken[linkAt[slot] ?? 0] = 1
  const links = new Int32Array(linkCount - count)
  let left = 0
  for (let link = 0; link < linkCount; link += 1)
    if (isTaken[link] === 0) {
      links[left] = link
      left += 1
    }
  return links
}

const leftOf = (levelCount: number, from: Int32Array, to: Int32Array, taken: Taken): Left => {
  const { placeOf } = taken
  const nodeCount = placeOf.length
  const nodes = rowOf(nodeCount)
  const indexOf = new Int32Array(nodeCount).fill(nodeCount)
  for (let node = levelCount; node < nodeCount; node += 1)
    if (placeOf[node] === -1) {
      indexOf[node] = nodes.length
      push(nodes, node)
    }
  const links = linksLeft(from.length, taken)
  const upper = new Int32Array(links.length)
  const lower = new Int32Array(links.length)
  for (let i = 0; i < links.length; i += 1) {
    upper[i] = indexOf[from[links[i] ?? 0] ?? 0] ?? 0
    lower[i] = indexOf[to[links[i] ?? 0] ?? 0] ?? 0
  }
  return { nodes: trimmed(nodes), links, upper, lower }
}

const nothing = new Int32Array(0)
const NO_CORE: Core = {
  nodes: nothing,
  links: nothing,
  edgeOf: nothing,
  edgeCount: 0,
  start: new Int32Array(1),
  neighbour: nothing,
  neighbourEdge: nothing,
  pairEdge: nothing,
  strandedNode: -1,
}

/** Looks each index up, in place. */
const renumber = (indices: Int32Array, by: Int32Array): Int32Array => {
  for (let i = 0; i < indices.length; i += 1) indices[i] = by[indices[i] ?? 0] ?? 0
  return indices
}

/** The core that the trees leave over, in the order in which to eliminate it. */
export const coreOf = (levelCount: number, from: Int32Array, to: Int32Array, taken: Taken): Core => {
  if (taken.count === from.length && taken.count === taken.placeOf.length - levelCount) return NO_CORE
  const { nodes, links, upper, lower } = leftOf(levelCount, from, to, taken)
  const { mesh, edgeOf } = meshOf(nodes.length, upper, lower)
  const order = orderOf(mesh)
  const joints = trimmed(order.joints)
  const placeOf = new Int32Array(nodes.length)
  for (let place = 0; place < joints.length; place += 1) placeOf[joints[place] ?? 0] = place
  const stranded = reachedFromLevels(nodes.length, upper, lower, () => false).indexOf(0)
  return {
    nodes: renumber(joints, nodes),
    links,
    edgeOf,
    edgeCount: edgesIn(mesh),
    start: trimmed(order.start),
    neighbour: renumber(trimmed(order.neighbour), placeOf),
    neighbourEdge: trimmed(order.neighbourEdge),
    pairEdge: trimmed(order.pairEdge),
    strandedNode: stranded < 0 ? -1 : (nodes[stranded] ?? -1),
  }
}
