import { feet, inches, MM_PER_CM, MM_PER_M, type Units } from '../units/length'
import type { Writer } from '../units/writer'

/** Distances between the written and the plain ticks of a ruler, mm. */
export interface RulerStep {
  readonly majorMm: number
  readonly minorMm: number
}

const step = (majorMm: number, minorMm: number): RulerStep => ({ majorMm, minorMm })

/** Finest first: each written tick is a number that a builder would say. */
const steps: Readonly<Record<Units, readonly RulerStep[]>> = {
  'feet-inches': [
    step(inches(1), inches(1 / 4)),
    step(inches(3), inches(1)),
    step(inches(6), inches(1)),
    step(feet(1), inches(3)),
    step(feet(2), feet(1)),
    step(feet(5), feet(1)),
    step(feet(10), feet(5)),
    step(feet(20), feet(10)),
    step(feet(50), feet(10)),
    step(feet(100), feet(50)),
  ],
  metric: [
    step(20, 5),
    step(50, MM_PER_CM),
    step(100, 20),
    step(200, 100),
    step(500, 100),
    step(MM_PER_M, 500),
    step(2 * MM_PER_M, MM_PER_M),
    step(5 * MM_PER_M, MM_PER_M),
    step(10 * MM_PER_M, 5 * MM_PER_M),
    step(50 * MM_PER_M, 10 * MM_PER_M),
  ],
}

/** Written ticks stand at least this far apart, so that their words do not touch. */
const LEAST_MAJOR_PX = 64

const COARSEST: RulerStep = step(100 * MM_PER_M, 50 * MM_PER_M)

/** The finest step whose words still have room. */
export const rulerStep = (pxPerMm: number, units: Units): RulerStep =>
  steps[units].find(({ majorMm }) => majorMm * pxPerMm >= LEAST_MAJOR_PX) ?? COARSEST

/** A tick's number: whole feet without inches, metres once the step is as long. */
export const tickWords = (mm: number, { majorMm }: RulerStep, units: Units, writer: Writer): string => {
  if (units === 'metric') return majorMm >= MM_PER_M ? `${mm / MM_PER_M} m` : `${mm}`
  return writer.length(mm).replace(/' 0"$/, "'")
}

/** Multiples of a step from `low` to `high`. */
export const multiples = (low: number, high: number, stepMm: number): number[] => {
  const first = Math.ceil(low / stepMm)
  const count = Math.max(0, Math.floor(high / stepMm) - first + 1)
  return Array.from({ length: count }, (_, index) => (first + index) * stepMm)
}
