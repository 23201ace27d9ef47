import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { cutRange, cutScale } from '../../../src/app/drawer/longCut/cutScale'
import { cutSentence, cutTable } from '../../../src/app/drawer/longCut/cutWords'
import { gripsOf, onStep } from '../../../src/app/drawer/longCut/grips'
import { labelPlaces, labelRect, type Label } from '../../../src/app/drawer/longCut/labelPlaces'
import { levelWords } from '../../../src/app/drawer/longCut/pitWords'
import { brokenBy, markOf, worstOfWay } from '../../../src/app/drawer/longCut/wayFindings'
import { beforeChecks } from '../../../src/evaluate/beforeChecks'
import { findingsOf } from '../../../src/evaluate/8-checks'
import { longCut } from '../../../src/evaluate/longCut/cut'
import { raisePit } from '../../../src/layout/pitLevels'
import type { Layout } from '../../../src/layout/schema'
import { inches, toInches } from '../../../src/units/length'
import { inTrench } from '../../../src/units/precision'
import { toInchesPerFoot } from '../../../src/units/slope'
import { writerFor } from '../../../src/units/writer'
import { scenarios } from '../../support/scenarios'
import { sentenceIn } from '../../support/judged'

const layout = scenarios['kestrel-bend-house-2']!()
const evaluation = beforeChecks(layout)
const idOf = (name: string) => layout.parts.find((part) => part.name === name)!.id
const name = (id: string) => layout.parts.find((part) => part.id === id)?.name ?? id
const cut = longCut(evaluation.bay, idOf('Drain N'))!
const writer = writerFor('feet-inches', inTrench)

describe('scale', () => {
  // The drawer at its usual height: 1280 x 800 leaves the drawing 674 x 248 px, 1024 x 768 leaves it 466 x 240.
  test.each([
    [674, 248],
    [466, 240],
    [1200, 560],
  ])('in %d x %d px all lies inside, and levels are no smaller than they might be', (width, height) => {
    const scale = cutScale(cut, { width, height })
    const { highMm, lowMm } = cutRange(cut)
    expect(scale.yOf(highMm)).toBeGreaterThanOrEqual(scale.top - 1e-6)
    expect(scale.yOf(lowMm)).toBeLessThanOrEqual(scale.bottom + 1e-6)
    expect(scale.xOf(cut.endMm)).toBeLessThan(width)
    expect(scale.levelAt(scale.yOf(-100))).toBeCloseTo(-100, 6)
    expect((scale.yOf(lowMm) - scale.top) / (scale.bottom - scale.top)).toBeGreaterThan(0.6)
  })

  test('nine levels of a pit each have 24 px to be taken hold of, inside the drawing', () => {
    const words = levelWords(cut.pit!, cutScale(cut, { width: 466, height: 240 }))
    expect(words).toHaveLength(9)
    words.slice(1).forEach(({ at }, index) => expect(at - words[index]!.at).toBeGreaterThanOrEqual(24 - 1e-6))
    expect(words[0]!.at).toBeGreaterThanOrEqual(12)
    expect(words.at(-1)!.at).toBeLessThanOrEqual(228 + 1e-6)
  })
})

test('no two labels touch, and none leaves the drawing (seed 6)', () => {
  const label = fc.record<Label>({
    key: fc.string(),
    text: fc.constantFrom('1', '14', 'Drain N falls 1/8 in/ft', 'N1', 'Gas line, 18" deep'),
    x: fc.integer({ min: -50, max: 650 }),
    y: fc.integer({ min: -20, max: 300 }),
    anchor: fc.constantFrom('start', 'middle', 'end'),
    gives: fc.constantFrom('up', 'down', 'no'),
  })
  const within = { x0: 0, y0: 0, x1: 600, y1: 260 }
  fc.assert(
    fc.property(fc.array(label, { maxLength: 30 }), (labels) => {
      const rects = labelPlaces(labels, within).map(({ left, baseline, text }) =>
        labelRect(left, baseline, text),
      )
      rects.forEach((a, index) => {
        expect(a.x0 >= 0 && a.x1 <= 600.001 && a.y0 >= 0 && a.y1 <= 260).toBe(true)
        for (const b of rects.slice(index + 1))
          expect(a.x1 <= b.x0 || b.x1 <= a.x0 || a.y1 <= b.y0 || b.y1 <= a.y0).toBe(true)
      })
    }),
    { seed: 6, numRuns: 200 },
  )
})

