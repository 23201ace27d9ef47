import { MM_PER_INCH } from '../units/length'

/** PNG specification, third edition (W3C, 2025), 5.2 signature, 5.3 chunk layout, 11.3.4.3 pHYs. */
const SIGNATURE = [137, 80, 78, 71, 13, 10, 26, 10]
const HEADER_BYTES = 8
/** Length, type and CRC about a chunk's data. */
const AROUND_BYTES = 12
const PHYS_BYTES = 9
/** `pHYs` in ASCII. */
const PHYS_TYPE = [0x70, 0x48, 0x59, 0x73]
const PER_METRE = 1
const MM_PER_M = 1000

interface Chunk {
  readonly type: string
  readonly start: number
  readonly dataStart: number
  readonly dataBytes: number
  readonly end: number
}

/** Annex D of the specification: polynomial 0xEDB88320, a table entry a byte. */
const crcTable = Uint32Array.from({ length: 256 }, (_, n) => {
  let c = n
  for (let bit = 0; bit < 8; bit++) c = c & 1 ? 0xedb88320 ^ (c >>> 1) : c >>> 1
  return c
})

/** Cyclic redundancy code of a chunk's type and data. */
export const crc32 = (bytes: Uint8Array): number => {
  let c = 0xffffffff
  for (const byte of bytes) c = (crcTable[(c ^ byte) & 0xff] ?? 0) ^ (c >>> 8)
  return (c ^ 0xffffffff) >>> 0
}

const viewOf = (bytes: Uint8Array): DataView => new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength)

const readChunk = (png: Uint8Array, start: number): Chunk => {
  if (start + AROUND_BYTES > png.length)
    throw new RangeError(`PNG ends inside a chunk: byte ${start} of ${png.length}`)
  const dataBytes = viewOf(png).getUint32(start)
  const end = start + AROUND_BYTES + dataBytes
  if (end > png.length)
    throw new RangeError(`PNG chunk at byte ${start} ends at ${end}, past the file's ${png.length} bytes`)
  const type = String.fromCharCode(...png.subarray(start + 4, start + 8))
  return { type, start, dataStart: start + 8, dataBytes, end }
}

/** All chunks of a PNG, in order. Throws RangeError where the bytes are no whole PNG. */
const chunksOf = (png: Uint8Array): Chunk[] => {
  if (png.length < HEADER_BYTES || SIGNATURE.some((byte, i) => png[i] !== byte))
    throw new RangeError(`not a PNG: ${png.length} bytes without its signature`)
  const chunks: Chunk[] = []
  let at = HEADER_BYTES
  while (chunks.at(-1)?.type !== 'IEND') {
    const chunk = readChunk(png, at)
    chunks.push(chunk)
    at = chunk.end
  }
  if (chunks[0]?.type !== 'IHDR') throw new RangeError(`PNG begins with ${chunks[0]?.type}, not IHDR`)
  return chunks
}

const physChunk = (pixelsPerMetre: number): Uint8Array => {
  const bytes = new Uint8Array(AROUND_BYTES + PHYS_BYTES)
  const view = viewOf(bytes)
  view.setUint32(0, PHYS_BYTES)
  bytes.set(PHYS_TYPE, 4)
  view.setUint32(8, pixelsPerMetre)
  view.setUint32(12, pixelsPerMetre)
  view.setUint8(16, PER_METRE)
  view.setUint32(17, crc32(bytes.subarray(4, 17)))
  return bytes
}

const joined = (pieces: readonly Uint8Array[]): Uint8Array<ArrayBuffer> => {
  const whole = new Uint8Array(pieces.reduce((sum, piece) => sum + piece.length, 0))
  let at = 0
  for (const piece of pieces) {
    whole.set(piece, at)
    at += piece.length
  }
  return whole
}

/**
 * The same picture with its resolution set, in dots an inch, so that it prints at its true size. Any pHYs chunk is
 * replaced; every other byte is kept. Throws RangeError for what is no whole PNG or no usable resolution.
 */
export const withResolution = (png: Uint8Array, dpi: number): Uint8Array<ArrayBuffer> => {
  const pixelsPerMetre = Math.round((dpi * MM_PER_M) / MM_PER_INCH)
  if (!(pixelsPerMetre >= 1 && pixelsPerMetre <= 0x7fffffff))
    throw new RangeError(`a resolution of ${dpi} dots an inch can't be written`)
  const kept = chunksOf(png).filter(({ type }) => type !== 'pHYs')
  const pieces = kept.map(({ start, end }) => png.subarray(start, end))
  const [header = new Uint8Array(), ...rest] = pieces
  return joined([png.subarray(0, HEADER_BYTES), header, physChunk(pixelsPerMetre), ...rest])
}

/** Dots an inch that a PNG says of itself, along x; undefined where it says nothing or only an aspect. */
export const readResolution = (png: Uint8Array): number | undefined => {
  const phys = chunksOf(png).find(({ type, dataBytes }) => type === 'pHYs' && dataBytes === PHYS_BYTES)
  if (phys === undefined || png[phys.dataStart + 8] !== PER_METRE) return undefined
  return (viewOf(png).getUint32(phys.dataStart) * MM_PER_INCH) / MM_PER_M
}
