import type { PaperFamily } from '../drawing/paper'
import type { Layout } from '../layout/schema'
import type { Units } from '../units/length'
import { paperFor } from './pagesOf'
import type { Sheet, SheetOptions } from './sheet'

/** What holds for a whole set of papers. */
export interface SetOptions {
  /** The builder's own units, for every sheet that has none of its own. */
  readonly units: Units
  readonly dateText: string
  readonly issue: string
}

/** The family of papers that a bay is printed on. */
export const familyOf = ({ papers }: Pick<Layout, 'papers'>, units: Units): PaperFamily =>
  papers.family ?? (units === 'metric' ? 'metric' : 'inch')

/** How one sheet of a set is printed: as it was chosen for that sheet, else as the set is. */
export const optionsFor = (
  sheet: Pick<Sheet, 'id' | 'size'>,
  layout: Pick<Layout, 'papers'>,
  set: SetOptions,
): SheetOptions => {
  const chosen = layout.papers.choices.find((choice) => choice.sheet === sheet.id)
  return {
    paper: chosen?.paper ?? paperFor(sheet, familyOf(layout, set.units)),
    orientation: 'auto',
    scale: 'fit',
    units: chosen?.units ?? set.units,
    dateText: set.dateText,
    issue: set.issue,
  }
}
