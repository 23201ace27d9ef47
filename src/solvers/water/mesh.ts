/**
 * Joints and the edges between them, to which elimination adds edges. Each edge is two half-edges, `2 edge` and
 * `2 edge + 1`, and each joint has a list of the half-edges that leave it. Joints that are gone stay in the lists until
 * somebody comes by.
 */
export interface Mesh {
  /** By joint: its first half-edge, or -1. */
  readonly first: Int32Array
  /** By half-edge: the joint at its far end, and the next half-edge of the same joint, or -1. */
  readonly far: number[]
  readonly next: number[]
  readonly degree: Int32Array
  readonly isGone: Uint8Array
  edgeCount: number
}

const addHalf = (mesh: Mesh, near: number, far: number): void => {
  mesh.next.push(mesh.first[near] ?? -1)
  mesh.first[near] = mesh.far.push(far) - 1
  mesh.degree[near] = (mesh.degree[near] ?? 0) + 1
}

/** Adds an edge between two joints that have none, and returns it. */
export const addEdge = (mesh: Mesh, a: number, b: number): number => {
  addHalf(mesh, a, b)
  addHalf(mesh, b, a)
  mesh.edgeCount += 1
  return mesh.edgeCount - 1
}

/** The edge between two joints, or -1. */
export const edgeBetween = (mesh: Mesh, a: number, b: number): number => {
  const [near, wanted] = (mesh.degree[a] ?? 0) < (mesh.degree[b] ?? 0) ? [a, b] : [b, a]
  for (let half = mesh.first[near] ?? -1; half >= 0; half = mesh.next[half] ?? -1)
    if (mesh.far[half] === wanted) return half >> 1
  return -1
}

const isGone = (mesh: Mesh, half: number): boolean => mesh.isGone[mesh.far[half] ?? 0] === 1

/** Appends the joints that are tied to one and still there, and the edges to them. */
export const neighboursOf = (mesh: Mesh, joint: number, joints: number[], edges: number[]): void => {
  for (let half = mesh.first[joint] ?? -1; half >= 0; half = mesh.next[half] ?? -1)
    if (!isGone(mesh, half)) {
      joints.push(mesh.far[half] ?? 0)
      edges.push(half >> 1)
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
  const mesh: Mesh = {
    first: new Int32Array(jointCount).fill(-1),
    far: [],
    next: [],
    degree: new Int32Array(jointCount),
    isGone: new Uint8Array(jointCount),
    edgeCount: 0,
  }
  const edgeOf = Int32Array.from(upper, (a, link) => {
    const b = lower[link] ?? 0
    if (a >= jointCount || b >= jointCount) return -1
    const edge = edgeBetween(mesh, a, b)
    return edge < 0 ? addEdge(mesh, a, b) : edge
  })
  return { mesh, edgeOf }
}
