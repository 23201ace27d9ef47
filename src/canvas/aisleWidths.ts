import type { Settings } from '../layout/settings'
import { inches, onTick } from '../units/length'

/** A width that an aisle may be given on purpose. */
export interface AisleWidth {
  readonly widthMm: number
  /** Kind of aisle, as in `work aisle`. */
  readonly words: string
}

/** Room on both sides of a cart together: hands, leaves and a crooked wheel. Common practice, no source. */
const BESIDE_CART_MM = inches(12)

/** From here on two carts pass each other, or turn at a door. Common practice, no source. */
const MAIN_MM = inches(48)
const DOOR_MM = inches(72)

/** Widths that suit a class of aisle, one of each, narrowest first. */
export const aisleWidths = ({ workAisleMm, cartMm }: Settings): readonly AisleWidth[] => {
  const widths: AisleWidth[] = [
    { widthMm: workAisleMm, words: 'work aisle' },
    { widthMm: onTick(cartMm + BESIDE_CART_MM), words: 'cart aisle' },
    { widthMm: onTick(MAIN_MM), words: 'main aisle' },
    { widthMm: onTick(DOOR_MM), words: 'aisle at a door' },
  ]
  return widths
    .filter(({ widthMm }, index) => widths.findIndex((width) => width.widthMm === widthMm) === index)
    .sort((a, b) => a.widthMm - b.widthMm)
}
