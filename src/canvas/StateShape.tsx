import type { StateWord } from '../model/finding'
import { stateRank } from './stateInk'

const R = 5

/** The same shapes as on the canvas: a ring for good, a triangle to look at, a full square to mend. */
const shapes = [
  `M${R} 0A${R} ${R} 0 1 1 ${-R} 0A${R} ${R} 0 1 1 ${R} 0`,
  `M0 ${-R}L${R} ${R * 0.8}H${-R}Z`,
  `M${-R} ${-R}H${R}V${R}H${-R}Z`,
]

interface StateShapeProps {
  readonly state: StateWord
  readonly x: number
  readonly y: number
}

/** A state's shape in a drawing; its word stands beside it. */
export function StateShape({ state, x, y }: StateShapeProps) {
  const rank = stateRank(state)
  const name = rank === 2 ? 'pole-short pole-full' : 'pole-short'
  return <path className={name} transform={`translate(${x} ${y})`} d={shapes[rank]} />
}
