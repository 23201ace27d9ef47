import type { Point } from './point'

const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length

/** Slope of the line through some points, y on x, by least squares; 0 where they do not spread along x. */
export const slopeOf = (points: readonly Point[]): number => {
  const x = mean(points.map((point) => point.x))
  const y = mean(points.map((point) => point.y))
  const spread = points.reduce((sum, point) => sum + (point.x - x) ** 2, 0)
  const joint = points.reduce((sum, point) => sum + (point.x - x) * (point.y - y), 0)
  return spread > 0 ? joint / spread : 0
}
