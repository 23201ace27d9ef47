import fc from 'fast-check'
import { expect, test } from 'vitest'
import { evaluate } from '../../src/evaluate/evaluate'
import { applyMend } from '../../src/layout/mend'
import { arbitraryWater } from '../support/arbitraryWater'

const isOfWater = ({ subject, rule }: { subject: string; rule: string }): boolean =>
  subject === 'flow' || rule === 'poly-family-same'

test('one press on a mend of the water takes its finding away', () => {
  fc.assert(
    fc.property(arbitraryWater, (layout) => {
      for (const finding of evaluate(layout).findings.filter(isOfWater)) {
        if (!finding.mend) continue
        const after = evaluate(applyMend(layout, finding.mend)).findings
        expect(after.map(({ key }) => key)).not.toContain(finding.key)
      }
    }),
    { seed: 20_251_210, numRuns: 60 },
  )
}, 240_000)
