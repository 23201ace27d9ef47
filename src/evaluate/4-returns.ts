import type { Returns } from '../model/returns'
import type { Water } from '../model/water'
import { drainReturns } from './returns/drains'
import { pitReturns } from './returns/pits'
import { troughReturns } from './returns/troughs'
import type { WaterInputs } from './water/plan'

/** What the water on its way home is worked out from. */
export interface ReturnInputs extends WaterInputs {
  readonly water: Water
}

/** Step 4, second half: the water that comes home over troughs and drains, and what the pits make of it. */
export const returns = (inputs: ReturnInputs): Returns => {
  const running = { troughs: troughReturns(inputs), drains: drainReturns(inputs) }
  return { ...running, pits: pitReturns(inputs, running) }
}
