import type { Page } from '../drawing/page'
import type { Orientation, PaperName } from '../drawing/paper'
import type { Evaluation } from '../evaluate/evaluation'
import type { Units } from '../units/length'

/** What the person who prints a sheet chooses. */
export interface SheetOptions {
  readonly paper: PaperName
  /** `auto` takes the way round that gives the larger drawing. */
  readonly orientation: Orientation | 'auto'
  /** Floor mm a paper mm, such as 48; `fit` takes the largest standard scale that fits. */
  readonly scale: number | 'fit'
  readonly units: Units
  /** The day of issue as it is to be read; the program has no clock here. */
  readonly dateText: string
  readonly issue: number
}

/** One paper of the crew. */
export interface Sheet {
  readonly id: string
  /** Two letters, as the crew calls for it. */
  readonly code: string
  readonly title: string
  readonly page: (evaluation: Evaluation, options: SheetOptions) => Page
}
