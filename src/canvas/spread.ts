/** A run of labels that touch, with the middle that suits them all best. */
interface Cluster {
  readonly count: number
  /** Sum over its labels of the wanted place less the label's own offset in the run. */
  readonly sum: number
}

const startOf = ({ count, sum }: Cluster, low: number, high: number): number =>
  Math.max(low, Math.min(sum / count, high))

/** How far the middle of each label stands from the middle of the first where they all touch. */
const offsetsOf = (sizes: readonly number[]): number[] => {
  let offset = 0
  return sizes.map((size, index) => {
    const before = sizes[index - 1]
    offset += before === undefined ? 0 : (before + size) / 2
    return offset
  })
}

/**
 * Middles of labels that want to stand at `wanted`, ascending, each as high as `sizes` has it: none covers another, all lie
 * between `low` and `high`, and the sum of squared shifts is least before the ends are minded. Where there is too little
 * room they start at `low`.
 */
export const spreadSizes = (
  wanted: readonly number[],
  sizes: readonly number[],
  low: number,
  high: number,
): number[] => {
  const offsets = offsetsOf(sizes)
  const first = low + (sizes[0] ?? 0) / 2
  const last = high - (sizes.at(-1) ?? 0) / 2 - (offsets.at(-1) ?? 0)
  const clusters: Cluster[] = []
  wanted.forEach((place, index) => {
    let cluster: Cluster = { count: 1, sum: place - (offsets[index] ?? 0) }
    let before = clusters.at(-1)
    while (before && before.sum / before.count > cluster.sum / cluster.count) {
      clusters.pop()
      cluster = { count: before.count + cluster.count, sum: before.sum + cluster.sum }
      before = clusters.at(-1)
    }
    clusters.push(cluster)
  })
  const starts = clusters.flatMap((cluster) =>
    Array<number>(cluster.count).fill(startOf(cluster, first, last)),
  )
  return starts.map((start, index) => start + (offsets[index] ?? 0))
}

/** The same for labels of one height, `spacing`, whose middles lie between `low` and `high`. */
export const spread = (wanted: readonly number[], spacing: number, low: number, high: number): number[] =>
  spreadSizes(
    wanted,
    wanted.map(() => spacing),
    low - spacing / 2,
    high + spacing / 2,
  )
