import { DxfWriter, Units as DxfUnits } from '@tarikjabiri/dxf'
import { DIMENSION_LETTER_MM, DIMENSION_TICK_MM } from '../../drawing/dimension'
import { HALF_CAPITAL } from '../../drawing/lettered'
import type { Page } from '../../drawing/page'
import { paperTheme } from '../../drawing/theme'
import type { Pen } from '../../model/drawing'
import type { Units } from '../../units/length'
import { colours, layerOfPen, SHEET_LAYER } from './dxfLayers'
import { addItem, DIMENSION_STYLE } from './dxfMarks'
import { type DxfSpace, mainItem, spaceOf } from './dxfSpace'

const CONTINUOUS = 'Continuous'

/** Dashes are strokes and gaps in turn; in CAD a gap is less than nothing. The pattern keeps its size on the paper. */
const lineTypeOf = (dxf: DxfWriter, layer: string, dashMm: readonly number[], space: DxfSpace): string => {
  if (dashMm.length === 0) return CONTINUOUS
  const lengths = dashMm.map((mm, index) => mm * space.perPaperMm * (index % 2 === 0 ? 1 : -1))
  dxf.addLType(layer, `ISO 128, as printed: ${dashMm.join(' ')} mm`, lengths)
  return layer
}

const addLayers = (dxf: DxfWriter, space: DxfSpace): void => {
  for (const [pen, layer] of Object.entries(layerOfPen)) {
    const { dashMm } = paperTheme.pens[pen as Exclude<Pen, 'none'>] // entries of `layerOfPen`, so its keys
    dxf.addLayer(layer, colours[layer] ?? 7, lineTypeOf(dxf, layer, dashMm, space))
  }
  dxf.addLayer(SHEET_LAYER, colours[SHEET_LAYER] ?? 8, CONTINUOUS)
}

/** How dimensions look that a program draws anew: ticks and letters as printed. */
const addDimensionStyle = (dxf: DxfWriter, { perPaperMm, units }: DxfSpace): void => {
  const style = dxf.addDimStyle(DIMENSION_STYLE)
  style.DIMTXT = DIMENSION_LETTER_MM * 2 * HALF_CAPITAL * perPaperMm
  style.DIMTSZ = (DIMENSION_TICK_MM / 2) * perPaperMm
  style.DIMASZ = DIMENSION_TICK_MM * perPaperMm
  style.DIMEXO = (DIMENSION_TICK_MM / 2) * perPaperMm
  style.DIMEXE = (DIMENSION_TICK_MM / 2) * perPaperMm
  style.DIMGAP = (DIMENSION_TICK_MM / 4) * perPaperMm
  style.DIMTAD = 1
  style.DIMTIH = 0
  style.DIMTOH = 0
  style.DIMDEC = units === 'metric' ? 0 : 3
  style.DIMTXSTY = dxf.document.styleStandard.handle
}

/** Letters about as wide as those of the page, which every machine has or has something like. */
const FONT = 'arial.ttf'

/** Whether there is something on a page to be measured in CAD. */
export const isDrawing = (page: Page): boolean => mainItem(page) !== undefined

/**
 * A page as a DXF drawing (AutoCAD 2007 text form), in inches or mm. Its main drawing has its true size and its own coordinates: what is
 * measured in it is the real distance. Layers are named by what their lines are of; the rest of the page lies round it on the layer SHEET.
 * The same page always gives the same text.
 */
export const pageDxf = (page: Page, units: Units): string => {
  const dxf = new DxfWriter()
  const space = spaceOf(page, units)
  dxf.document.styleStandard.fontFileName = FONT
  dxf.setUnits(units === 'metric' ? DxfUnits.Millimeters : DxfUnits.Inches)
  dxf.setVariable('$MEASUREMENT', { 70: units === 'metric' ? 1 : 0 })
  addLayers(dxf, space)
  addDimensionStyle(dxf, space)
  for (const item of page.items) addItem(dxf, item, page, space)
  const low = space.at({ x: 0, y: 0 })
  const high = space.at({ x: page.paper.widthMm, y: page.paper.heightMm })
  dxf.setVariable('$EXTMIN', { 10: low.x, 20: low.y, 30: 0 })
  dxf.setVariable('$EXTMAX', { 10: high.x, 20: high.y, 30: 0 })
  return dxf.stringify()
}
