import type { Screen } from '../../model/strength'
import type { RowInput } from './rowInput'

/** Risers as columns and against a push, and the holes in them; each screen at its worst riser. */
export const riserScreens = (_input: RowInput): readonly Screen[] => []
