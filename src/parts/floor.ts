import type { Point } from '../geometry/point'
import { LONGEST_MM, onTick } from '../units/length'

/** Turns and mirrors make -0, which no file can hold: + 0 makes it 0. */
const kept = (mm: number): number => onTick(Math.min(Math.max(mm, -LONGEST_MM), LONGEST_MM)) + 0

/** The nearest place that a layout can hold: on the tick, and no further out than its longest length. */
export const onFloor = ({ x, y }: Point): Point => ({ x: kept(x), y: kept(y) })
