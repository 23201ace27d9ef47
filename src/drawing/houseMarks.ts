import type { House } from '../layout/house'
import type { Mark } from '../model/drawing'
import { discMark, flat, lineMark, nameMarks, shapeMark } from '../parts/marks'
import { between, distance, type Point } from '../geometry/point'

/** Radius of the benchmark's disc on paper, mm. */
export const BENCHMARK_MM = 2

/** The inside of the walls, washed and drawn. Everything else of the bay lies on it. */
export const houseMarks = ({ outline }: House): Mark[] => [shapeMark(outline, 'wall', 'house')]

const longestLeg = (points: readonly Point[]): readonly [Point, Point] | undefined =>
  points
    .slice(1)
    .map((to, i) => [points[i] ?? to, to] as const)
    .toSorted((a, b) => distance(b[0], b[1]) - distance(a[0], a[1]))[0]

/** What is buried under the floor, as hidden lines with their names. */
export const serviceMarks = ({ services }: House): Mark[] =>
  services.flatMap(({ name, points }) => {
    const leg = longestLeg(points)
    if (leg === undefined) return []
    const isUpright = Math.abs(leg[1].y - leg[0].y) > Math.abs(leg[1].x - leg[0].x)
    return [lineMark(points, 'hidden'), ...nameMarks(name, between(leg[0], leg[1], 0.5), isUpright)]
  })

const quadrant = ({ x, y }: Point, radiusMm: number, startTurn: number): Mark => {
  const arc = Array.from({ length: 7 }, (_, i) => {
    const angle = startTurn + (i * Math.PI) / 12
    return { x: x + radiusMm * Math.cos(angle), y: y + radiusMm * Math.sin(angle) }
  })
  return { as: 'path', pen: 'outline', wash: 'post', points: flat([{ x, y }, ...arc]), closed: true }
}

/** The surveyor's mark: a quartered disc. `radiusMm` is of floor; it is as large on paper at every scale. */
export const benchmarkMarks = ({ benchmark }: House, radiusMm: number): Mark[] => [
  discMark(benchmark.at, radiusMm, 'outline', 'paper'),
  quadrant(benchmark.at, radiusMm, 0),
  quadrant(benchmark.at, radiusMm, Math.PI),
]
