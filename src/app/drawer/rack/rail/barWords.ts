import { allowedMpa } from '../../../../evaluate/loads/allowed'
import type { Settings } from '../../../../layout/settings'
import type { BarScreen } from '../../../../model/strength'
import { inches } from '../../../../units/length'
import type { Writer } from '../../../../units/writer'
import { loadWords } from '../screenWords'
import { stockWords } from './railWords'

/** Rails so near their best place are there: what a tape and a crew set them to. */
const AT_BEST_MM = inches(1 / 2)

const spacingMm = ({ railV }: BarScreen): number => Math.max(...railV) - Math.min(...railV)

const bestWords = (bar: BarScreen, { onTape }: Writer): string => {
  const [apartMm, bestMm] = [spacingMm(bar), bar.bestSpacingMm]
  const apart = `Its rails are ${onTape(apartMm)} apart`
  if (bestMm === undefined)
    return `${apart}; no other spacing makes what hangs past them and between them alike.`
  return Math.abs(bestMm - apartMm) < AT_BEST_MM
    ? `${apart}, where it bends alike over them and between them.`
    : `${apart}; it would bend alike over them and between them at ${onTape(bestMm)}, whatever is harvested.`
}

/** The worst hanger bar of a row over its two rails, and where the rails would spare it most. */
export const barWords = (bar: BarScreen, settings: Settings, write: Writer): readonly string[] => [
  `${stockWords(bar.stock)}, ${write.length(bar.u)} along, with ${loadWords[bar.under]}: ${write.moment(Math.abs(bar.momentNmm))}, ${write.stress(bar.stressMpa)} where ${write.stress(allowedMpa(settings))} is allowed, sag ${write.exact().onTape(Math.abs(bar.sagMm))}.`,
  bestWords(bar, write),
]
