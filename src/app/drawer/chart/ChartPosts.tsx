import type { ChartPost } from './chartData'
import type { Plot } from './plot'

const LETTER_PX = 6.6

/** Between a name and its upright, and between one name and the next, px. */
const GAP_PX = 4

interface Placed extends ChartPost {
  readonly fromPx: number
}

/** Names right of their uprights, or left of one at the edge; one that would run into the last is left to read-out and table. */
const withRoom = (posts: readonly ChartPost[], { toX, right }: Plot): readonly Placed[] => {
  let freeFrom = -Infinity
  return posts
    .toSorted((a, b) => a.x - b.x)
    .flatMap((post) => {
      const width = post.name.length * LETTER_PX
      const after = toX(post.x) + GAP_PX
      const fromPx = after + width > right + GAP_PX ? toX(post.x) - GAP_PX - width : after
      if (fromPx < freeFrom) return []
      freeFrom = fromPx + width + GAP_PX
      return [{ ...post, fromPx }]
    })
}

/** Names of the uprights, along the foot of the plot. */
export function ChartPosts({ posts, plot }: { readonly posts: readonly ChartPost[]; readonly plot: Plot }) {
  return withRoom(posts, plot).map(({ name, x, fromPx }) => (
    <text key={`${name} ${x}`} className="chart-post-name" x={fromPx} y={plot.bottom - 5}>
      {name}
    </text>
  ))
}
