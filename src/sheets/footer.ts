import { MARGIN_MM, type OrientedPaper } from '../drawing/paper'
import type { Evaluation } from '../evaluate/evaluation'
import type { Units } from '../units/length'
import { gap, heading, paragraph, stacked, type Block } from './block'
import { cautions, FOOTER } from './cautions'
import { LETTERS } from './ink'

const INSET_MM = 3

/**
 * Words of caution stand in the column of an upright sheet, which is long, and across the foot of one that lies, whose
 * column is short.
 */
const isInColumn = ({ orientation }: OrientedPaper): boolean => orientation === 'portrait'

/** What stands across the foot of a sheet. */
export const footerBlock = (evaluation: Evaluation, paper: OrientedPaper, units: Units): Block => {
  const widthMm = paper.widthMm - 2 * (MARGIN_MM + INSET_MM)
  const minds = isInColumn(paper) ? [] : [cautions(evaluation, units).join(' ')]
  return stacked([
    gap(INSET_MM / 2),
    ...minds.map((text) => paragraph(text, widthMm, LETTERS.small)),
    paragraph(FOOTER, widthMm),
    gap(INSET_MM / 2),
  ])
}

/** The words of caution for the column, where they stand there. */
export const cautionBlock = (
  evaluation: Evaluation,
  paper: OrientedPaper,
  units: Units,
  widthMm: number,
): Block => {
  const words = isInColumn(paper) ? cautions(evaluation, units) : []
  if (words.length === 0) return gap(0)
  return stacked([
    heading('Mind', widthMm),
    ...words.map((text) => stacked([paragraph(text, widthMm, LETTERS.small), gap(0.8)])),
    gap(2),
  ])
}
