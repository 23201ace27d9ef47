import type { Page } from '../drawing/page'
import type { Orientation, PaperName } from '../drawing/paper'
import type { Judged } from '../evaluate/evaluation'
import type { Units } from '../units/length'
import type { Piece } from './piece'
import type { SheetState } from './sheetState'

/** What the person who prints a sheet chooses. */
export interface SheetOptions {
  readonly paper: PaperName
  /** `auto` takes the way round that suits the sheet. */
  readonly orientation: Orientation | 'auto'
  /** Floor mm a paper mm, such as 48; `fit` takes the largest standard scale that fits. */
  readonly scale: number | 'fit'
  readonly units: Units
  /** The day of issue as it is to be read; the program has no clock here. */
  readonly dateText: string
  /** As it stands in the title block: `3`, or `draft of 4` for what is not issued. */
  readonly issue: string
}

/** A plan as the crew holds it in its hands. */
export interface IssuedPlan {
  readonly number: number
  readonly dateText: string
  /** The plan of that day. */
  readonly was: Judged
}

/** What papers are made from. The cut lists are the ones that screens show: proven where there is a proof. */
export interface PlanOnPaper {
  readonly now: Judged
  /** The last issue; undefined before the first. */
  readonly issued: IssuedPlan | undefined
  /** What the change note tells against where that is not the last issue: the one before, while the plan is as it was issued. */
  readonly since?: IssuedPlan
  /** What became of each sheet of that issue, where somebody has found it out: the change note tells it. */
  readonly states?: readonly SheetState[]
}

/** How large a paper the sheet is made for; which one that is in inches or in mm, `paperFor` says. */
export type SheetSize = 'small' | 'large' | 'half' | 'tag'

/** One paper of the crew. */
export interface Sheet {
  /** Names it in files and on the command line: `saw-list`. */
  readonly id: string
  /** Two letters, as the crew calls for it. */
  readonly code: string
  readonly title: string
  /** Who holds it: `Saw hand`. */
  readonly reader: string
  readonly size: SheetSize
  /**
   * The whole of it in reading order, in the reader's units; empty where this plan needs no such paper. Everything else that is
   * made of a sheet (table files, the phone's view, what changed since the last issue) reads this.
   */
  readonly pieces: (plan: PlanOnPaper, options: SheetOptions) => readonly Piece[]
  /** Its pages where the drawing is the sheet; else the pieces run over as many pages as they need. */
  readonly pages?: (plan: PlanOnPaper, options: SheetOptions) => readonly Page[]
}
