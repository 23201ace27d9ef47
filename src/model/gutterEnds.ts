import { distance, type Point } from '../geometry/point'
import type { Built } from './built'
import type { RackFacts } from './rackFacts'

/** The ends of a row's left face where its gutters are high, and where their outlet is. */
export const gutterEnds = ({ mouths }: Built, { leftFace }: RackFacts): { high: Point; low: Point } => {
  const { from, to } = leftFace
  const outlet = mouths.find(({ role }) => role === 'trough-outlet')?.at ?? to
  return distance(from, outlet) > distance(to, outlet) ? { high: from, low: to } : { high: to, low: from }
}
