import { type Core, coreOf } from './core'
import type { Network } from './network'

/*
 * The order in which joints are eliminated, which depends on what is joined to what and on no other number.
 *
 *      level ==(pump)== a ====== b ====== c ====== d          leaves first: e, d, f, c ... each hangs by one link, so its
 *                                |        |                   response to the head above is two numbers, and the sweep
 *                                e        f                   needs no matrix. Whatever is left is rings: the core.
 *
 * A place is where a joint stands in that order: first the joints of the trees, leaves before what they hang from, then
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
  /** By mouth: its place. */
  readonly mouthPlace: Int32Array
  readonly core: Core
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

/** Completes places and slots with the core and the levels, in place. */
const placeCore = (trees: Trees, core: Core, levelCount: number): void => {
  const { count, nodeAt, placeOf, linkAt } = trees
  core.nodes.forEach((node, i) => {
    nodeAt[count + i] = node
    placeOf[node] = count + i
  })
  const firstLevel = nodeAt.length - levelCount
  for (let level = 0; level < levelCount; level += 1) {
    nodeAt[firstLevel + level] = level
    placeOf[level] = firstLevel + level
  }
  linkAt.set(core.links, count)
}

const mouthPlaces = (mouthFrom: Int32Array, placeOf: Int32Array): Int32Array => {
  const places = new Int32Array(mouthFrom.length)
  for (let mouth = 0; mouth < places.length; mouth += 1) places[mouth] = placeOf[mouthFrom[mouth] ?? 0] ?? 0
  return places
}

/** The order of elimination of a network whose indices are in range. */
export const shapeOf = (network: Network): Shape => {
  const levelCount = network.levels.length
  const nodeCount = levelCount + network.joints.length
  const [from, to] = [endsOf(network, 'from'), endsOf(network, 'to')]
  const trees = pickLeaves(levelCount, nodeCount, from, to)
  const core = coreOf(levelCount, from, to, trees)
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
  return {
    levelCount,
    treeCount,
    placeOf,
    nodeAt,
    upper,
    lower,
    linkAt,
    isTurned,
    mouthPlace: mouthPlaces(mouthFrom, placeOf),
    core,
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
