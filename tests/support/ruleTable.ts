import { describe, expect, test } from 'vitest'
import { evaluate } from '../../src/evaluate/evaluate'
import { ruleOf } from '../../src/checks'
import { applyMend } from '../../src/layout/mend'
import type { Layout } from '../../src/layout/schema'
import type { Sketch } from './bay'
import { findingsOf, judged, told } from './judged'

/** What a case shows, and the bay that shows it. */
type Passing = readonly [shows: string, bay: Sketch | Layout]

/** With the state, the measure and the limit in inches, as `Tight, 35.938 of 36`, and the sentence with its mend. */
type Failing = readonly [shows: string, bay: Sketch | Layout, judged: string, says: string]

interface Table {
  readonly passes: readonly Passing[]
  readonly fails: readonly Failing[]
}

const layoutOf = (bay: Sketch | Layout): Layout => ('parts' in bay ? bay : bay.layout())

/** After one press on its mend a finding is gone, and its rule finds nothing that it did not find before. */
const expectMended = (rule: string, layout: Layout): void => {
  for (const { key, mend } of findingsOf(rule, layout)) {
    if (!mend) continue
    const before = findingsOf(rule, layout).map((finding) => finding.key)
    const after = evaluate(applyMend(layout, mend)).findings.map((finding) => finding.key)
    expect(after).not.toContain(key)
    expect(after.filter((found) => found.startsWith(`${rule} `) && !before.includes(found))).toEqual([])
  }
}

/** One rule against bays that it lets pass and bays in which it finds exactly one thing. */
export const ruleTable = (rule: string, { passes, fails }: Table): void => {
  describe(`${rule}: ${ruleOf(rule).limit}`, () => {
    test.each(passes)('lets pass %s', (_, bay) => {
      expect(judged(rule, bay)).toEqual([])
    })

    test.each(fails)('finds %s', (_, bay, is, says) => {
      expect(judged(rule, bay)).toEqual([is])
      expect(told(rule, bay)).toEqual([says])
      expectMended(rule, layoutOf(bay))
    })
  })
}
