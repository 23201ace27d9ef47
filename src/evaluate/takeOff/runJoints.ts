import { stockOf } from '../../catalogue/stock'
import { placeAlong, pathLength } from '../../geometry/path'
import type { Built, Fitting, Tube } from '../../model/built'
import { rememberEach } from '../../model/remember'
import { onPipe } from '../../parts/onPipe'

/** What is over a coil by less than this is rounding, mm. */
const ROUNDING_MM = 1e-3

/** A microtube is never joined: it is cut off the next coil where this one ends. */
const isJoined = ({ role }: Tube): boolean => role !== 'microtube'

const couplingsOf = (tube: Tube): Fitting[] => {
  const { form, lengthsMm } = stockOf(tube.stock)
  const coilMm = lengthsMm.at(-1) ?? Infinity
  const joints = Math.ceil((tube.lengthMm - ROUNDING_MM) / coilMm) - 1
  if (form !== 'coil' || joints <= 0 || !isJoined(tube)) return []
  // The pipe is cut with slack: as far along the drawn path as along the pipe.
  const drawn = pathLength(tube.path) / tube.lengthMm
  return Array.from({ length: joints }, (_, joint) =>
    placeAlong(tube.path, (joint + 1) * coilMm * drawn),
  ).flatMap((at) => onPipe('coupling', tube.stock, at))
}

/** Couplings, with their clamps, where one coil of pipe ends and the next begins. Places as those of the part's tubes. */
export const runJoints = rememberEach<Built, null, readonly Fitting[]>(({ tubes }) =>
  tubes.flatMap(couplingsOf),
)
