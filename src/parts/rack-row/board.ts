import { inches } from '../../units/length'
import { cutOf } from './cut'
import type { RackPlan } from './plan'
import type { Piece } from './stick'

/** How much shorter a board may come: common practice, no source. */
const TO_THE_STOP_MM = inches(1 / 16)
const BY_EYE_MM = inches(1 / 8)

const minusOf: Readonly<Record<string, number>> = {
  BX: TO_THE_STOP_MM,
  TT: TO_THE_STOP_MM,
  SB: TO_THE_STOP_MM,
  XB: TO_THE_STOP_MM,
}

/** A 2x4 of a length, mm, on edge or flat; halved or whole where a board on offer gives that. */
export const boardPiece = (
  { materials: { lumber }, boards, site }: RackPlan,
  mark: string,
  lengthMm: number,
  lies: 'on-edge' | 'flat',
): Piece => ({
  mark,
  stock: lumber.key,
  lengthMm,
  widthMm: lies === 'flat' ? lumber.wideMm : lumber.thickMm,
  heightMm: lies === 'flat' ? lumber.thickMm : lumber.wideMm,
  cut: cutOf(lengthMm, boards, site.kerfMm),
  minusMm: minusOf[mark] ?? BY_EYE_MM,
  holes: [],
})
