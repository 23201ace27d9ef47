import { type Blocks, blocksOf } from './blocks'
import { type Core, coreOf } from './core'
import type { Network } from './network'

/*
 * The order in which joints are eliminated, which depends on what is joined to what and on no other number.
 *
 *      level ==(pump)== a ====== b ====== c ====== d          leaves first: e, d, f, c ... each hangs by one link, so its
 *                                |        |                   response to the head above is two numbers, and the sweep
 *                                e        f                   needs no matrix. Whatever is left is rings: the core.
 *
 * A place is where a joint stands in that order: first the joints of the trees, each just after all that hangs from it, then
 * those of the core, then the levels, which are never eliminated. A slot is where a link stands: slot `i` of the trees is
 * the link by which place `i` hangs; the links of the core follow. Links are numbered pipes, valves, pumps.
 */
export interface Shape {
  readonly levelCount: number
  readonly treeCount: number
  /** Both by node. */
  readonly placeOf: Int32Array
  /** The nodes by place. */
  readonly nodeAt: Int32Array
  /** By slot: the places at both ends. Flow runs positive from upper to lower. */
  readonly upper: Int32Array
  readonly lower: Int32Array
  /** By slot: which link, and whether its own positive way is from lower to upper. */
  readonly linkAt: Int32Array
  readonly isTurned: Uint8Array
  /** Mouths in the order of their places: which mouth, and its place. */
  readonly mouthAt: Int32Array
  readonly mouthPlace: Int32Array
  readonly core: Core
  readonly blocks: Blocks
  /** Kept to tell whether another network has the same shape. */
  readonly from: Int32Array
  readonly to: Int32Array
  readonly mouthFrom: Int32Array
  /** The first joint that no level reaches, even with every valve open; -1 where each is reached. */
  readonly strandedJoint: number
}

const endsOf = ({ pipes, valves, pumps }: Network, end: 'from' | 'to'): Int32Array => {
  const [a, b, c] = [pipes[end], valves[end], pumps[end]]
  const all = new Int32Array(a.length + b.length + c.length)
  all.set(a)
  all.set(b, a.length)
  all.set(c, a.length + b.length)
  return all
}

interface Trees {
  readonly count: number
  readonly nodeAt: Int32Array
  readonly placeOf: Int32Array
  readonly linkAt: Int32Array
}

/**
 * Picks leaves until none is left. Of the links at a node only their number and the exclusive or of their indices is
 * kept: at a leaf that is the index itself.
 */
const pickLeaves = (levelCount: number, nodeCount: number, from: Int32Array, to: Int32Array): Trees => {
  const linkCount = from.length
  const degree = new Int32Array(nodeCount)
  const mixed = new Int32Array(nodeCount)
  for (let link = 0; link < linkCount; link += 1) {
    const a = from[link] ?? 0
    const b = to[link] ?? 0
    degree[a] = (degree[a] ?? 0) + 1
    degree[b] = (degree[b] ?? 0) + 1
    mixed[a] = (mixed[a] ?? 0) ^ link
    mixed[b] = (mixed[b] ?? 0) ^ link
  }
  const nodeAt = new Int32Array(nodeCount)
  const placeOf = new Int32Array(nodeCount).fill(-1)
  const linkAt = new Int32Array(linkCount)
  let count = 0
  for (let start = levelCount; start < nodeCount; start += 1) {
    let node = start
    while (node >= levelCount && degree[node] === 1) {
      const link = mixed[node] ?? 0
      const next = (from[link] ?? 0) ^ (to[link] ?? 0) ^ node
      nodeAt[count] = node
      placeOf[node] = count
      linkAt[count] = link
      count += 1
      degree[node] = 0
      degree[next] = (degree[next] ?? 0) - 1
      mixed[next] = (mixed[next] ?? 0) ^ link
      node = next
    }
  }
  return { count, nodeAt, placeOf, linkAt }
}

/** By place of the trees: the place that it hangs from; -1 for a joint of the core or a level. */
const parentsOf = (
  { count, nodeAt, placeOf, linkAt }: Trees,
  from: Int32Array,
  to: Int32Array,
): Int32Array => {
  const parents = new Int32Array(count)
  for (let place = 0; place < count; place += 1) {
    const link = linkAt[place] ?? 0
    parents[place] = placeOf[(from[link] ?? 0) ^ (to[link] ?? 0) ^ (nodeAt[place] ?? 0)] ?? -1
  }
  return parents
}

const sizesOf = (parents: Int32Array): Int32Array => {
  const sizes = new Int32Array(parents.length).fill(1)
  for (let place = 0; place < parents.length; place += 1) {
    const parent = parents[place] ?? -1
    if (parent >= 0) sizes[parent] = (sizes[parent] ?? 0) + (sizes[place] ?? 0)
  }
  return sizes
}

/**
 * Moves the places of the trees, so that each joint comes just after all that hangs from it: what hangs from a joint is
 * then one run of places. Returns how many places hang from each, itself counted.
 */
