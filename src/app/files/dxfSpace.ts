import { isShape, markReach } from '../../drawing/markReach'
import type { Page, PageItem, Placement } from '../../drawing/page'
import type { Point } from '../../geometry/point'
import { toInches, type Units } from '../../units/length'

/** Where things of a page lie in a CAD drawing. */
export interface DxfSpace {
  readonly units: Units
  /** Units of the drawing a mm of paper. */
  readonly perPaperMm: number
  readonly at: (onPaper: Point) => Point
  /** How the page's main item is placed; what is placed at its scale is drawn at its true size. */
  readonly main: Placement
}

/** The way to the paper and back leaves noise behind a millionth of a unit, which no CAD should have to show. */
export const settled = (value: number): number => Math.round(value * 1e6) / 1e6 + 0

/** How much paper an item's marks cover, mm². */
const paperOf = ({ marks, placement: { scale } }: PageItem): number => {
  let [x0, y0, x1, y1] = [Infinity, Infinity, -Infinity, -Infinity]
  for (const mark of marks) {
    if (!isShape(mark)) continue
    const reach = markReach(mark)
    x0 = Math.min(x0, reach.x0)
    y0 = Math.min(y0, reach.y0)
    x1 = Math.max(x1, reach.x1)
    y1 = Math.max(y1, reach.y1)
  }
  return x1 > x0 ? (x1 - x0) * (y1 - y0) * scale * scale : 0
}

/** True for what is drawn to a scale, not only set on the paper. */
const isScaled = ({ placement, ratio }: PageItem): boolean => placement.scale !== 1 || ratio !== undefined

/** How a drawing to scale lies on the paper, also one that is placed in mm of paper. */
const scaledPlacement = ({ placement, ratio }: PageItem): Placement =>
  ratio === undefined ? placement : { ...placement, scale: placement.scale / ratio }

/** Whether an item has its true size in a space. */
export const isTrueIn = (item: PageItem, { main }: DxfSpace): boolean =>
  isScaled(item) && scaledPlacement(item).scale === main.scale

/** The largest drawing of a page; undefined where nothing on it is to a scale. */
export const mainItem = ({ items }: Pick<Page, 'items'>): PageItem | undefined =>
  items
    .filter(isScaled)
    .map((item) => ({ item, mm2: paperOf(item) }))
    .reduce<{ item: PageItem; mm2: number } | undefined>(
      (most, each) => (most && most.mm2 >= each.mm2 ? most : each),
      undefined,
    )?.item

/**
 * The space in which the page's main item has its true size and its own coordinates: of a plan those of the floor. The rest of the
 * page lies round it, scaled with it. A page without a drawing to scale keeps the size of its paper.
 */
export const spaceOf = (page: Page, units: Units): DxfSpace => {
  const item = mainItem(page)
  const main = item ? scaledPlacement(item) : { scale: 1, xMm: 0, yMm: 0 }
  const inUnit = (mm: number): number => (units === 'metric' ? mm : toInches(mm))
  return {
    units,
    main,
    perPaperMm: inUnit(1 / main.scale),
    at: ({ x, y }) => ({
      x: settled(inUnit((x - main.xMm) / main.scale)),
      y: settled(inUnit((y - main.yMm) / main.scale)),
    }),
  }
}
