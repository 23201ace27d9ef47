import { spreadSizes } from '../../../canvas/spread'
import type { PitFacts } from '../../../model/pitFacts'
import { DRAIN_BACK_UNDER_OVERFLOW_MM } from '../../../model/pitFacts'
import type { PitReturn } from '../../../model/returns'
import type { PlotSize } from '../chart/plot'

/** Room round the pit, px: words of its volumes, labels of its levels, earth over and under it. */
const PICTURE_ROOM = { left: 128, right: 140, top: 26, bottom: 22 }

/** A pit across its shorter side, to scale in both directions. All px of the picture. */
export interface PitPicture {
  readonly pxPerMm: number
  readonly yOf: (levelMm: number) => number
  /** Its two walls at a level. */
  readonly wallsAt: (levelMm: number) => readonly [left: number, right: number]
}

/** How wide the pit is across its shorter side at its bottom and at its rim, mm. */
export const acrossMm = ({ basin }: PitFacts): { readonly bottomMm: number; readonly rimMm: number } => {
  if (basin.shape === 'round') return { bottomMm: basin.diameterMm, rimMm: basin.diameterMm }
  if (basin.shape === 'box') {
    const widthMm = Math.min(basin.lengthMm, basin.widthMm)
    return { bottomMm: widthMm, rimMm: widthMm }
  }
  return basin.topLengthMm < basin.topWidthMm
    ? { bottomMm: basin.bottomLengthMm, rimMm: basin.topLengthMm }
    : { bottomMm: basin.bottomWidthMm, rimMm: basin.topWidthMm }
}

/** The largest picture of a pit that has room. */
export const pitPicture = (pit: PitFacts, { width, height }: PlotSize): PitPicture => {
  const { bottomMm, rimMm } = acrossMm(pit)
  const deepMm = Math.max(pit.rimMm - pit.bottomMm, 1)
  const roomX = Math.max(60, width - PICTURE_ROOM.left - PICTURE_ROOM.right)
  const roomY = Math.max(60, height - PICTURE_ROOM.top - PICTURE_ROOM.bottom)
  const pxPerMm = Math.min(roomX / Math.max(bottomMm, rimMm), roomY / deepMm)
  const middle = PICTURE_ROOM.left + roomX / 2
  const top = PICTURE_ROOM.top + (roomY - deepMm * pxPerMm) / 2
  return {
    pxPerMm,
    yOf: (levelMm) => top + (pit.rimMm - levelMm) * pxPerMm,
    wallsAt: (levelMm) => {
      const share = Math.min(Math.max((levelMm - pit.bottomMm) / deepMm, 0), 1)
      const half = ((bottomMm + share * (rimMm - bottomMm)) / 2) * pxPerMm
      return [middle - half, middle + half]
    },
  }
}

/** One of the volumes that a pit's depth is spent on, between two levels, mm. */
export interface PitBand {
  readonly name: string
  readonly fromMm: number
  readonly toMm: number
  readonly litres: number
  /** Where its words stand, px down the picture. */
  readonly at: number
}

/** Two lines of words, px high. */
const WORDS_PX = 32

/** How the depth of a pit is spent, from the rim down; a margin under the overflow counts as neither room nor freeboard. */
export const pitBands = (
  pit: PitFacts,
  spent: Pick<PitReturn, 'deadL' | 'swingL' | 'roomL' | 'freeboardL'>,
  { yOf }: PitPicture,
  height: number,
): readonly PitBand[] => {
  const bands = [
    { name: 'Freeboard', fromMm: pit.rimMm, toMm: pit.overflowMm, litres: spent.freeboardL },
    {
      name: 'Room',
      fromMm: pit.overflowMm - DRAIN_BACK_UNDER_OVERFLOW_MM,
      toMm: pit.runningMm,
      litres: spent.roomL,
    },
    { name: 'Swing', fromMm: pit.runningMm, toMm: pit.pumpOffMm, litres: spent.swingL },
    { name: 'Dead', fromMm: pit.pumpOffMm, toMm: pit.bottomMm, litres: spent.deadL },
  ]
  const middles = bands.map(({ fromMm, toMm }) => yOf((fromMm + toMm) / 2))
  const places = spreadSizes(
    middles,
    bands.map(() => WORDS_PX),
    4,
    height - 4,
  )
  return bands.map((band, index) => ({ ...band, at: places[index] ?? 0 }))
}
