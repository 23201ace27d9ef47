import { inflateSync } from 'node:zlib'

/** Just enough of the Portable Network Graphics specification (ISO/IEC 15948) to read what a canvas writes. */

export interface Picture {
  readonly width: number
  readonly height: number
  /** From the pHYs chunk, whole dots an inch; undefined where the file does not say. */
  readonly dpi: number | undefined
  /** Red, green and blue, 0 to 255. */
  readonly at: (x: number, y: number) => Rgb
}

export type Rgb = readonly [red: number, green: number, blue: number]

const SIGNATURE = '89504e470d0a1a0a'
const METRES_PER_INCH = 0.0254
const PER_METRE = 1

interface Chunk {
  readonly type: string
  readonly body: Buffer
}

const chunksOf = (bytes: Buffer): Chunk[] => {
  if (bytes.toString('hex', 0, 8) !== SIGNATURE) throw new Error('This is no PNG.')
  const chunks: Chunk[] = []
  for (let at = 8; at < bytes.length;) {
    const length = bytes.readUInt32BE(at)
    chunks.push({
      type: bytes.toString('latin1', at + 4, at + 8),
      body: bytes.subarray(at + 8, at + 8 + length),
    })
    at += length + 12
  }
  return chunks
}

/** "Paeth filter" of section 9.4: the neighbour that is nearest to left + above - corner. */
const paeth = (left: number, above: number, corner: number): number => {
  const [toLeft, toAbove] = [Math.abs(above - corner), Math.abs(left - corner)]
  const toCorner = Math.abs(left + above - 2 * corner)
  if (toLeft <= toAbove && toLeft <= toCorner) return left
  return toAbove <= toCorner ? above : corner
}

/** What the filter of a row added to a byte, from the three neighbours that are known already. */
const predicted = (filter: number, left: number, above: number, corner: number): number => {
  switch (filter) {
    case 1:
      return left
    case 2:
      return above
    case 3:
      return (left + above) >> 1
    case 4:
      return paeth(left, above, corner)
    default:
      return 0
  }
}

/** Rows of bytes without their filters (section 9). */
const unfiltered = (data: Buffer, stride: number, height: number, perPixel: number): Uint8Array => {
  const out = new Uint8Array(stride * height)
  for (let y = 0; y < height; y += 1) {
    const filter = data[y * (stride + 1)]!
    for (let x = 0; x < stride; x += 1) {
      const to = y * stride + x
      const left = x < perPixel ? 0 : out[to - perPixel]!
      const above = y === 0 ? 0 : out[to - stride]!
      const corner = x < perPixel || y === 0 ? 0 : out[to - stride - perPixel]!
      out[to] = data[y * (stride + 1) + 1 + x]! + predicted(filter, left, above, corner)
    }
  }
  return out
}

const dpiOf = (phys: Buffer | undefined): number | undefined =>
  phys?.[8] === PER_METRE ? Math.round(phys.readUInt32BE(0) * METRES_PER_INCH) : undefined

/** @throws Error for what is no PNG of 8 bits a channel without interlace. */
export const readPng = (bytes: Buffer): Picture => {
  const chunks = chunksOf(bytes)
  const body = (type: string) => chunks.find((chunk) => chunk.type === type)?.body
  const header = body('IHDR')!
  const [width, height] = [header.readUInt32BE(0), header.readUInt32BE(4)]
  const perPixel = { 2: 3, 6: 4 }[header[9]!]
  if (header[8] !== 8 || header[12] !== 0 || perPixel === undefined)
    throw new Error('Only true colour of 8 bits without interlace is read.')
  const data = inflateSync(Buffer.concat(chunks.filter(({ type }) => type === 'IDAT').map((c) => c.body)))
  const pixels = unfiltered(data, width * perPixel, height, perPixel)
  return {
    width,
    height,
    dpi: dpiOf(body('pHYs')),
    at: (x, y) => {
      const from = (y * width + x) * perPixel
      return [pixels[from]!, pixels[from + 1]!, pixels[from + 2]!]
    },
  }
}
