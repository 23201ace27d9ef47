import type { PaperFamily, PaperName } from '../drawing/paper'
import type { Layout } from '../layout/schema'
import type { Units } from '../units/length'
import { paperFor } from './pagesOf'
import type { Sheet, SheetOptions } from './sheet'

/** What holds for one making of papers, over what the builder has chosen for the bay. */
export interface Asked {
  readonly dateText: string
  readonly issue: string
  readonly units?: Units | undefined
  readonly paper?: PaperName | undefined
}

/** Which papers a bay is printed on: as the builder has chosen, else by the bay's own units. */
export const familyOf = ({ papers, settings }: Pick<Layout, 'papers' | 'settings'>): PaperFamily =>
  papers.family ?? (settings.units === 'metric' ? 'metric' : 'inch')

/** How a sheet is made for a bay: what is asked for now, else what is chosen for this sheet, else what the bay and the sheet have. */
export const chosenOptions = (
  sheet: Pick<Sheet, 'id' | 'size'>,
  layout: Pick<Layout, 'papers' | 'settings'>,
  { dateText, issue, units, paper }: Asked,
): SheetOptions => {
  const chosen = layout.papers.choices.find((choice) => choice.sheet === sheet.id)
  return {
    dateText,
    issue,
    units: units ?? chosen?.units ?? layout.settings.units,
    paper: paper ?? chosen?.paper ?? paperFor(sheet, familyOf(layout)),
    orientation: 'auto',
    scale: 'fit',
  }
}
