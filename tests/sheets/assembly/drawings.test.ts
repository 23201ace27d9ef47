import { describe, expect, test } from 'vitest'
import { evaluate } from '../../../src/evaluate/evaluate'
import type { Evaluation } from '../../../src/evaluate/evaluation'
import type { Layout } from '../../../src/layout/schema'
import { assemblyCard } from '../../../src/sheets/assembly/assemblyCard'
import { rackKinds } from '../../../src/sheets/assembly/kinds'
import { pagesOf } from '../../../src/sheets/pagesOf'
import type { FigurePiece, Piece } from '../../../src/sheets/piece'
import type { SheetOptions } from '../../../src/sheets/sheet'
import { inches } from '../../../src/units/length'
import { bay } from '../../support/bay'
import { brokenLaws } from '../../support/pageLaws'
import { fromShelf, row } from '../../support/rackRows'

type Row = Parameters<typeof row>[0]

const bayOf = (more: Row): Layout => ({
  ...bay('60 x 300 ft').layout(),
  parts: [row({ at: { x: inches(300), y: inches(100) }, ...more })],
})

const low: Layout = {
  ...bay('60 x 60 ft').layout(),
  parts: [{ ...fromShelf('low-rack'), at: { x: inches(300), y: inches(100) } }],
}

const rows: Readonly<Record<string, Layout>> = {
  'three default racks': bayOf({ racks: 3 }),
  'a low rack': low,
  'one short rack with few risers': bayOf({
    racks: 1,
    rackLengthMm: inches(48),
    barsPerRack: 4,
    midPairs: 0,
  }),
  'one line on narrow rails': bayOf({ racks: 2, lines: 1, railSpacingMm: inches(12) }),
  'wide, with many bars': bayOf({ racks: 2, barsPerRack: 12, lineSpacingMm: inches(30), midPairs: 4 }),
  'short towers': bayOf({ racks: 2, towerMm: inches(24) }),
  'tall towers': bayOf({ racks: 2, towerMm: inches(96) }),
  'raised bearers': bayOf({ racks: 2, bearerTopMm: inches(30) }),
  'no foot plates': bayOf({ racks: 2, footPlateMm: 0, joint: 'J3' }),
  'a long row': bayOf({ racks: 12 }),
}

const options = (units: SheetOptions['units']): SheetOptions => ({
  paper: units === 'metric' ? 'A4' : 'letter',
  orientation: 'auto',
  scale: 'fit',
  units,
  dateText: '1 May 2027',
  issue: '1',
})

const isFigure = (piece: Piece): piece is FigurePiece => piece.as === 'figure'

/** Words of the two drawings of each kind of rack. */
const drawnWords = (
  now: Evaluation & Parameters<typeof assemblyCard.pieces>[0]['now'],
): readonly ReadonlySet<string>[] => {
  const figures = assemblyCard.pieces({ now, issued: undefined }, options('feet-inches')).filter(isFigure)
  const texts = figures.map(({ draw }) =>
    draw({ widthMm: 190, heightMm: 220 }).items.flatMap(({ marks }) =>
      marks.flatMap((mark) => (mark.as === 'text' ? [mark.text] : [])),
    ),
  )
  return texts.flatMap((side, index) =>
    index % 2 === 0 ? [new Set([...side, ...(texts[index + 1] ?? [])])] : [],
  )
}

describe.each(Object.entries(rows))('drawings of %s', (_, layout) => {
  const now = evaluate(layout)

  test('ring the mark of every member of every kind', () => {
    const drawn = drawnWords(now)
    const kinds = rackKinds(now)
    expect(drawn).toHaveLength(kinds.length)
    kinds.forEach(({ first }, index) => {
      for (const { stick } of first.members) expect([...drawn[index]!]).toContain(stick.mark)
    })
  })

  test('lie on their pages with no words on words', () => {
    for (const units of ['feet-inches', 'metric'] as const) {
      const pages = pagesOf(assemblyCard, { now, issued: undefined }, options(units))
      expect(brokenLaws(pages, assemblyCard, layout.title, options(units))).toEqual([])
    }
  })
})

// The end riser stands 2-1/8 in from the rack line and 30 in are drawn at 1:24: 1.25 in of paper. Hand arithmetic.
test('are to scale: riser middles that are 30 in apart are 30 in apart', () => {
  const figure = assemblyCard
    .pieces({ now: evaluate(rows['three default racks']!), issued: undefined }, options('feet-inches'))
    .find(isFigure)!
  const { items, scaleWords } = figure.draw({ widthMm: 190, heightMm: 220 })
  expect(scaleWords).toContain('1:24')
  const thirty = items
    .flatMap(({ marks }) => marks)
    .flatMap((mark) => (mark.as === 'text' && mark.text === '30"' ? [mark.at.x] : []))
  expect(thirty).toHaveLength(3)
  expect(thirty[1]! - thirty[0]!).toBeCloseTo(inches(1.25), 6)
})
