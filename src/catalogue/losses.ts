import { finder } from './lookup'

/** What a fitting takes from the water, as a multiple of the velocity head v2/2g in its own bore. */
export interface FittingLoss {
  readonly key: string
  readonly lossK: number
  readonly source: string
}

/** Handbooks differ by as much as six to one for an elbow: a screening, to be calibrated by the sight tubes. */
const HANDBOOK = 'Table of minor loss coefficients, threaded fittings, as engineering references print it'

const loss = (key: string, lossK: number, source = HANDBOOK): FittingLoss => ({ key, lossK, source })

export const losses: readonly FittingLoss[] = [
  loss('union', 0.08),
  loss('elbow', 1.5),
  loss('tee-run', 0.9),
  loss('tee-branch', 2),
  loss('ball-valve', 0.05),
  loss('check-valve', 2),
  loss('foot-strainer', 2.5, 'From memory: a basket with a free area of several times the bore, clean'),
]

/** The loss of a key, such as `union` or `tee-run`. */
export const fittingLossOf: (key: string) => FittingLoss = finder('fitting loss', losses, (row) => row.key)

/** `fittingLossOf(key).lossK`, which is what sums are made of. */
export const lossKOf = (key: string): number => fittingLossOf(key).lossK
