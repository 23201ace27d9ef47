import type { Box } from '../geometry/box'
import type { Mark } from '../model/drawing'
import type { Units } from '../units/length'
import { inTrench } from '../units/precision'
import { writerFor } from '../units/writer'
import type { OrientedPaper } from './paper'
import type { Theme } from './theme'
import type { View } from './view'

/** Where floor lies on the paper: paper = floor * scale + shift, both with y growing up from the lower left corner. */
export interface Placement {
  /** mm of paper a mm of floor; 1 for what is drawn in mm of paper. */
  readonly scale: number
  readonly xMm: number
  readonly yMm: number
}

/** Drawn straight in mm of paper. */
export const onPaper: Placement = { scale: 1, xMm: 0, yMm: 0 }

export interface PageItem {
  readonly marks: readonly Mark[]
  readonly placement: Placement
  /** Nothing is drawn outside it, mm of paper. */
  readonly clip?: Box
  /** Its words stand on bare paper and have no rim to keep them clear of lines: a printed file is a sixth as large without. */
  readonly isPlain?: true
  /** Of a drawing to scale that is placed in mm of paper: how many mm one of them stands for. */
  readonly ratio?: number
}

/** One sheet of paper, ready for any writer. Items are written in their order. */
export interface Page {
  readonly title: string
  readonly paper: OrientedPaper
  readonly units: Units
  readonly items: readonly PageItem[]
}

/** How one item of a page is written at `pxPerPaperMm`. The crew reads aisles off a tape, so dimensions are never in feet. */
export const itemView = (item: PageItem, page: Page, theme: Theme, pxPerPaperMm: number): View => {
  const writer = writerFor(page.units, inTrench)
  return {
    pxPerMm: item.placement.scale * pxPerPaperMm,
    pxPerPaperMm,
    on: 'paper',
    theme,
    writer: { length: writer.onTape },
  }
}
