import type { RackRow } from '../parts/rack-row/schema'
import type { Units } from '../units/length'

/** What each form of a row's water is handed. */
export interface FeedFormProps {
  readonly row: RackRow
  readonly units: Units
  /** Sets a field of the row; a refusal comes back as its sentence. */
  readonly onValue: (field: string, label: string, value: unknown) => string | undefined
}
