import type { Water } from '../model/water'
import type { WaterInputs } from './water/plan'
import { waterOf } from './water/waterOf'

/** Step 4: the network of the drawn bay, solved: what each tower gets. */
export const water = (inputs: WaterInputs): Water => waterOf(inputs)
