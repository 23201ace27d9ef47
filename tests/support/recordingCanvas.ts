import type { CanvasLike } from '../../src/drawing/paint'

/** a, b, c, d, e, f of a canvas transform: x' = a x + c y + e, y' = b x + d y + f. */
type Matrix = readonly [number, number, number, number, number, number]

export interface Written {
  readonly text: string
  readonly x: number
  readonly y: number
  /** Letter height on the surface, px. */
  readonly px: number
  /** Reading direction and the direction of the letters' tops on the surface, unit vectors, y down. */
  readonly along: readonly [number, number]
  readonly up: readonly [number, number]
  readonly anchor: string
}

interface State {
  readonly matrix: Matrix
  readonly font: string
  readonly textAlign: string
  readonly lineWidth: number
  readonly dash: readonly number[]
}

const unit = (x: number, y: number): readonly [number, number] => {
  const size = Math.hypot(x, y)
  return [x / size, y / size]
}

/** A canvas that draws nothing and remembers what it was told, in px of its surface. */
export class RecordingCanvas implements CanvasLike {
  fillStyle: unknown = '#000000'
  strokeStyle: unknown = '#000000'
  lineWidth = 1
  lineJoin = 'miter'
  lineCap = 'butt'
  font = '10px sans-serif'
  textAlign = 'start'
  textBaseline = 'alphabetic'

  readonly calls: string[] = []
  /** Corners of every rectangle and ends of every line, px. */
  readonly points: (readonly [number, number])[] = []
  readonly fills: unknown[] = []
  readonly strokes: { colour: unknown; px: number; dash: readonly number[] }[] = []
  readonly written: Written[] = []
  matrix: Matrix
  private dash: readonly number[] = []
  private readonly saved: State[] = []

  constructor(matrix: Matrix = [1, 0, 0, 1, 0, 0]) {
    this.matrix = matrix
  }

  count(call: string): number {
    return this.calls.filter((c) => c === call).length
  }

  private note(call: string): void {
    this.calls.push(call)
  }

  private mark(x: number, y: number): readonly [number, number] {
    const [a, b, c, d, e, f] = this.matrix
    const at = [a * x + c * y + e, b * x + d * y + f] as const
    this.points.push(at)
    return at
  }

  beginPath(): void {
    this.note('beginPath')
  }
  closePath(): void {
    this.note('closePath')
  }
  moveTo(x: number, y: number): void {
    this.note('moveTo')
    this.mark(x, y)
  }
  lineTo(x: number, y: number): void {
    this.note('lineTo')
    this.mark(x, y)
  }
  rect(x: number, y: number, width: number, height: number): void {
    this.note('rect')
    this.mark(x, y)
    this.mark(x + width, y + height)
  }
  arc(x: number, y: number, radius: number): void {
    this.note('arc')
    this.mark(x - radius, y - radius)
    this.mark(x + radius, y + radius)
  }
  fill(): void {
    this.note('fill')
    this.fills.push(this.fillStyle)
  }
  stroke(): void {
    this.note('stroke')
    const scale = Math.hypot(this.matrix[0], this.matrix[1])
    this.strokes.push({
      colour: this.strokeStyle,
      px: this.lineWidth * scale,
      dash: this.dash.map((d) => d * scale),
    })
  }
  clip(): void {
    this.note('clip')
  }
  save(): void {
    this.note('save')
    const { matrix, font, textAlign, lineWidth, dash } = this
    this.saved.push({ matrix, font, textAlign, lineWidth, dash })
  }
  restore(): void {
    this.note('restore')
    const state = this.saved.pop()
    if (state === undefined) throw new Error('restore without save')
    this.matrix = state.matrix
    this.font = state.font
    this.textAlign = state.textAlign
    this.lineWidth = state.lineWidth
    this.dash = state.dash
  }
  private times(m: Matrix): void {
    const [a, b, c, d, e, f] = this.matrix
    this.matrix = [
      a * m[0] + c * m[1],
      b * m[0] + d * m[1],
      a * m[2] + c * m[3],
      b * m[2] + d * m[3],
      a * m[4] + c * m[5] + e,
      b * m[4] + d * m[5] + f,
    ]
  }
  translate(x: number, y: number): void {
    this.times([1, 0, 0, 1, x, y])
  }
  rotate(angle: number): void {
    this.times([Math.cos(angle), Math.sin(angle), -Math.sin(angle), Math.cos(angle), 0, 0])
  }
  scale(x: number, y: number): void {
    this.times([x, 0, 0, y, 0, 0])
  }
  setLineDash(segments: number[]): void {
    this.dash = segments
  }
  fillText(text: string, x: number, y: number): void {
    this.note('fillText')
    const [a, b, c, d, e, f] = this.matrix
    this.written.push({
      text,
      x: a * x + c * y + e,
      y: b * x + d * y + f,
      px: Number.parseFloat(this.font) * Math.hypot(c, d),
      along: unit(a, b),
      up: unit(-c, -d),
      anchor: this.textAlign,
    })
  }
  strokeText(): void {
    this.note('strokeText')
  }
}

/** A surface whose floor origin lies at px (0, height), with y of the floor growing up. */
export const floorCanvas = (pxPerMm: number, heightPx: number): RecordingCanvas =>
  new RecordingCanvas([pxPerMm, 0, 0, -pxPerMm, 0, heightPx])