const gatherBranches = (trees: Trees, from: Int32Array, to: Int32Array): Int32Array => {
  const { count, nodeAt, placeOf, linkAt } = trees
  const parents = parentsOf(trees, from, to)
  const sizes = sizesOf(parents)
  const nextFree = new Int32Array(count)
  const oldNodes = nodeAt.slice(0, count)
  const oldLinks = linkAt.slice(0, count)
  const sizeAt = new Int32Array(count)
  let free = 0
  for (let old = count - 1; old >= 0; old -= 1) {
    const parent = parents[old] ?? -1
    const size = sizes[old] ?? 0
    const start = parent < 0 ? free : (nextFree[parent] ?? 0)
    if (parent < 0) free += size
    else nextFree[parent] = start + size
    nextFree[old] = start
    const place = start + size - 1
    const node = oldNodes[old] ?? 0
    nodeAt[place] = node
    placeOf[node] = place
    linkAt[place] = oldLinks[old] ?? 0
    sizeAt[place] = size
  }
  return sizeAt
}

/** Completes places and slots with the core and the levels, in place. */
const placeCore = (trees: Trees, core: Core, levelCount: number): void => {
  const { count, nodeAt, placeOf, linkAt } = trees
  for (let i = 0; i < core.nodes.length; i += 1) {
    const node = core.nodes[i] ?? 0
    nodeAt[count + i] = node
    placeOf[node] = count + i
  }
  const firstLevel = nodeAt.length - levelCount
  for (let level = 0; level < levelCount; level += 1) {
    nodeAt[firstLevel + level] = level
    placeOf[level] = firstLevel + level
  }
  linkAt.set(core.links, count)
}

interface SortedMouths {
  readonly mouthAt: Int32Array
  readonly mouthPlace: Int32Array
}

const sortMouths = (mouthFrom: Int32Array, placeOf: Int32Array): SortedMouths => {
  const count = mouthFrom.length
  const next = new Int32Array(placeOf.length + 1)
  for (let mouth = 0; mouth < count; mouth += 1) {
    const after = (placeOf[mouthFrom[mouth] ?? 0] ?? 0) + 1
    next[after] = (next[after] ?? 0) + 1
  }
  for (let place = 1; place < next.length; place += 1)
    next[place] = (next[place] ?? 0) + (next[place - 1] ?? 0)
  const mouthAt = new Int32Array(count)
  const mouthPlace = new Int32Array(count)
  for (let mouth = 0; mouth < count; mouth += 1) {
    const place = placeOf[mouthFrom[mouth] ?? 0] ?? 0
    const at = next[place] ?? 0
    next[place] = at + 1
    mouthAt[at] = mouth
    mouthPlace[at] = place
  }
  return { mouthAt, mouthPlace }
}

/** The order of elimination of a network whose indices are in range. */
export const shapeOf = (network: Network): Shape => {
  const levelCount = network.levels.length
  const nodeCount = levelCount + network.joints.length
  const [from, to] = [endsOf(network, 'from'), endsOf(network, 'to')]
  const trees = pickLeaves(levelCount, nodeCount, from, to)
  const core = coreOf(levelCount, from, to, trees)
  const sizes = gatherBranches(trees, from, to)
  placeCore(trees, core, levelCount)
  const { count: treeCount, nodeAt, placeOf, linkAt } = trees
  const linkCount = from.length
  const upper = new Int32Array(linkCount)
  const lower = new Int32Array(linkCount)
  const isTurned = new Uint8Array(linkCount)
  for (let slot = 0; slot < linkCount; slot += 1) {
    const link = linkAt[slot] ?? 0
    const a = placeOf[from[link] ?? 0] ?? 0
    const b = placeOf[to[link] ?? 0] ?? 0
    const turned = slot < treeCount && a === slot
    upper[slot] = turned ? b : a
    lower[slot] = turned ? a : b
    isTurned[slot] = turned ? 1 : 0
  }
  const mouthFrom = network.mouths.from.slice()
  const { mouthAt, mouthPlace } = sortMouths(mouthFrom, placeOf)
  return {
    levelCount,
    treeCount,
    placeOf,
    nodeAt,
    upper,
    lower,
    linkAt,
    isTurned,
    mouthAt,
    mouthPlace,
    core,
    blocks: blocksOf(sizes, mouthPlace),
    from,
    to,
    mouthFrom,
    strandedJoint: core.strandedNode < 0 ? -1 : core.strandedNode - levelCount,
  }
}

const isSame = (a: Int32Array, b: Int32Array, start: number): boolean => {
  for (let i = 0; i < b.length; i += 1) if (a[start + i] !== b[i]) return false
  return true
}

/** Whether a network is joined up just as the one that the shape was made for. */
export const hasShape = ({ levelCount, nodeAt, from, to, mouthFrom }: Shape, network: Network): boolean => {
  const { levels, joints, pipes, valves, pumps, mouths } = network
  const firstPump = pipes.from.length + valves.from.length
  return (
    levels.length === levelCount &&
    joints.length + levelCount === nodeAt.length &&
    from.length === firstPump + pumps.from.length &&
    mouthFrom.length === mouths.from.length &&
    isSame(from, pipes.from, 0) &&
    isSame(to, pipes.to, 0) &&
    isSame(from, valves.from, pipes.from.length) &&
    isSame(to, valves.to, pipes.from.length) &&
    isSame(from, pumps.from, firstPump) &&
    isSame(to, pumps.to, firstPump) &&
    isSame(mouthFrom, mouths.from, 0)
  )
}
