import { describe, expect, test } from 'vitest'
import { forceOf, ratioOf } from '../../src/checks/found'
import { applyMend } from '../../src/layout/mend'
import { poundsForce } from '../../src/units/force'
import { bay } from '../support/bay'
import { foundIn, rowStrength, saidIn, screen } from '../support/strength'

const RULE = 'riser-brace-both'
const layoutWith = (bracing: 'both' | 'along' | 'across' | 'none') =>
  bay('40 x 60 ft').row('A', [165, 100], { bracing }).layout()

// NDS 3.7.1.4: le/d at most 50. A 66 in riser free to sway the weak way: 2.1 x 66 / 1.5 = 92.4.
const slender = screen('riser-slenderness', 'Too long', ratioOf(92.4), ratioOf(50), { used: Infinity })

// A 66 in riser free across, the strong way: 2.1 x 66 / 3.5 = 39.6, a column of 1,339 lb dry.
const column = screen('riser-column', 'Too long', forceOf(poundsForce(1400)), forceOf(poundsForce(1339)))

describe(RULE, () => {
  test('a riser that nothing braces is refused, whatever it carries', () => {
    expect(saidIn(RULE, layoutWith('across'), rowStrength({ screens: [slender] }))).toEqual([
      'Too long: Nothing braces the risers of A along the row: their slenderness is 92.40, and over 50.00 a riser is refused whatever it carries. Give A braces along the row and across it.',
    ])
  })

  test('one that is free the strong way may carry too much', () => {
    expect(saidIn(RULE, layoutWith('along'), rowStrength({ screens: [column] }))).toEqual([
      'Too long: Nothing braces the risers of A across the row: with every tower hung one comes to 1400 lb, 1339 lb is allowed. Give A braces along the row and across it.',
    ])
  })

  test('a riser braced both ways is another rule’s, and so is one that is within', () => {
    expect(saidIn(RULE, layoutWith('both'), rowStrength({ screens: [slender] }))).toEqual([])
    expect(saidIn(RULE, layoutWith('none'), rowStrength())).toEqual([])
  })

  test('one press braces them', () => {
    const layout = layoutWith('none')
    const [finding] = foundIn(RULE, layout, rowStrength({ screens: [slender] }))
    expect(applyMend(layout, finding!.mend!).parts[0]).toMatchObject({ bracing: 'both' })
  })
})
