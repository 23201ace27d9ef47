import { type Row, push, rowOf } from './row'

/**
 * Joints and the edges between them, to which elimination adds edges. Each edge is two half-edges, `2 edge` and
 * `2 edge + 1`, and each joint has a list of the half-edges that leave it. Joints that are gone stay in the lists.
 */
export interface Mesh {
  /** By joint: its first half-edge, or -1. */
  readonly first: Int32Array
  /** By half-edge: the joint at its far end, and the next half-edge of the same joint, or -1. */
  readonly far: Row
  readonly next: Row
  readonly degree: Int32Array
  readonly isGone: Uint8Array
}

const addHalf = (mesh: Mesh, near: number, far: number): void => {
  push(mesh.next, mesh.first[near] ?? -1)
  mesh.first[near] = mesh.far.length
  push(mesh.far, far)
  mesh.degree[near] = (mesh.degree[near] ?? 0) + 1
}

export const edgesIn = (mesh: Mesh): number => mesh.far.length >> 1

/** Adds an edge between two joints that have none, and returns it. */
export const addEdge = (mesh: Mesh, a: number, b: number): number => {
  addHalf(mesh, a, b)
  addHalf(mesh, b, a)
  return edgesIn(mesh) - 1
}

/** The edge between two joints, or -1. */
export const edgeBetween = (mesh: Mesh, a: number, b: number): number => {
  const isFewer = (mesh.degree[a] ?? 0) < (mesh.degree[b] ?? 0)
  const near = isFewer ? a : b
  const wanted = isFewer ? b : a
  const far = mesh.far.values
  const next = mesh.next.values
  for (let half = mesh.first[near] ?? -1; half >= 0; half = next[half] ?? -1)
    if (far[half] === wanted) return half >> 1
  return -1
}

/** Appends the joints that are tied to one and still there, and the edges to them. */
export const neighboursOf = (mesh: Mesh, joint: number, joints: Row, edges: Row): void => {
  for (let half = mesh.first[joint] ?? -1; half >= 0; half = mesh.next.values[half] ?? -1) {
    const far = mesh.far.values[half] ?? 0
    if (mesh.isGone[far] === 1) continue
    push(joints, far)
    push(edges, half >> 1)
  }
}

/**
 * The mesh of links between joints. Ends beyond the last joint are levels: such a link is no edge, and links side by
 * side are one. `edgeOf` says which, by link, -1 for none.
 */
export const meshOf = (
  jointCount: number,
  upper: Int32Array,
  lower: Int32Array,
): { readonly mesh: Mesh; readonly edgeOf: Int32Array } => {
  const linkCount = upper.length
  const mesh: Mesh = {
    first: new Int32Array(jointCount).fill(-1),
    far: rowOf(4 * linkCount),
    next: rowOf(4 * linkCount),
    degree: new Int32Array(jointCount),
    isGone: new Uint8Array(jointCount),
  }
  const edgeOf = new Int32Array(linkCount).fill(-1)
  for (let link = 0; link < linkCount; link += 1) {
    const a = upper[link] ?? 0
    const b = lower[link] ?? 0
    if (a >= jointCount || b >= jointCount) continue
    const edge = edgeBetween(mesh, a, b)
    edgeOf[link] = edge < 0 ? addEdge(mesh, a, b) : edge
  }
  return { mesh, edgeOf }
}
