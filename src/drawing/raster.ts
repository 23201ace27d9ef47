import { MM_PER_INCH } from '../units/length'
import { itemView, type Page, type PageItem } from './page'
import { paint, type CanvasLike } from './paint'
import type { Theme } from './theme'
import type { View } from './view'

/** Beyond these a browser's canvas is blank without saying so. Chromium and Firefox; found by trying. */
const LONGEST_SIDE_PX = 16_384
const LARGEST_AREA_PX = 268_435_456

export type RasterSize =
  | { readonly ok: true; readonly widthPx: number; readonly heightPx: number }
  | { readonly ok: false; readonly sentence: string }

/** Pixels that a page needs at a resolution, or a sentence where no canvas is that large. */
export const rasterSize = ({ paper }: Pick<Page, 'paper'>, dpi: number): RasterSize => {
  if (!(dpi > 0)) return { ok: false, sentence: `A picture of ${dpi} dots an inch can't be made.` }
  const widthPx = Math.round((paper.widthMm / MM_PER_INCH) * dpi)
  const heightPx = Math.round((paper.heightMm / MM_PER_INCH) * dpi)
  if (widthPx < 1 || heightPx < 1)
    return { ok: false, sentence: `At ${dpi} dots an inch nothing of ${paper.title} is left.` }
  if (Math.max(widthPx, heightPx) <= LONGEST_SIDE_PX && widthPx * heightPx <= LARGEST_AREA_PX)
    return { ok: true, widthPx, heightPx }
  const most = Math.floor((LONGEST_SIDE_PX / Math.max(paper.widthMm, paper.heightMm)) * MM_PER_INCH)
  return {
    ok: false,
    sentence:
      `${paper.title} at ${dpi} dots an inch is ${widthPx} x ${heightPx} pixels, more than this browser can draw. ` +
      `Take ${most} dots an inch or fewer, or a smaller paper.`,
  }
}

const paintItem = (ctx: CanvasLike, item: PageItem, view: View): void => {
  ctx.save()
  if (item.clip !== undefined) {
    ctx.beginPath()
    ctx.rect(item.clip.x0, item.clip.y0, item.clip.x1 - item.clip.x0, item.clip.y1 - item.clip.y0)
    ctx.clip()
  }
  ctx.translate(item.placement.xMm, item.placement.yMm)
  ctx.scale(item.placement.scale, item.placement.scale)
  paint(ctx, item.marks, view)
  ctx.restore()
}

/** Writes a whole page on a canvas of `rasterSize`. The canvas must not be scaled or moved beforehand. */
export const paintPage = (ctx: CanvasLike, page: Page, dpi: number, theme: Theme): void => {
  const pxPerPaperMm = dpi / MM_PER_INCH
  ctx.save()
  ctx.scale(pxPerPaperMm, pxPerPaperMm)
  ctx.beginPath()
  ctx.rect(0, 0, page.paper.widthMm, page.paper.heightMm)
  ctx.fillStyle = theme.sheet
  ctx.fill()
  // From here y grows up the paper, as it grows north on the floor.
  ctx.translate(0, page.paper.heightMm)
  ctx.scale(1, -1)
  for (const item of page.items) paintItem(ctx, item, itemView(item, page, theme, pxPerPaperMm))
  ctx.restore()
}
