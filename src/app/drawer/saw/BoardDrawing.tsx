import { textWidth } from '../../../drawing/lettering'
import type { Board } from '../../../model/cutList'
import type { Saw } from '../../../solvers/cutting/problem'
import { inches, type Units } from '../../../units/length'
import { isCoil, lengthWriter, unitOfStock } from '../../../sheets/cutWords'
import { marksWords } from '../../../sheets/sawnWords'
import { boardPicture, type PieceOnBoard } from './boardPicture'

const HEIGHT = 34
const LETTER_PX = 12.5
/** Room on either side of words in a piece, px. */
const MARGIN_PX = 3
/** A shorter offcut is no more than a line in the drawing, and has no words. */
const LEAST_OFFCUT_MM = inches(1)

interface BoardDrawingProps {
  readonly board: Board
  readonly saw: Saw
  readonly units: Units
  readonly stock: string
  /** Of the longest board of the list; all boards of it are drawn to one scale. */
  readonly longestMm: number
  /** Width that the longest board may take, px. */
  readonly widthPx: number
}

const fits = (words: string, px: number): boolean => textWidth(words, LETTER_PX) + 2 * MARGIN_PX <= px

/** The words of a piece that its length has room for; those left out stand beside the drawing. */
const linesOf = (
  { lengthMm, marks }: PieceOnBoard,
  px: number,
  write: (mm: number) => string,
): readonly string[] => {
  const length = write(lengthMm)
  if (!fits(length, px)) return []
  const all = marksWords(marks)
  const [first = ''] = marks
  const short = marks.length > 1 ? `${first} …` : all
  const shown = [all, short].find((words) => words !== '' && fits(words, px))
  return shown === undefined ? [length] : [length, shown]
}

function PieceShape({
  piece,
  scale,
  write,
}: {
  readonly piece: PieceOnBoard
  readonly scale: number
  readonly write: (mm: number) => string
}) {
  const width = (piece.toMm - piece.fromMm) * scale
  const lines = linesOf(piece, width, write)
  const middle = piece.fromMm * scale + width / 2
  return (
    <>
      <rect className="saw-piece" x={piece.fromMm * scale} y={1} width={width} height={HEIGHT - 2} />
      {lines.map((words, index) => (
        <text
          key={words}
          className={index === 0 ? 'saw-length' : 'saw-marks'}
          x={middle}
          y={lines.length === 1 ? 21.5 : 14.5 + index * 14}
        >
          {words}
        </text>
      ))}
    </>
  )
}

/** A board to scale, in the order of cutting. It is a picture of words that stand beside it, so it is not read aloud. */
export function BoardDrawing({ board, saw, units, stock, longestMm, widthPx }: BoardDrawingProps) {
  const picture = boardPicture(board, saw)
  const write = lengthWriter(stock, units)
  const scale = (widthPx - 2) / longestMm
  const { offcut, trim } = picture
  const offcutPx = offcut ? (offcut.toMm - offcut.fromMm) * scale : 0
  const left = isCoil(stock) ? 'left' : 'offcut'
  const offcutWords = offcut ? `${left} ${write(offcut.toMm - offcut.fromMm)}` : ''
  const width = picture.lengthMm * scale
  return (
    <svg
      className={unitOfStock(stock) === 'board' ? 'saw-drawing saw-lumber' : 'saw-drawing saw-steel'}
      width={width + 2}
      height={HEIGHT}
      viewBox={`-1 0 ${width + 2} ${HEIGHT}`}
      aria-hidden="true"
    >
      {picture.pieces.map((piece) => (
        <PieceShape key={piece.fromMm} piece={piece} scale={scale} write={write} />
      ))}
      {offcut && board.offcutMm >= LEAST_OFFCUT_MM && (
        <rect className="saw-offcut" x={offcut.fromMm * scale} y={1} width={offcutPx} height={HEIGHT - 2} />
      )}
      {offcut && fits(offcutWords, offcutPx) && (
        <text className="saw-marks" x={offcut.fromMm * scale + offcutPx / 2} y={21.5}>
          {offcutWords}
        </text>
      )}
      {trim && <rect className="saw-trim" x={0} y={1} width={trim.toMm * scale} height={HEIGHT - 2} />}
      {picture.kerfs.map(({ fromMm, toMm }) => (
        <rect
          key={fromMm}
          className="saw-kerf"
          x={fromMm * scale}
          y={0}
          width={Math.max(1, (toMm - fromMm) * scale)}
          height={HEIGHT}
        />
      ))}
      <rect className="saw-outline" x={0} y={1} width={width} height={HEIGHT - 2} />
    </svg>
  )
}
