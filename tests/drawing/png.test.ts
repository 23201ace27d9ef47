import { describe, expect, test } from 'vitest'
import fc from 'fast-check'
import { crc32, readResolution, withResolution } from '../../src/drawing/png'

/** A red pixel, as an image editor wrote it. */
const pixel = Uint8Array.from(
  Buffer.from(
    'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==',
    'base64',
  ),
)

const ascii = (text: string) => Uint8Array.from(Buffer.from(text, 'ascii'))

/** The chunk of 2835 px a metre (72 dots an inch), CRC and all, as it stands in many picture files. */
const PHYS_72_DPI = '000000097048597300000b1300000b1301009a9c18'

/** Chunks as type and hex, read with Node's own readers. */
const parse = (png: Uint8Array): { type: string; hex: string }[] => {
  const buffer = Buffer.from(png)
  const chunks: { type: string; hex: string }[] = []
  for (let at = 8; at < buffer.length;) {
    const end = at + 12 + buffer.readUInt32BE(at)
    chunks.push({ type: buffer.toString('latin1', at + 4, at + 8), hex: buffer.toString('hex', at, end) })
    at = end
  }
  return chunks
}

test('the CRC is that of the published check values', () => {
  // CRC-32 of "123456789", the check value of the CRC catalogues; and of the empty IEND chunk, PNG specification.
  expect(crc32(ascii('123456789'))).toBe(0xcbf43926)
  expect(crc32(ascii('IEND'))).toBe(0xae426082)
})

describe('withResolution', () => {
  test('writes the known chunk straight after the header and keeps every other byte', () => {
    const before = parse(pixel)
    const after = parse(withResolution(pixel, 72))
    expect(after.map(({ type }) => type)).toEqual(['IHDR', 'pHYs', 'IDAT', 'IEND'])
    expect(after[1]!.hex).toBe(PHYS_72_DPI)
    expect(after.filter(({ type }) => type !== 'pHYs')).toEqual(before)
  })

  test('replaces a resolution that is there', () => {
    const twice = withResolution(withResolution(pixel, 72), 300)
    expect(parse(twice).filter(({ type }) => type === 'pHYs')).toHaveLength(1)
    // 300 dots an inch is 11811.02 a metre.
    expect(Buffer.from(parse(twice)[1]!.hex, 'hex').readUInt32BE(8)).toBe(11811)
  })

  test('leaves the picture that it was given alone', () => {
    const copy = pixel.slice()
    withResolution(pixel, 200)
    expect(pixel).toEqual(copy)
  })

  test('reads a picture that is a part of a larger buffer', () => {
    const padded = new Uint8Array(pixel.length + 20)
    padded.set(pixel, 13)
    const part = padded.subarray(13, 13 + pixel.length)
    expect(withResolution(part, 200)).toEqual(withResolution(pixel, 200))
  })

  test.each([
    ['nothing', new Uint8Array()],
    ['a text', ascii('not a picture at all')],
    ['a spoilt signature', Uint8Array.from([...pixel].map((byte, i) => (i === 0 ? 0x88 : byte)))],
    ['a signature alone', pixel.slice(0, 8)],
  ])('throws on %s', (_, bytes) => {
    expect(() => withResolution(bytes, 200)).toThrow(RangeError)
  })

  test('throws on a picture cut off anywhere (seed 9)', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: pixel.length - 1 }), (bytes) => {
        expect(() => withResolution(pixel.slice(0, bytes), 200)).toThrow(RangeError)
      }),
      { seed: 9 },
    )
  })

  test.each([0, -1, Number.NaN, Infinity])('throws on %d dots an inch', (dpi) => {
    expect(() => withResolution(pixel, dpi)).toThrow(RangeError)
  })
})

describe('readResolution', () => {
  test('gives back what was set, to the whole pixel a metre (seed 4)', () => {
    fc.assert(
      fc.property(fc.integer({ min: 50, max: 2400 }), (dpi) => {
        expect(Math.round(readResolution(withResolution(pixel, dpi))!)).toBe(dpi)
      }),
      { seed: 4 },
    )
  })

  test('says nothing where the picture says nothing', () => {
    expect(readResolution(pixel)).toBeUndefined()
  })
})
