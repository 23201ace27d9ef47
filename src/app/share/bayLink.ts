import { layoutSchema, type Layout } from '../../layout/schema'
import { readLayout } from '../../layout/file'
import type { Opened } from '../files/layoutFiles'
import { asHash, fromHash } from './bayHash'

/**
 * The longest link that all of the common browsers still open, letters: Safari takes some 80,000, the others ten times that. Common
 * practice, no source.
 */
export const LONGEST_LINK = 64_000
/** Beyond this, mail and chat programs begin to cut a link in two. Common practice, no source. */
export const LONG_LINK = 8_000
/** No layout file may be larger; a link that swells to more is not ours. */
const MOST_BYTES = 32 * 1024 * 1024

export type BayLink =
  | {
      readonly ok: true
      readonly link: string
      /** Versions and the last issue found no room in it. */
      readonly isWithoutKept: boolean
    }
  | { readonly ok: false; readonly sentence: string }

/** As text in an address: base64url, RFC 4648 section 5, unpadded. */
const addressText = (bytes: Uint8Array): string => {
  let letters = ''
  for (const byte of bytes) letters += String.fromCharCode(byte)
  return btoa(letters).replaceAll('+', '-').replaceAll('/', '_').replace(/=+$/, '')
}

const addressBytes = (text: string): Uint8Array<ArrayBuffer> =>
  Uint8Array.from(atob(text.replaceAll('-', '+').replaceAll('_', '/')), (letter) => letter.charCodeAt(0))

const streamOf = (bytes: Uint8Array<ArrayBuffer>): ReadableStream<Uint8Array<ArrayBuffer>> =>
  new Blob([bytes]).stream()

/** All that a stream gives; throws RangeError as soon as it is more than `most` bytes. */
const drained = async (
  stream: ReadableStream<Uint8Array>,
  most: number,
): Promise<Uint8Array<ArrayBuffer>> => {
  const pieces: Uint8Array[] = []
  let length = 0
  const reader = stream.getReader()
  for (let next = await reader.read(); !next.done; next = await reader.read()) {
    length += next.value.length
    if (length > most) {
      await reader.cancel()
      throw new RangeError(`more than ${most} bytes`)
    }
    pieces.push(next.value)
  }
  const whole = new Uint8Array(length)
  let at = 0
  for (const piece of pieces) {
    whole.set(piece, at)
    at += piece.length
  }
  return whole
}

const packed = async (text: string): Promise<string> => {
  const stream = streamOf(new TextEncoder().encode(text)).pipeThrough(new CompressionStream('deflate-raw'))
  return addressText(await drained(stream, MOST_BYTES))
}

const unpacked = async (text: string): Promise<string> => {
  const stream = streamOf(addressBytes(text)).pipeThrough(new DecompressionStream('deflate-raw'))
  return new TextDecoder('utf-8', { fatal: true }).decode(await drained(stream, MOST_BYTES))
}

/** What was issued and what is kept beside the bay; a link can do without. */
const withoutKept = (layout: Layout): Layout => ({
  ...layout,
  papers: { ...layout.papers, issued: null, before: null, versions: [] },
})

const hasKept = ({ papers }: Layout): boolean => papers.issued !== null || papers.versions.length > 0

const linkOf = async (layout: Layout, page: string): Promise<string> => {
  const settled = layoutSchema.safeParse(layout)
  return `${page}${asHash(await packed(JSON.stringify(settled.success ? settled.data : layout)))}`
}

const letters = (count: number): string => count.toLocaleString('en')

/**
 * The whole bay as a link to `page`, the address without its hash. Where it is too long for a browser, what is kept beside the bay is
 * left out; where that is too long too, one sentence.
 */
export const bayLink = async (layout: Layout, page: string): Promise<BayLink> => {
  try {
    const whole = await linkOf(layout, page)
    if (whole.length <= LONGEST_LINK) return { ok: true, link: whole, isWithoutKept: false }
    const bare = hasKept(layout) ? await linkOf(withoutKept(layout), page) : whole
    if (bare.length <= LONGEST_LINK) return { ok: true, link: bare, isWithoutKept: true }
    return {
      ok: false,
      sentence: `This bay would make a link of ${letters(bare.length)} letters; browsers open up to about ${letters(LONGEST_LINK)}. Save it as a file and send that.`,
    }
  } catch {
    return {
      ok: false,
      sentence: 'This browser can’t make such a link. Save the bay as a file and send that.',
    }
  }
}

const DAMAGED =
  'The bay in this link is damaged: some program on its way has cut it or changed it. Your bay is untouched.'
const TOO_LARGE =
  'The link swells to more than 32 MB, more than any bay, so it was not opened. Your bay is untouched.'

const sentenceOf = (trouble: unknown): string => (trouble instanceof RangeError ? TOO_LARGE : DAMAGED)

/** The bay that an address's hash holds, read as carefully as a file from a stranger. */
export const readBayLink = async (hash: string): Promise<Opened> => {
  try {
    const read = readLayout(await unpacked(fromHash(hash)))
    return read.ok
      ? read
      : { ok: false, sentence: read.sentence.replaceAll('This file', 'The bay in this link') }
  } catch (trouble) {
    return { ok: false, sentence: sentenceOf(trouble) }
  }
}
