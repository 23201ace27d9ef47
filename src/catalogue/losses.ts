import { finder } from './lookup'

/** What a fitting takes from the water, as a multiple of the velocity head v2/2g in its own bore. */
interface FittingLoss {
  readonly key: string
  readonly lossK: number
  readonly source: string
}

/** Handbooks differ by as much as six to one for an elbow: a screening, to be calibrated by the sight tubes. */
const HANDBOOK = 'Table of minor loss coefficients, threaded fittings, as engineering references print it'

const loss = (key: string, lossK: number, source = HANDBOOK): FittingLoss => ({ key, lossK, source })

const losses: readonly FittingLoss[] = [
  loss('union', 0.08),
  loss('elbow', 1.5),
  loss('tee-run', 0.9),
  loss('tee-branch', 2),
  loss('ball-valve', 0.05),
  loss('check-valve', 2),
  loss('foot-strainer', 2.5, 'From memory: a basket with a free area of several times the bore, clean'),
]

const lossOf: (key: string) => FittingLoss = finder('fitting loss', losses, (row) => row.key)

/** The loss of a key, such as `union` or `tee-run`, in velocity heads of the fitting's bore. */
export const lossKOf = (key: string): number => lossOf(key).lossK