describe('what breaks first', () => {
  // Inlets at -11.08 and -11.32 in, overflow at -13.0 (worked example of the trade notes, hand arithmetic); 1 in over it is wanted.
  const brokenAt = (upInches: number) => {
    const raised: Layout = raisePit(layout, idOf('Pit'), inches(upInches))
    const found = brokenBy(findingsOf(evaluation.bay), findingsOf(beforeChecks(raised).bay))
    return { found, said: found.map((finding) => sentenceIn(raised, finding)), bay: beforeChecks(raised).bay }
  }

  test('up 1/2 in the inlets still stand 1.18 and 1.42 in over the overflow: nothing of them breaks', () => {
    expect(brokenAt(0.5).found.filter(({ rule }) => rule === 'pit-inlet-level')).toEqual([])
  })

  test('up 3/4 in the lower one, S, stands 0.93 in over it and is the first; N at 1.17 still falls', () => {
    const { found } = brokenAt(0.75)
    expect(
      found.filter(({ rule }) => rule === 'pit-inlet-level').map(({ parts }) => name(parts[0]!)),
    ).toEqual(['Drain S'])
  })

  test('up 2 in both back up, S named before N', () => {
    const { found, said } = brokenAt(2)
    expect(found.slice(0, 2).map(({ state, parts }) => [state, name(parts[0]!)])).toEqual([
      ['Backs up', 'Drain S'],
      ['Backs up', 'Drain N'],
    ])
    expect(said[0]).toContain('5/16" under the overflow')
  })

  test('it is marked at the pit’s wall, at the inlet’s level', () => {
    const { found, bay } = brokenAt(2)
    const raised = longCut(bay, idOf('Drain N'))!
    const mark = markOf(found[1]!, raised, bay)!
    expect(mark.sMm).toBeCloseTo(raised.wallMm, 6)
    expect(toInches(mark.levelMm)).toBeCloseTo(-11.08, 2)
  })

  test('at rest the worst of the way home is told, and no trouble with how towers are fed', () => {
    const worst = worstOfWay(findingsOf(evaluation.bay), cut)
    expect(worst?.rule).toBe('service-crossing-min')
  })
})

describe('grips', () => {
  const grips = gripsOf(cut, evaluation, name)
  const grip = (label: string) => grips.find((each) => each.label === label)!
  const after = (label: string, levelMm: number) => {
    const edited = beforeChecks(grip(label).edit(layout, levelMm))
    return longCut(edited.bay, cut.along)!
  }

  test('the pit, each of its nine levels, and both ends of the drain', () => {
    expect(grips.map(({ kind }) => kind)).toEqual(['pit', ...Array(9).fill('level'), 'start', 'fall'])
  })

  test('the start level takes the whole line with it, at its own fall', () => {
    const { drains } = after('Start level of Drain N', cut.drains[0]!.highInvertMm - inches(2))
    expect(drains[0]!.lowInvertMm).toBeCloseTo(cut.drains[0]!.lowInvertMm - inches(2), 1)
    expect(drains[0]!.slopeMmPerM).toBe(cut.drains[0]!.slopeMmPerM)
  })

  // 274 in at 1/4 in a foot is 5.71 in; the high end stays at -8.23.
  test('the low end takes the fall with it', () => {
    const high = cut.drains[0]!.highInvertMm
    const { drains } = after('Fall of Drain N', high - inches((274 / 12) * 0.25))
    expect(toInchesPerFoot(drains[0]!.slopeMmPerM)).toBeCloseTo(0.25, 6)
  })

  test('the whole pit goes up with all but its rim', () => {
    const { pit } = after('Pit up or down, all but its rim', cut.pit!.facts.overflowMm + inches(2))
    expect(toInches(pit!.facts.bottomMm - cut.pit!.facts.bottomMm)).toBeCloseTo(2, 6)
    expect(pit!.facts.rimMm).toBe(cut.pit!.facts.rimMm)
  })

  test('a row’s section takes the drain from where the row comes in, and moves all of it', () => {
    const along = idOf('N1')
    const rowCut = longCut(evaluation.bay, along)!
    const start = gripsOf(rowCut, evaluation, name).find(({ kind }) => kind === 'start')!
    const edited = beforeChecks(start.edit(layout, start.levelMm - inches(1)))
    const moved = longCut(edited.bay, along)!
    expect(moved.drains[0]!.highInvertMm).toBeCloseTo(start.levelMm - inches(1), 1)
    expect(moved.drains[0]!.lowInvertMm).toBeCloseTo(rowCut.drains[0]!.lowInvertMm - inches(1), 1)
  })

  test('a drag comes to rest on the crew’s step', () => {
    expect(toInches(onStep(inches(-11.03), 'feet-inches'))).toBe(-11)
    expect(onStep(-101.3, 'metric')).toBe(-102)
  })
})

describe('in words', () => {
  test('the section in a sentence', () => {
    const said = cutSentence(cut, 2, name, writer)
    expect(said).toMatch(
      /^Section along Drain N, .*22' 10" to the wall of the pit, from -8-1\/4" to -11-1\/8"/,
    )
    expect(said).toContain('2 times as large')
  })

  test('stations from the high end down, each with its level and the floor there, then the pit', () => {
    const { rows, columns } = cutTable(cut, name, writer)
    expect(rows.every((row) => row.length === columns.length)).toBe(true)
    expect(rows.find(([what]) => what === 'Under N3, line 4')).toBeDefined()
    expect(rows.at(-1)).toEqual(['Bottom', '', `-3' 1"`, ''])
  })
})
