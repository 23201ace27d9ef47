import { orient, papers, type PaperFamily, type PaperName } from '../drawing/paper'
import { onPaper, type Page } from '../drawing/page'
import { lettered, LETTERS } from './ink'
import type { PlanOnPaper, Sheet, SheetOptions, SheetSize } from './sheet'

const sizes: Readonly<Record<PaperFamily, Readonly<Record<SheetSize, PaperName>>>> = {
  inch: { small: 'letter', large: 'tabloid', half: 'half-letter', tag: '4x6' },
  metric: { small: 'A4', large: 'A3', half: 'A5', tag: 'A6' },
}

/** The paper that a sheet is made for, of one family. */
export const paperFor = ({ size }: Pick<Sheet, 'size'>, family: PaperFamily): PaperName => sizes[family][size]

/** Every page of a sheet; none where this plan needs no such sheet. */
export const pagesOf = (sheet: Sheet, plan: PlanOnPaper, options: SheetOptions): readonly Page[] => {
  if (sheet.pages) return sheet.pages(plan, options)
  if (sheet.pieces(plan, options).length === 0) return []
  const paper = orient(papers[options.paper], options.orientation === 'landscape' ? 'landscape' : 'portrait')
  const title = lettered(`${sheet.title} (${sheet.code})`, { x: 15, y: paper.heightMm - 20 }, LETTERS.title)
  return [
    {
      title: `${plan.now.layout.title}: ${sheet.title}, issue ${options.issue}`,
      paper,
      units: options.units,
      items: [{ marks: [title], placement: onPaper }],
    },
  ]
}
