import { floorSheet } from './floorSheet'
import type { Sheet } from './sheet'

/** Every paper that the program can draw. */
export const sheets: readonly Sheet[] = [floorSheet]
