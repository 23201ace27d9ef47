import type { PageItem } from '../drawing/page'
import { paragraph } from './block'
import { drawnMarks, type Flow } from './flow'
import type { PaperSizes } from './letterSizes'
import type { FigurePiece } from './piece'

const CAPTION_GAP_MM = 1.4
const GAP_MM = 4

/** The item moved over the paper with all that is said in mm of paper. */
const moved = (item: PageItem, x: number, y: number): PageItem => {
  const { scale, xMm, yMm } = item.placement
  const placement = { scale, xMm: xMm + x, yMm: yMm + y }
  if (item.clip === undefined) return { ...item, placement }
  const { x0, y0, x1, y1 } = item.clip
  return { ...item, placement, clip: { x0: x0 + x, y0: y0 + y, x1: x1 + x, y1: y1 + y } }
}

interface FigureRoom {
  readonly sizes: PaperSizes
  readonly widthMm: number
  readonly heightMm: number
}

/** A drawing over its caption, never parted. `takenMm` of the page are its headings'. */
export const figureFlow = (
  { caption, draw }: FigurePiece,
  { sizes, widthMm, heightMm }: FigureRoom,
  takenMm: number,
): Flow => {
  const captionMm = paragraph(`${caption}, ${'scale'.repeat(4)}`, widthMm, sizes.note).heightMm
  const drawn = draw({ widthMm, heightMm: heightMm - takenMm - captionMm - CAPTION_GAP_MM })
  const words = paragraph(`${caption}; ${drawn.scaleWords}.`, widthMm, sizes.note)
  const tallMm = drawn.heightMm + CAPTION_GAP_MM + words.heightMm
  return {
    gapMm: GAP_MM,
    scaleWords: drawn.scaleWords,
    take: (roomMm, isForced) =>
      tallMm > roomMm + 1e-6 && !isForced
        ? undefined
        : {
            heightMm: tallMm,
            draw: (left, top) => [
              ...drawn.items.map((item) => ({
                ...moved(item, left, top - drawn.heightMm),
                ...(drawn.ratio !== undefined && { ratio: drawn.ratio }),
              })),
              ...drawnMarks(words.draw(left, top - drawn.heightMm - CAPTION_GAP_MM)),
            ],
          },
  }
}
