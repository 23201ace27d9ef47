import { type Mesh, addEdge, edgeBetween, meshOf, neighboursOf } from './mesh'

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

/** Picks what goes next: the joint with the fewest neighbours. A joint is put in anew whenever their number changes. */
interface Queue {
  readonly stacks: number[][]
  fewest: number
}

const put = (queue: Queue, degree: number, joint: number): void => {
  while (queue.stacks.length <= degree) queue.stacks.push([])
  queue.stacks[degree]?.push(joint)
  if (degree < queue.fewest) queue.fewest = degree
}

const take = (queue: Queue, { degree, isGone }: Mesh): number => {
  for (; queue.fewest < queue.stacks.length; queue.fewest += 1) {
    const stack = queue.stacks[queue.fewest] ?? []
    for (let joint = stack.pop(); joint !== undefined; joint = stack.pop())
      if (isGone[joint] === 0 && degree[joint] === queue.fewest) return joint
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
  const group = Int32Array.from({ length: jointCount + 1 }, (_, i) => i)
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
  return Uint8Array.from({ length: jointCount }, (_, joint) => (rootOf(joint) === rootOf(jointCount) ? 1 : 0))
}

interface Order {
  readonly joints: number[]
  readonly start: number[]
  readonly neighbour: number[]
  readonly neighbourEdge: number[]
  readonly pairEdge: number[]
}

const eliminate = (joint: number, mesh: Mesh, queue: Queue, order: Order): void => {
  const first = order.neighbour.length
  mesh.isGone[joint] = 1
  neighboursOf(mesh, joint, order.neighbour, order.neighbourEdge)
  const { neighbour } = order
  for (let i = first; i < neighbour.length; i += 1) {
    const a = neighbour[i] ?? 0
    mesh.degree[a] = (mesh.degree[a] ?? 0) - 1
  }
  for (let i = first; i < neighbour.length; i += 1)
    for (let j = first; j < i; j += 1) {
      const [a, b] = [neighbour[i] ?? 0, neighbour[j] ?? 0]
      const edge = edgeBetween(mesh, a, b)
      order.pairEdge.push(edge < 0 ? addEdge(mesh, a, b) : edge)
    }
  for (let i = first; i < neighbour.length; i += 1) {
    const a = neighbour[i] ?? 0
    put(queue, mesh.degree[a] ?? 0, a)
  }
  order.joints.push(joint)
  order.start.push(neighbour.length)
}

const orderOf = (mesh: Mesh): Order => {
  const order: Order = { joints: [], start: [0], neighbour: [], neighbourEdge: [], pairEdge: [] }
  const queue: Queue = { stacks: [], fewest: 0 }
  mesh.degree.forEach((degree, joint) => {
    put(queue, degree, joint)
  })
  for (let joint = take(queue, mesh); joint >= 0; joint = take(queue, mesh))
    eliminate(joint, mesh, queue, order)
  return order
}

interface Left {
  /** Nodes that are left, levels not among them, and each node's index in them; levels lie beyond the last. */
  readonly nodes: number[]
  readonly links: number[]
  readonly upper: Int32Array
  readonly lower: Int32Array
}

const leftOf = (
  levelCount: number,
  from: Int32Array,
  to: Int32Array,
  trees: { readonly count: number; readonly placeOf: Int32Array; readonly linkAt: Int32Array },
): Left => {
  const nodes: number[] = []
  const indexOf = new Int32Array(trees.placeOf.length).fill(trees.placeOf.length)
  for (let node = levelCount; node < trees.placeOf.length; node += 1)
    if (trees.placeOf[node] === -1) indexOf[node] = nodes.push(node) - 1
  const isPicked = new Uint8Array(from.length)
  for (let slot = 0; slot < trees.count; slot += 1) isPicked[trees.linkAt[slot] ?? 0] = 1
  const links: number[] = []
  for (let link = 0; link < from.length; link += 1) if (isPicked[link] === 0) links.push(link)
  const endsIn = (ends: Int32Array) => Int32Array.from(links, (link) => indexOf[ends[link] ?? 0] ?? 0)
  return { nodes, links, upper: endsIn(from), lower: endsIn(to) }
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

/** The core that the trees leave over, in the order in which to eliminate it. */
export const coreOf = (
  levelCount: number,
  from: Int32Array,
  to: Int32Array,
  trees: { readonly count: number; readonly placeOf: Int32Array; readonly linkAt: Int32Array },
): Core => {
  if (trees.count === from.length && trees.count === trees.placeOf.length - levelCount) return NO_CORE
  const { nodes, links, upper, lower } = leftOf(levelCount, from, to, trees)
  const { mesh, edgeOf } = meshOf(nodes.length, upper, lower)
  const order = orderOf(mesh)
  const placeOf = new Int32Array(nodes.length)
  order.joints.forEach((joint, place) => {
    placeOf[joint] = place
  })
  const stranded = reachedFromLevels(nodes.length, upper, lower, () => false).indexOf(0)
  return {
    nodes: Int32Array.from(order.joints, (joint) => nodes[joint] ?? 0),
    links: Int32Array.from(links),
    edgeOf,
    edgeCount: mesh.edgeCount,
    start: Int32Array.from(order.start),
    neighbour: Int32Array.from(order.neighbour, (joint) => placeOf[joint] ?? 0),
    neighbourEdge: Int32Array.from(order.neighbourEdge),
    pairEdge: Int32Array.from(order.pairEdge),
    strandedNode: stranded < 0 ? -1 : (nodes[stranded] ?? -1),
  }
}
