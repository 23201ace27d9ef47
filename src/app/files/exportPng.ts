import type { Page } from '../../drawing/page'
import { withResolution } from '../../drawing/png'
import { paintPage, rasterSize } from '../../drawing/raster'
import { paperTheme } from '../../drawing/theme'

export type PngExport =
  { readonly ok: true; readonly blob: Blob } | { readonly ok: false; readonly sentence: string }

const PNG = 'image/png'

/** Enough that a 2 mm letter is crisp on paper. */
export const PAPER_DPI = 200

const NO_PICTURE =
  'This browser could not make the picture; it may be short of memory. Take fewer dots an inch or a smaller paper.'

type Sheet = OffscreenCanvas | HTMLCanvasElement

const sheetOf = (widthPx: number, heightPx: number): Sheet => {
  if (typeof OffscreenCanvas !== 'undefined') return new OffscreenCanvas(widthPx, heightPx)
  const canvas = document.createElement('canvas')
  canvas.width = widthPx
  canvas.height = heightPx
  return canvas
}

const contextOf = (sheet: Sheet) =>
  // The union of the two getContext methods can't be called without telling them apart.
  sheet instanceof HTMLCanvasElement ? sheet.getContext('2d') : sheet.getContext('2d')

const encode = async (sheet: Sheet): Promise<Blob | null> =>
  sheet instanceof HTMLCanvasElement
    ? new Promise((resolve) => sheet.toBlob(resolve, PNG))
    : sheet.convertToBlob({ type: PNG })

/** The encoded picture; null where the browser gives none, which one kind of canvas says by null and the other by rejecting. */
const pictureOf = async (sheet: Sheet): Promise<Blob | null> => {
  try {
    return await encode(sheet)
  } catch {
    return null
  }
}

/** A page as a PNG that knows its own size on paper, or one sentence that says why there is none. */
export const exportPng = async (page: Page, dpi: number): Promise<PngExport> => {
  const size = rasterSize(page, dpi)
  if (!size.ok) return size
  // A font that no element of the page has used yet is not loaded by `fonts.ready`.
  await document.fonts.load(`16px ${paperTheme.font}`)
  const sheet = sheetOf(size.widthPx, size.heightPx)
  const ctx = contextOf(sheet)
  if (ctx === null) return { ok: false, sentence: NO_PICTURE }
  paintPage(ctx, page, dpi, paperTheme)
  const picture = await pictureOf(sheet)
  if (picture === null) return { ok: false, sentence: NO_PICTURE }
  const png = withResolution(new Uint8Array(await picture.arrayBuffer()), dpi)
  return { ok: true, blob: new Blob([png], { type: PNG }) }
}
