import { discMark } from '../../parts/marks'
import type { Writer } from '../../units/writer'
import { LETTERS, panel, ruled } from '../ink'
import { measured, together, wordsAt, type Worded } from '../paperDimensions'
import { type Frame, frameSizes } from './frames'
import { FROM_HIGH_END, type Laid, memberMarks, onSheet, type View } from './shapes'

/** How wide a frame lies, mm: short runners reach past its risers. */
export const flatWidth = (frame: Frame): number =>
  Math.max(frameSizes(frame)?.crossMm ?? 0, ...frame.feet.map(({ stick }) => stick.lengthMm))

/** A frame on the floor with its feet at the bottom, its ties up, and both diagonals. `laid` has the feet at 0. */
export const flatFrame = (frame: Frame, laid: Laid, write: Writer): Worded => {
  const sizes = frameSizes(frame)
  if (!sizes) return { marks: [], boxes: [] }
  const footZ = frame.risers[0]?.from.z ?? 0
  const tieUp: View = { ...FROM_HIGH_END, near: ({ u }) => (frame.tieIsDownhill ? u : -u) }
  const half = sizes.crossMm / 2
  const corner = (side: 1 | -1, mm: number) => onSheet(laid, { x: side * half, y: mm })
  const middle = onSheet(laid, { x: 0, y: sizes.tieTopMm / 2 })
  const label = wordsAt(`both ${write.onTape(sizes.diagonalMm)}`, middle, LETTERS.body + 0.3, 'middle')
  const holes = frame.risers.flatMap(({ stick, from }) =>
    stick.holes.map(({ centreMm, diameterMm, asideMm = 0 }) =>
      discMark(
        onSheet(laid, { x: from.v + asideMm, y: centreMm }),
        (diameterMm / 2) * laid.scale,
        'outline',
        'paper',
      ),
    ),
  )
  const pastMm = ((flatWidth(frame) - sizes.crossMm) / 2) * laid.scale
  const boards = [...frame.risers, ...frame.feet.slice(0, 1), ...(frame.tie ? [frame.tie] : [])]
  return together([
    {
      marks: [
        ...memberMarks(boards, tieUp, { ...laid, y: laid.y - footZ * laid.scale }),
        ...holes,
        ruled(corner(-1, 0), corner(1, sizes.tieTopMm), 'hidden'),
        ruled(corner(1, 0), corner(-1, sizes.tieTopMm), 'hidden'),
        ...label.boxes.map((box) => panel(box, 'none', 'paper')),
      ],
      boxes: [],
    },
    label,
    wordsAt(
      'A frame on the flat',
      { x: middle.x, y: corner(1, sizes.riserMm).y + 5 },
      LETTERS.body + 0.3,
      'middle',
    ),
    measured(corner(-1, 0), corner(1, 0), -5, write.onTape(sizes.crossMm)),
    measured(corner(1, 0), corner(1, sizes.tieTopMm), -5 - pastMm, write.onTape(sizes.tieTopMm)),
  ])
}
