/** An opening, as a share of the full one, and the loss there in velocity heads of the valve's nominal bore. */
interface Setting {
  readonly opening: number
  readonly lossK: number
}

/** The settings of one kind of valve, from the most shut to the fully open one. */
export type Characteristic = readonly [Setting, Setting, ...Setting[]]

/**
 * Gate valve, the trim valve of a zone. Perry's Chemical Engineers' Handbook, table of friction losses of fittings and
 * valves: open 0.17, 3/4 open 0.9, 1/2 open 4.5, 1/4 open 24.
 *
 * The other set in print (tables of minor losses after White, Fluid Mechanics: open 0.15, 1/4 shut 0.26, 1/2 shut 2.1,
 * 3/4 shut 17) is lower by a third at a quarter open and to a third of it at three quarters: no turn of a handle gives
 * a loss that one could rely on. Set a zone by its sight tube, and take the turns as where to begin.
 */
export const GATE: Characteristic = [
  { opening: 0.25, lossK: 24 },
  { opening: 0.5, lossK: 4.5 },
  { opening: 0.75, lossK: 0.9 },
  { opening: 1, lossK: 0.17 },
]

/** Ball valve (tables of minor losses after White, Fluid Mechanics): 2/3 shut 200, 1/3 shut 5.5, open 0.05. */
export const BALL: Characteristic = [
  { opening: 1 / 3, lossK: 200 },
  { opening: 2 / 3, lossK: 5.5 },
  { opening: 1, lossK: 0.05 },
]

/** The stretch between two settings, told by where the answer lies; the last one where none tells. */
const stretchWhere = (
  [first, second, ...others]: Characteristic,
  isUpTo: (upper: Setting) => boolean,
): readonly [Setting, Setting] => {
  let stretch: readonly [Setting, Setting] = [first, second]
  for (const next of others) {
    if (isUpTo(stretch[1])) return stretch
    stretch = [stretch[1], next]
  }
  return stretch
}

/** How much ln K changes with the opening along a stretch. */
const steepness = ([low, high]: readonly [Setting, Setting]): number =>
  Math.log(high.lossK / low.lossK) / (high.opening - low.opening)

/**
 * Loss of a valve at an opening, in velocity heads: straight in ln K between the published settings, as both sets nearly
 * are. Nearer to shut than any of them it grows as the square of the narrowing gap, and is Infinity at 0.
 */
export const lossAtOpening = (opening: number, valve: Characteristic = GATE): number => {
  const [least] = valve
  if (opening <= 0) return Infinity
  if (opening <= least.opening) return least.lossK * (least.opening / opening) ** 2
  const stretch = stretchWhere(valve, (upper) => opening <= upper.opening)
  const [low] = stretch
  return low.lossK * Math.exp(steepness(stretch) * (Math.min(opening, 1) - low.opening))
}

/** Opening, as a share of the full one, at which a valve has a loss; 1 where even the open valve loses more. */
export const openingForLoss = (lossK: number, valve: Characteristic = GATE): number => {
  const [least] = valve
  if (lossK >= least.lossK) return least.opening * Math.sqrt(least.lossK / lossK)
  const stretch = stretchWhere(valve, (upper) => lossK >= upper.lossK)
  const [low] = stretch
  if (lossK <= 0) return 1
  return Math.min(1, low.opening + Math.log(lossK / low.lossK) / steepness(stretch))
}

/**
 * Loss of an insert fitting in velocity heads of the pipe, from its bore as a share of the pipe's: a sudden narrowing
 * 0.5 (1 - b^2) and a sudden widening (1 - b^2)^2 on the velocity in the fitting (Borda-Carnot; any text on pipe flow).
 */
export const insertLossK = (boreShare: number): number => {
  const areaShare = boreShare * boreShare
  const step = 1 - areaShare
  return (0.5 * step + step * step) / (areaShare * areaShare)
}
