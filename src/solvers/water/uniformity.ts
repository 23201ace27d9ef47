/** How even a set of flows is. Shares, not percent; flow in the unit of what came in. */
export interface Evenness {
  readonly mean: number
  /** Least and most flow as shares of the mean. */
  readonly leastShare: number
  readonly mostShare: number
  /** (most - least) / most: Wu and Gitlin's flow variation, 1979. */
  readonly spread: number
  /** Standard deviation of a sample (n - 1) over the mean; 0 for one flow. */
  readonly variation: number
  /** Mean of the lowest quarter over the mean: DU, and the field EU of Merriam and Keller, 1978. */
  readonly lowQuarter: number
  /** Christiansen's coefficient CU, 1942: 1 less the mean deviation as a share of the mean. */
  readonly christiansen: number
  /** Us = 1 - variation (Bralts; ASAE EP458). */
  readonly statistical: number
}

/** Mean of the lowest quarter. Where n/4 is no whole number, the next flow counts with the part that is left. */
const lowestQuarter = (rising: Float64Array): number => {
  const quarter = rising.length / 4
  const whole = Math.floor(quarter)
  let sum = (quarter - whole) * (rising[whole] ?? 0)
  for (let i = 0; i < whole; i += 1) sum += rising[i] ?? 0
  return sum / quarter
}

const deviations = (flows: Float64Array, mean: number): { absolute: number; squared: number } => {
  let [absolute, squared] = [0, 0]
  for (const flow of flows) {
    absolute += Math.abs(flow - mean)
    squared += (flow - mean) ** 2
  }
  return { absolute, squared }
}

/**
 * All measures of how even flows >= 0 are; undefined where there is nothing to compare: no flow at all, or none but 0.
 * `christiansen` and `statistical` fall below 0 where the flows differ by more than their mean.
 */
export const evennessOf = (flows: ArrayLike<number>): Evenness | undefined => {
  const rising = Float64Array.from(flows).sort()
  const count = rising.length
  const mean = rising.reduce((sum, flow) => sum + flow, 0) / count
  const [least = 0, most = 0] = [rising[0], rising[count - 1]]
  if (!(mean > 0)) return undefined
  const { absolute, squared } = deviations(rising, mean)
  const variation = count > 1 ? Math.sqrt(squared / (count - 1)) / mean : 0
  return {
    mean,
    leastShare: least / mean,
    mostShare: most / mean,
    spread: (most - least) / most,
    variation,
    lowQuarter: lowestQuarter(rising) / mean,
    christiansen: 1 - absolute / (count * mean),
    statistical: 1 - variation,
  }
}

/**
 * Emission uniformity of a design, as a share: the hydraulic least/mean and the scatter of the tubes themselves, each
 * of `tubesPerTower` making up for others (Keller and Karmeli, Trans. ASAE 17, 1974; ASAE EP405.1).
 */
export const designUniformity = (leastShare: number, tubeVariation: number, tubesPerTower = 1): number =>
  leastShare * Math.max(0, 1 - (1.27 * tubeVariation) / Math.sqrt(tubesPerTower))

/** A class of a published scale, by the shares between which it lies. */
interface Grade {
  readonly name: string
  readonly best: number
  readonly worst: number
}

/** A published scale, best class first. Between two classes a scale may leave a gap. */
export interface Scale {
  /** Whose scale it is, and for what. */
  readonly source: string
  /** True where it was written down from memory and not read in the publication. */
  readonly isFromMemory: boolean
  readonly grades: readonly Grade[]
}

const grade = (name: string, best: number, worst: number): Grade => ({ name, best, worst })

/** For `lowQuarter` as measured in the field. */
export const FIELD_SCALE: Scale = {
  source: 'Merriam and Keller 1978, field emission uniformity',
  isFromMemory: true,
  grades: [
    grade('excellent', 1, 0.9),
    grade('good', 0.9, 0.8),
    grade('fair', 0.8, 0.7),
    grade('poor', 0.7, 0),
  ],
}

/** For `statistical`. */
export const STATISTICAL_SCALE: Scale = {
  source: 'ASAE EP458, statistical uniformity',
  isFromMemory: true,
  grades: [
    grade('excellent', 1, 0.95),
    grade('good', 0.9, 0.85),
    grade('fair', 0.8, 0.75),
    grade('poor', 0.7, 0.65),
    grade('unacceptable', 0.6, -Infinity),
  ],
}

/** For the variation of new tubes among each other, at one head. */
export const TUBE_SCALE: Scale = {
  source: 'ASAE EP405.1, variation of point-source emitters',
  isFromMemory: true,
  grades: [
    grade('excellent', 0, 0.05),
    grade('average', 0.05, 0.07),
    grade('marginal', 0.07, 0.11),
    grade('poor', 0.11, 0.15),
    grade('unacceptable', 0.15, Infinity),
  ],
}

/** For `spread`. */
export const SPREAD_SCALE: Scale = {
  source: 'Wu and Gitlin 1979, flow variation',
  isFromMemory: true,
  grades: [grade('good', 0, 0.1), grade('acceptable', 0.1, 0.2), grade('not acceptable', 0.2, 1)],
}

const isWithin = ({ best, worst }: Grade, share: number): boolean =>
  share >= Math.min(best, worst) && share <= Math.max(best, worst)

/** A grade that the share has not reached, going from the best one down. */
const isBeyond = ({ best, worst }: Grade, share: number): boolean =>
  best > worst ? share > best : share < best

/**
 * The class of a share on a scale: the better one on an edge, "good to excellent" in a gap between two, the nearest one
 * off either end.
 */
export const classOn = ({ grades }: Scale, share: number): string => {
  const index = grades.findIndex((each) => isWithin(each, share) || isBeyond(each, share))
  const found = grades[index] ?? grades[grades.length - 1]
  const before = grades[index - 1]
  if (found === undefined) return ''
  return before === undefined || isWithin(found, share) ? found.name : `${found.name} to ${before.name}`
}
