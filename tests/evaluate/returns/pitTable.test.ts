import { describe, expect, test } from 'vitest'
import { namedMarks, paintMarks } from '../../../src/evaluate/returns/pitTable'
import { levelAt, litresAt } from '../../../src/model/pitFacts'
import { workingLevels } from '../../../src/model/workingLevels'
import { pitFactsOf } from '../../../src/parts/sump/pitFacts'
import { sumpSchema, type Sump } from '../../../src/parts/sump/schema'
import { gpm } from '../../../src/units/flow'
import { inches, toInches } from '../../../src/units/length'
import { gallons, toGallons } from '../../../src/units/volume'

/** The sample bay's pit, 36 x 114 in. */
const factsOf = (values: Partial<Sump> = {}) =>
  pitFactsOf(sumpSchema.parse({ kind: 'sump', id: 'sump-1', at: { x: 0, y: 0 }, ...values }))

const pit = factsOf()

describe('a level table', () => {
  // Worked example of the trade notes, hand arithmetic: 36 x 114 / 231 = 17.77 gal/in over a bottom at -37.
  test.each([
    ['rim', 0, 657],
    ['inlet N', -11.1, 460],
    ['overflow', -13, 426],
    ['drain-back', -14, 409],
    ['running', -22.5, 258],
    ['make-up opens', -23.5, 240],
    ['low alarm', -27, 178],
    ['pump off', -29, 142],
    ['bottom', -37, 0],
  ])('%s at %f in: %i gal over the bottom', (_, levelIn, gal) => {
    // 17.77 x (37 - 11.1) = 460; the notes' 458 belongs to -11.2. Within the half gallon that they are written to.
    expect(Math.abs(toGallons(litresAt(pit, inches(levelIn))) - gal)).toBeLessThan(0.6)
    expect(toInches(levelAt(pit, litresAt(pit, inches(levelIn))))).toBeCloseTo(levelIn, 6)
  })

  test('names the levels from the rim down, with litres that only fall', () => {
    const marks = namedMarks(pit)
    expect(marks.map(({ titles }) => titles[0])).toEqual([
      'rim',
      'overflow',
      'drain-back level',
      'running level',
      'level at which make-up opens',
      'low alarm',
      'pump-off level',
      'pump intake',
      'bottom',
    ])
    const litres = marks.map((mark) => mark.litres)
    expect(litres).toEqual(litres.toSorted((a, b) => b - a))
  })

  test('paints a line each inch, and one for a named level between two', () => {
    const marks = paintMarks(pit, inches(1))
    // 37 inches over the bottom and the bottom itself: 38 lines, and -22.5 and -23.5 between two.
    expect(marks).toHaveLength(40)
    expect(marks.filter(({ titles }) => titles.length === 0)).toHaveLength(40 - 9)
    expect(marks.map(({ levelMm }) => levelMm)).toEqual(
      marks.map(({ levelMm }) => levelMm).toSorted((a, b) => b - a),
    )
  })

  test('has two levels of one height on one line, and refuses a step of nothing', () => {
    expect(namedMarks(factsOf({ makeUpMm: inches(-22.5) })).map(({ titles }) => titles)).toContainEqual([
      'running level',
      'level at which make-up opens',
    ])
    expect(() => paintMarks(pit, 0)).toThrow(/every 0 mm/)
  })
})

describe('levels from the inlet down', () => {
  const asks = {
    inletMm: inches(-12),
    designL: gallons(150.6),
    pumpLph: gpm(32),
    dayL: 0,
    submergenceMm: inches(6),
  }
  const inInches = (levels: ReturnType<typeof workingLevels>) =>
    levels && Object.values(levels).map((mm) => Math.round(toInches(mm) * 100) / 100)

  test('of the sample bay come out as its notes have them', () => {
    // Worked example of the trade notes, hand arithmetic: 150.6 gal are 8.5 in, so that -14 leaves -22.5.
    expect(inInches(workingLevels(pit, asks))).toEqual([-13, -14, -22.5, -23.5, -27, -29, -35, -37])
  })

  test('in a pit too shallow go with a bottom dug as deep as three minutes of the pump ask', () => {
    // Running -22.5; 32 gpm x 3 min = 96 gal = 5.40 in, so pump off at -27.9 or lower; 8 in under it -35.9: -36 on the step.
    const levels = workingLevels(factsOf({ bottomMm: inches(-30) }), asks)
    expect(inInches(levels)).toEqual([-13, -14, -22.5, -23.5, -26, -28, -34, -36])
  })

  test('leave a day’s use between running and pump off', () => {
    // 142.2 gal = 8 in: pump off at -30.5, bottom at -38.5.
    const levels = workingLevels(pit, { ...asks, dayL: gallons(142.1) })
    expect(inInches(levels)?.at(-1)).toBe(-38.5)
  })

  test('are none where no depth of so narrow a pit would hold what comes home', () => {
    const tote = factsOf({ lengthMm: inches(24), widthMm: inches(18) })
    expect(workingLevels(tote, asks)).toBeUndefined()
  })

  test('keep a hand under the rim however high a drain comes in', () => {
    expect(inInches(workingLevels(pit, { ...asks, inletMm: inches(5), designL: 0 }))?.[0]).toBe(-4)
  })
})
