import type { ChartPost } from './chartData'
import type { Plot } from './plot'

const LETTER_PX = 6.6

/** Names that would run into the one before are left to the read-out and the table. */
const withRoom = (posts: readonly ChartPost[], { toX, right }: Plot): readonly ChartPost[] => {
  let freeFrom = -Infinity
  return [...posts]
    .sort((a, b) => a.x - b.x)
    .filter(({ name, x }) => {
      const from = toX(x) + 4
      const to = from + name.length * LETTER_PX
      if (from < freeFrom || to > right + 12) return false
      freeFrom = to + 4
      return true
    })
}

/** Names of the uprights, along the foot of the plot. */
export function ChartPosts({ posts, plot }: { readonly posts: readonly ChartPost[]; readonly plot: Plot }) {
  return withRoom(posts, plot).map(({ name, x }) => (
    <text key={`${name} ${x}`} className="chart-post-name" x={plot.toX(x) + 4} y={plot.bottom - 5}>
      {name}
    </text>
  ))
}
