import { describe, expect, test } from 'vitest'
import { evaluate } from '../../src/evaluate/evaluate'
import { emptyBay } from '../../src/layout/empty'
import { type Finding, rankOf, stateWords } from '../../src/model/finding'
import { areaStates, sortedByAcceptance, warningGroups, worstOfParts } from '../../src/sidebar/warningGroups'
import { feet } from '../../src/units/length'
import { firstTry } from '../support/firstTry'
import { scenarios } from '../support/scenarios'

const subjectOf = (state: Finding['state']): Finding['subject'] =>
  (['fit', 'drain', 'flow', 'strength', 'stance'] as const).find((subject) =>
    (stateWords[subject] as readonly string[]).includes(state),
  )!

const finding = (rule: string, state: Finding['state'], parts: readonly string[], n = 0): Finding => ({
  key: `${rule} ${parts.join(' ')} ${n}`,
  rule,
  subject: subjectOf(state),
  state,
  parts,
  at: { x: 0, y: 0 },
  measured: { value: 0, unit: 'mm' },
  limit: { value: 1, unit: 'mm' },
  facts: {},
  terms: [],
})

const outline = (findings: readonly Finding[]) =>
  warningGroups(findings).map(({ area, rules }) => [
    area,
    rules.map(({ rule, findings: list }) => [rule.id, list.map(({ state }) => state)]),
  ])

describe('warnings are grouped', () => {
  test('by what they are about and by rule, the worst first', () => {
    expect(
      outline([
        finding('aisle-width-min', 'Tight', ['rack-row-1']),
        finding('aisle-width-min', 'Clash', ['rack-row-2']),
        finding('body-overlap', 'Clash', ['rack-row-1', 'obstacle-1']),
        finding('bar-riser-gap', 'Tight', ['rack-row-1']),
        finding('drain-fall-min', 'Flat', ['drain-line-1']),
      ]),
    ).toEqual([
      [
        'Floor',
        [
          ['body-overlap', ['Clash']],
          ['aisle-width-min', ['Clash', 'Tight']],
        ],
      ],
      ['Drains', [['drain-fall-min', ['Flat']]]],
      ['Racks', [['bar-riser-gap', ['Tight']]]],
    ])
  })

  test('what takes the bay’s water to find and is about a rack’s trough stands with the racks', () => {
    expect(outline([finding('outlet-flow-max', 'Tight', ['rack-row-1'])])).toEqual([
      ['Racks', [['outlet-flow-max', ['Tight']]]],
    ])
  })

  test('with an area that must be mended before one that need only be looked at', () => {
    const areas = warningGroups([
      finding('aisle-width-min', 'Tight', ['rack-row-1']),
      finding('drain-fall-min', 'Backs up', ['drain-line-1']),
    ]).map(({ area }) => area)
    expect(areas).toEqual(['Drains', 'Floor'])
  })

  test.each(Object.entries({ ...scenarios, 'first try': firstTry }))('none lost, in %s', (_, build) => {
    const { findings } = evaluate(build())
    const grouped = warningGroups(findings).flatMap(({ rules }) => rules.flatMap((group) => group.findings))
    expect(grouped.length).toBe(findings.length)
    expect(new Set(grouped)).toEqual(new Set(findings))
  })
})

describe('the state of an area', () => {
  test('is its good word where nothing warns, and no word where there is nothing to judge', () => {
    expect(areaStates([], evaluate(emptyBay(feet(20), feet(40), 'New')))).toEqual([
      { area: 'Floor', states: [] },
      { area: 'Drains', states: [] },
      { area: 'Pits', states: [] },
      { area: 'Water', states: [] },
      { area: 'Racks', states: [] },
      { area: 'Strength', states: [] },
    ])
    const standing = areaStates([], evaluate(firstTry()))
    expect(standing.map(({ states }) => states.map(({ word }) => word))).toEqual([
      ['Fits'],
      ['Falls'],
      ['Holds'],
      ['Even'],
      ['Fits'],
      ['Within'],
    ])
  })

  test('counts what carries too much and what tips, each by its own words', () => {
    const groups = warningGroups([
      finding('rail-span-max', 'Too long', ['rack-row-1']),
      finding('rail-span-max', 'Proof-load', ['rack-row-2']),
      finding('tips-empty-min', 'Tips', ['rack-row-1']),
      finding('tips-empty-min', 'Shaky', ['rack-row-2']),
    ])
    expect(groups.map(({ area }) => area)).toEqual(['Strength'])
    expect(areaStates(groups, evaluate(firstTry())).at(-1)).toEqual({
      area: 'Strength',
      states: [
        { word: 'Too long', rank: 2, count: 1 },
        { word: 'Tips', rank: 2, count: 1 },
        { word: 'Proof-load', rank: 1, count: 1 },
        { word: 'Shaky', rank: 1, count: 1 },
      ],
    })
  })

  test('is told of the water by its own words', () => {
    // Any rule's name will do: what a finding is about is said by its subject.
    const groups = warningGroups([
      finding('bar-riser-gap', 'Drifting', ['rack-row-1']),
      finding('bar-riser-gap', 'Starved', ['rack-row-2']),
      finding('bar-riser-gap', 'Tight', ['rack-row-2']),
    ])
    expect(groups.map(({ area }) => area)).toEqual(['Water', 'Racks'])
    expect(areaStates(groups, evaluate(firstTry())).find(({ area }) => area === 'Water')).toEqual({
      area: 'Water',
      states: [
        { word: 'Starved', rank: 2, count: 1 },
        { word: 'Drifting', rank: 1, count: 1 },
      ],
    })
  })

  test('counts its words, worst first', () => {
    const groups = warningGroups([
      finding('aisle-width-min', 'Tight', ['rack-row-1'], 1),
      finding('aisle-width-min', 'Tight', ['rack-row-1'], 2),
      finding('body-overlap', 'Clash', ['rack-row-1']),
    ])
    expect(areaStates(groups, evaluate(firstTry()))[0]).toEqual({
      area: 'Floor',
      states: [
        { word: 'Clash', rank: 2, count: 1 },
        { word: 'Tight', rank: 1, count: 2 },
      ],
    })
  })
})

test('an accepted finding warns no more and keeps its reason; good findings never warn', () => {
  const [lived, open] = [
    finding('aisle-width-min', 'Tight', ['rack-row-1']),
    finding('aisle-width-min', 'Tight', ['rack-row-2']),
  ]
  const good = finding('aisle-width-min', 'Fits', ['rack-row-3'])
  const entry = { key: lived.key, reason: 'One person works there', by: 'Foreman' }
  expect(sortedByAcceptance([lived, open, good], [entry])).toEqual({
    open: [open],
    accepted: [{ finding: lived, reason: entry.reason, by: entry.by }],
  })
})

test('a part is as bad as the worst finding that names it', () => {
  const findings = [
    finding('aisle-width-min', 'Tight', ['rack-row-1', 'obstacle-1']),
    finding('body-overlap', 'Clash', ['rack-row-1', 'rack-row-2']),
    finding('aisle-width-min', 'Tight', ['rack-row-2']),
  ]
  const worst = worstOfParts(findings)
  expect([...worst].map(([part, f]) => [part, rankOf(f)])).toEqual([
    ['rack-row-1', 2],
    ['obstacle-1', 1],
    ['rack-row-2', 2],
  ])
})
