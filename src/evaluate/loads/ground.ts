import type { Screen } from '../../model/strength'
import type { RowInput } from './rowInput'

/** What the row rests on: the ground under its feet, or the house that it hangs from. */
export const groundScreens = (_input: RowInput): readonly Screen[] => []
