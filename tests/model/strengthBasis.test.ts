import { describe, expect, test } from 'vitest'
import { strengthBasis } from '../../src/model/strengthBasis'

const bases = Object.entries(strengthBasis)

/** Where a number may come from: a publication, or an honest word that there is none. */
const PUBLISHED = /NDS|IBC|IRC|Steel Tube Institute|Bartok|Statics|common practice, no source|assumption/i

describe('what a screen rests on', () => {
  test.each(bases)('%s: title, formula, limit and source', (_, { title, formula, limit, source }) => {
    for (const words of [title, formula, limit]) expect(words).toMatch(/^\S.{8,}\S$/)
    expect(source).toMatch(PUBLISHED)
  })

  test('no two screens have one title', () => {
    expect(new Set(bases.map(([, { title }]) => title)).size).toBe(bases.length)
  })

  test('what nobody published is called an assumption', () => {
    const assumed = [
      strengthBasis['rail-stress'],
      strengthBasis['rail-sag'],
      strengthBasis['riser-push'],
      strengthBasis.stance,
    ]
    for (const { source, assumptions } of assumed)
      expect([source, ...assumptions].join(' ')).toMatch(/an assumption/i)
  })
})
