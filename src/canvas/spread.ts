/** A run of labels that touch, with the middle that suits them all best. */
interface Cluster {
  readonly count: number
  /** Sum over its labels of the wanted place less the label's own offset in the run. */
  readonly sum: number
}

const startOf = ({ count, sum }: Cluster, spacing: number, low: number, high: number): number =>
  Math.max(low, Math.min(sum / count, high - (count - 1) * spacing))

/**
 * Places for labels that want to stand at `wanted`, ascending: at least `spacing` apart, between `low` and `high`, and
 * with the least sum of squared shifts before the ends are minded. Where there is too little room they start at `low`.
 */
export const spread = (wanted: readonly number[], spacing: number, low: number, high: number): number[] => {
  const clusters: Cluster[] = []
  const start = (cluster: Cluster) => startOf(cluster, spacing, low, high)
  for (const place of wanted) {
    let last: Cluster = { count: 1, sum: place }
    let before = clusters.at(-1)
    while (before && start(before) + before.count * spacing > start(last)) {
      clusters.pop()
      last = {
        count: before.count + last.count,
        sum: before.sum + last.sum - last.count * before.count * spacing,
      }
      before = clusters.at(-1)
    }
    clusters.push(last)
  }
  return clusters.flatMap((cluster) =>
    Array.from({ length: cluster.count }, (_, index) => start(cluster) + index * spacing),
  )
}
