import { inches } from '../units/length'

/** Thicker than this a stack of shims creeps: a block is steadier. Common practice, no source. */
export const BLOCK_OVER_MM = inches(1.5)

/** Past this no block makes up for the floor. Common practice, no source. */
export const REFUSED_OVER_MM = inches(4)

/** Shims are stacked to the sixteenth of an inch: what stacks up to a limit is not over it. */
export const STACKED_MM = inches(1 / 32)

/** How a foot stands on so much shim, mm. */
export const shimState = (shimMm: number): 'Fits' | 'Tight' | 'Clash' => {
  if (shimMm <= BLOCK_OVER_MM + STACKED_MM) return 'Fits'
  return shimMm <= REFUSED_OVER_MM + STACKED_MM ? 'Tight' : 'Clash'
}
