import { inflateRawSync } from 'node:zlib'
import { describe, expect, test } from 'vitest'
import { bayLink, LONGEST_LINK, readBayLink } from '../../../src/app/share/bayLink'
import { holdsBay } from '../../../src/app/share/bayHash'
import { writeLayout } from '../../../src/layout/file'
import type { Layout } from '../../../src/layout/schema'
import { scenarios } from '../../support/scenarios'

const PAGE = 'https://farm.example/planner/'
const sample = scenarios['kestrel-bend-house-2']!()

const hashOf = async (layout: Layout): Promise<string> => {
  const made = await bayLink(layout, PAGE)
  if (!made.ok) throw new Error(made.sentence)
  return new URL(made.link).hash
}

const sentenceOf = async (hash: string): Promise<string> => {
  const read = await readBayLink(hash)
  return read.ok ? 'opened' : read.sentence
}

describe.each(Object.keys(scenarios))('the bay %s', (name) => {
  const layout = scenarios[name]!()

  test('comes out of its link to the last letter of its file', async () => {
    const hash = await hashOf(layout)
    expect(holdsBay(hash)).toBe(true)
    const read = await readBayLink(hash)
    expect(read.ok && writeLayout(read.layout)).toBe(writeLayout(layout))
  })

  test('makes a link of letters that no address must escape', async () => {
    // RFC 4648 section 5, table 2.
    expect((await hashOf(layout)).slice('#bay='.length)).toMatch(/^[A-Za-z0-9_-]+$/)
  })
})

test('what is packed is raw deflate, as zlib reads it', async () => {
  const packed = Buffer.from((await hashOf(sample)).slice('#bay='.length), 'base64url')
  expect(JSON.parse(inflateRawSync(packed).toString('utf8'))).toEqual(JSON.parse(writeLayout(sample)))
})

/** Words that nothing can press together, from a seed. */
const noise = (seed: number, count: number): string => {
  let state = seed
  return Array.from({ length: count }, () => {
    state = (Math.imul(state, 1_103_515_245) + 12_345) >>> 0
    return String.fromCharCode(33 + ((state >>> 16) % 90))
  }).join('')
}

const kept = ({ title, house, parts, settings, bench, counter }: Layout) => ({
  title,
  house,
  parts,
  settings,
  bench,
  counter,
})

const withNoise = (layout: Layout, count: number): Layout => ({
  ...layout,
  settings: {
    ...layout.settings,
    accepted: Array.from({ length: count }, (_, index) => ({
      key: `rule:${index}`,
      reason: noise(20_270_501 + index, 300),
      by: '',
    })),
  },
})

test('versions stay behind where there is no room for them, and it is said', async () => {
  const plan = kept(withNoise(sample, 600))
  const layout = { ...sample, papers: { ...sample.papers, issued: plan } }
  const made = await bayLink(layout, PAGE)
  expect(made).toMatchObject({ ok: true, isWithoutKept: true })
  const read = await readBayLink(made.ok ? new URL(made.link).hash : '')
  expect(read.ok && writeLayout(read.layout)).toBe(writeLayout(sample))
})

test('a bay beyond the length of a link gets a sentence with both numbers', async () => {
  const made = await bayLink(withNoise(sample, 1000), PAGE)
  expect(made.ok ? '' : made.sentence).toMatch(
    /link of \d{3},\d{3} letters; browsers open up to about 64,000\. Save/,
  )
  expect(LONGEST_LINK).toBeLessThanOrEqual(80_000)
})

describe('a link that is no good opens nothing and says why:', () => {
  const packedOf = async (text: string): Promise<string> => {
    const stream = new Blob([text]).stream().pipeThrough(new CompressionStream('deflate-raw'))
    return `#bay=${Buffer.from(await new Response(stream).arrayBuffer()).toString('base64url')}`
  }

  test('cut short', async () => {
    const hash = await hashOf(sample)
    for (const share of [0.1, 0.5, 0.99])
      expect(await sentenceOf(hash.slice(0, Math.floor(hash.length * share)))).toMatch(
        /damaged: some program on its way has cut it .* Your bay is untouched\.$/,
      )
  })

  test.each(['#bay=', '#bay=%%%', '#bay=AAAA', '#bay=not a bay at all'])('%s', async (hash) => {
    expect(await sentenceOf(hash)).toMatch(/damaged/)
  })

  test('one letter changed', async () => {
    const hash = await hashOf(sample)
    const middle = Math.floor(hash.length / 2)
    const other = hash[middle] === 'A' ? 'B' : 'A'
    const changed = `${hash.slice(0, middle)}${other}${hash.slice(middle + 1)}`
    expect(await sentenceOf(changed)).not.toBe('opened')
  })

  test('another program’s file', async () => {
    expect(await sentenceOf(await packedOf('{"type":"FeatureCollection"}'))).toBe(
      'The bay in this link is JSON, but not a Kerf & Fall layout, so it was not opened. Your bay is untouched.',
    )
  })

  test('a few letters that swell to 40 MB', async () => {
    const hash = await packedOf(' '.repeat(40 * 1024 * 1024))
    expect(hash.length).toBeLessThan(100_000)
    expect(await sentenceOf(hash)).toMatch(/swells to more than 32 MB/)
  })
})
