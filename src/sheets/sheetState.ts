import type { TableChange } from './tableChanges'

/** Whether what the crew holds of a sheet still holds. `New` was not in the last set; `Not needed` is no longer in one. */
export type PaperState = 'Current' | 'Superseded' | 'New' | 'Not needed'

export interface SheetState {
  readonly sheet: {
    readonly id: string
    readonly code: string
    readonly title: string
    readonly reader: string
  }
  readonly state: PaperState
  /** What its tables say differently. Words and drawings may differ where no table does. */
  readonly changes: readonly TableChange[]
}
