import { timberOf, type Timber } from '../../catalogue/timber'
import { type TimberValues, valuesOf } from '../../catalogue/timberFactors'
import type { Settings } from '../../layout/settings'
import { type Quantity, stateWords, type Term } from '../../model/finding'
import type { Screen, ScreenId } from '../../model/strength'
import type { Riser } from './risersBuilt'

/** The wood of a bay as a board of it stands. */
export interface Wood {
  readonly timber: Timber
  readonly isWet: boolean
  readonly values: TimberValues
}

/** By the bay's species and whether its lumber stands wet; `wideMm` is the wider side of the board. */
export const woodOf = ({ species, woodIs }: Pick<Settings, 'species' | 'woodIs'>, wideMm: number): Wood => {
  const timber = timberOf(species)
  const isWet = woodIs === 'wet'
  return { timber, isWet, values: valuesOf(timber, wideMm, isWet) }
}

export const widerSide = ({ alongMm, acrossMm }: Riser): number => Math.max(alongMm, acrossMm)

export interface Screened {
  readonly used: number
  readonly measured: Quantity
  readonly limit: Quantity
  readonly terms: readonly Term[]
}

/** Within its limit or over it: that wood or ground bore a load once proves nothing of the years. */
export const stateOf = (used: number): Screen['state'] => (used <= 1 ? 'Within' : 'Too long')

export const riserScreen = (id: ScreenId, { mark, at }: Riser, screened: Screened): Screen => ({
  id,
  mark,
  at,
  under: 'full',
  state: stateOf(screened.used),
  ...screened,
})

const rankOf = ({ state }: Screen): number => stateWords.strength.indexOf(state)

const isWorse = (a: Screen, b: Screen): boolean =>
  rankOf(a) === rankOf(b) ? a.used > b.used : rankOf(a) > rankOf(b)

/** The worst by its state, then by how much of its limit is used; of several alike the first along the row. */
export const worstOf = (screens: readonly Screen[]): readonly Screen[] => {
  const [first, ...others] = screens
  return first ? [others.reduce((worst, screen) => (isWorse(screen, worst) ? screen : worst), first)] : []
}
