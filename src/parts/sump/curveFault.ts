import type { PumpPoint } from '../../model/supplyFacts'

/** What keeps points from being a pump's curve. `point` counts from 1. */
export type CurveFault =
  | { readonly why: 'starts-with-flow'; readonly point: 1 }
  | { readonly why: 'flow-not-rising' | 'head-not-falling'; readonly point: number }

/**
 * The first point at which a curve is none: flow must rise from nothing, head must fall all the way. A pump whose head
 * rises with its flow hunts between two flows.
 */
export const curveFault = (points: readonly PumpPoint[]): CurveFault | undefined => {
  if (points[0] && points[0].flowLph !== 0) return { why: 'starts-with-flow', point: 1 }
  for (const [index, { flowLph, headMm }] of points.entries()) {
    const before = points[index - 1]
    if (!before) continue
    if (flowLph <= before.flowLph) return { why: 'flow-not-rising', point: index + 1 }
    if (headMm >= before.headMm) return { why: 'head-not-falling', point: index + 1 }
  }
  return undefined
}
