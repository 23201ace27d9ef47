import type { Point } from '../geometry/point'
import { LONGEST_MM, onTick } from '../units/length'

const kept = (mm: number): number => onTick(Math.min(Math.max(mm, -LONGEST_MM), LONGEST_MM))

/** The nearest place that a layout can hold: on the tick, and no further out than its longest length. */
export const onFloor = ({ x, y }: Point): Point => ({ x: kept(x), y: kept(y) })
