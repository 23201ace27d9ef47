import { inches } from '../units/length'
import { polyOf, polys, type Poly } from './pipe'

/**
 * What joins poly pipe and drip tubing. Each comes in the sizes of each family, since neither takes the other's, and is
 * counted by a key such as `elbow-pe-3/4`.
 */
export interface PipeFitting {
  readonly noun: string
  readonly title: string
  /** Barbs that pipe is pushed on and clamped to. Common practice, no source. */
  readonly barbedEnds: number
}

const pipeFittings: readonly PipeFitting[] = [
  { noun: 'elbow', title: 'Elbow', barbedEnds: 2 },
  { noun: 'tee', title: 'Tee', barbedEnds: 3 },
  { noun: 'coupling', title: 'Coupling', barbedEnds: 2 },
  { noun: 'adapter', title: 'Adapter, barb to thread', barbedEnds: 1 },
  { noun: 'union', title: 'Union, threaded', barbedEnds: 0 },
  { noun: 'ball-valve', title: 'Ball valve, threaded', barbedEnds: 0 },
  { noun: 'trim-valve', title: 'Trim valve, threaded', barbedEnds: 0 },
  { noun: 'sight-tube-tee', title: 'Tee for a sight tube', barbedEnds: 3 },
  { noun: 'lateral-flush-cap', title: 'Lateral flush cap', barbedEnds: 1 },
  { noun: 'lateral-flush-valve', title: 'Lateral flush valve', barbedEnds: 1 },
  { noun: 'lateral-plug', title: 'Lateral end plug', barbedEnds: 1 },
  { noun: 'main-cap', title: 'Main end cap', barbedEnds: 1 },
  { noun: 'nipple', title: 'Nipple, threaded', barbedEnds: 0 },
  { noun: 'pipe-strap', title: 'Strap that hangs a main', barbedEnds: 0 },
  { noun: 'clamp', title: 'Worm clamp', barbedEnds: 0 },
]

const barbedEndsOf: ReadonlyMap<string, number> = new Map(
  pipeFittings.map(({ noun, barbedEnds }) => [noun, barbedEnds]),
)

/** Pipe that fittings are clamped into; a microtube only meets its barb. */
const clamped: readonly Poly[] = polys.filter(({ family }) => family !== 'microtube')

/** `3/4` of `pe-3/4`. */
const sizeOf = ({ key }: Poly): string => key.slice(key.indexOf('-') + 1)

/** No reducing coupling joins the two families: what does is put together by hand, and no shop has it. */
const FAMILY_ADAPTER = {
  key: 'family-adapter',
  noun: 'family-adapter',
  title: 'Adapter between poly pipe and drip tubing',
}

/** Key of what joins pipes of two stocks, whichever is the bigger; undefined where they are one. */
export const reducerKey = (a: string, b: string): string | undefined => {
  if (a === b) return undefined
  const [small, big] = [polyOf(a), polyOf(b)].toSorted((one, other) => one.idMm - other.idMm)
  if (!small || !big || small.family !== big.family) return FAMILY_ADAPTER.key
  return `reducing-coupling-${big.key}-to-${sizeOf(small)}`
}

const reducers = clamped.flatMap((big) =>
  clamped
    .filter(({ family, idMm }) => family === big.family && idMm < big.idMm)
    .map((small) => ({
      key: `reducing-coupling-${big.key}-to-${sizeOf(small)}`,
      noun: 'reducing-coupling',
      title: `Reducing coupling, ${big.title} to ${sizeOf(small)} in`,
    })),
)

/** Key of the saddle on a main that gives a smaller pipe its barb; undefined for a pipe that is as big as the main. */
export const saddleKey = (main: string, branch: string): string | undefined =>
  polyOf(branch).idMm < polyOf(main).idMm ? `saddle-${main}-to-${branch}` : undefined

/** No main is thinner. */
const LEAST_MAIN_MM = inches(1)

const saddles = clamped
  .filter(({ family, idMm }) => family === 'poly-pipe' && idMm >= LEAST_MAIN_MM)
  .flatMap((main) =>
    clamped
      .filter(({ idMm }) => idMm < main.idMm)
      .map((branch) => ({
        key: `saddle-${main.key}-to-${branch.key}`,
        noun: 'saddle',
        title: `Saddle, ${main.title}, with a barb for ${branch.title}`,
      })),
  )

/** Key, noun and title of every fitting for pipe in every size. */
export const sizedFittings: readonly {
  readonly key: string
  readonly noun: string
  readonly title: string
}[] = [
  ...pipeFittings.flatMap(({ noun, title }) =>
    clamped.map((pipe) => ({ key: `${noun}-${pipe.key}`, noun, title: `${title}, ${pipe.title}` })),
  ),
  ...reducers,
  ...saddles,
  FAMILY_ADAPTER,
]

/** From this bore on, one clamp does not hold alone. */
const WIDE_MM = inches(1.25)

/**
 * Clamps on one barbed end: two, screw heads opposite, on 1-1/4 in pipe and over, and on any that is buried or stands between
 * pump and filter; else one. Source: a pipe maker's guide to joining polyethylene pipe asks for two on insert fittings; one
 * on small pipe above ground is common practice.
 */
export const clampsAnEnd = (pipe: string, isBuried = false): number =>
  isBuried || polyOf(pipe).idMm >= WIDE_MM ? 2 : 1

/** Clamps of a fitting such as an `elbow` on pipe of a stock. */
export const clampsOf = (noun: string, pipe: string, isBuried = false): number =>
  (barbedEndsOf.get(noun) ?? 0) * clampsAnEnd(pipe, isBuried)
