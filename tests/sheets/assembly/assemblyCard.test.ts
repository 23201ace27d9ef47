import { describe, expect, test } from 'vitest'
import { evaluate } from '../../../src/evaluate/evaluate'
import type { Layout } from '../../../src/layout/schema'
import { assemblyCard } from '../../../src/sheets/assembly/assemblyCard'
import { type Piece, tablesIn } from '../../../src/sheets/piece'
import type { SheetOptions } from '../../../src/sheets/sheet'
import { bay } from '../../support/bay'
import { scenarios } from '../../support/scenarios'

const options: SheetOptions = {
  paper: 'letter',
  orientation: 'auto',
  scale: 'fit',
  units: 'feet-inches',
  dateText: '1 May 2027',
  issue: '1',
}

const piecesOf = (layout: Layout, more: Partial<SheetOptions> = {}): readonly Piece[] =>
  assemblyCard.pieces({ now: evaluate(layout), issued: undefined }, { ...options, ...more })

const threeRacks = () => bay('40 x 60 ft').row('N1', [200, 60], { racks: 3 }).layout()

const stepsIn = (pieces: readonly Piece[]): readonly string[] =>
  pieces.flatMap((piece) => (piece.as === 'steps' ? piece.steps.map(({ text }) => text) : []))

const table = (pieces: readonly Piece[], id: string) => {
  const found = tablesIn(pieces).find((each) => each.id === id)
  if (!found) throw new RangeError(`The card has no table ${id}.`)
  return found
}

const texts = (pieces: readonly Piece[], id: string): string[] =>
  table(pieces, id).rows.map(({ cells }) => cells.map(({ text }) => text).join(' | '))

describe('the card of the high rack of three', () => {
  const pieces = piecesOf(threeRacks())

  // Rails 120 whole, bars 57, cross-pieces, ties and braces 43-1/2 at one stop, risers halves of 144 less a kerf of 1/8:
  // worked example of the trade notes.
  test('lists its members as they are picked up', () => {
    expect(texts(pieces, 'members-rack-row-1-1')).toEqual([
      'RS-p | Riser, plain hole | 2x4 lumber | 71-15/16" | 8 | halve a 12 ft board | foot square and painted',
      'BX | Base cross-piece | 2x4 lumber | 43-1/2" | 4 | measure | square',
      'TT | Top tie | 2x4 lumber | 43-1/2" | 4 | measure | square',
      'SB | Side brace | 2x4 lumber | 43-1/2" | 2 | measure | square',
      'XB | Cross brace | 2x4 lumber | 43-1/2" | 1 | measure | square',
      'RL | Rail | 3/4 in thin-wall conduit | 120" | 2 | whole 10 ft stick | deburred, 2 capped',
      'HB | Hanger bar | 3/4 in thin-wall conduit | 57" | 8 | measure | deburred, 16 capped',
    ])
  })

  // 3 screws a joint: a pair has 2 joints of its cross-piece, 2 of its tie and 2 with the runners, 18 in all; 6 a brace. Four
  // pairs and three braces: 4 x 18 + 3 x 6 = 90. Hand arithmetic.
  test('screws 90 times', () => {
    const rows = table(pieces, 'joints-rack-row-1-1').rows
    const screws = rows.filter(({ key }) => key.endsWith('/screw')).map(({ cells }) => cells[5]!.value)
    expect(screws).toEqual([24, 24, 24, 12, 6])
    expect(rows.at(-1)).toMatchObject({ key: 'screws', isSum: true })
    expect(rows.at(-1)!.cells[5]!.value).toBe(90)
  })

  // Rails at 69-3/8 less a 3/4 in drop of the tie: 68-5/8 from the foot. 43-1/2 squared and 68-5/8 squared are 1892.25 and
  // 4709.39; their sum is 81.25 squared. Hand arithmetic.
  test('squares a frame by a diagonal that no long riser changes', () => {
    expect(stepsIn(pieces)[1]).toContain('TT with its top edge 68-5/8" from the feet')
    expect(stepsIn(pieces)[2]).toContain('both diagonals read 81-1/4"')
  })

  // An end inset of 2-1/8 in, then 30 in apart; bars half a pitch of 15 in from the rack line: 7-1/2 less 2-1/8. Hand arithmetic.
  test('stands its frames and spaces its bars from the high end', () => {
    const steps = stepsIn(pieces)
    expect(steps[3]).toContain('2-1/8", 30", 60", 90" from the rack’s high line')
    expect(steps.find((text) => text.startsWith('HB'))).toContain('the first 5-3/8" from the middle')
    expect(steps.find((text) => text.startsWith('HB'))).toContain('every 15", 8-1/2" past each rail')
  })

  // Nodes 26 in along and 30-3/8 in up, 49-1/2 degrees: worked example of the trade notes.
  test('places the side braces', () => {
    expect(stepsIn(pieces)[6]).toContain('from the runner 26" in from the riser to 30-3/8" higher')
  })

  test('a middle rack brings the sleeves that its first risers hold', () => {
    expect(texts(pieces, 'members-rack-row-1-2')).toContain(
      'SV | Sleeve | 1 in thin-wall conduit | 8-1/4" | 2 | measure | deburred in and out',
    )
    expect(texts(pieces, 'members-rack-row-1-2')).toContain(
      'RL | Rail | 3/4 in thin-wall conduit | 119-3/4" | 2 | measure | deburred in and out',
    )
  })

  // Three lengths of 119-1/16 make 357-3/16 of the 357-1/4 that two lines of runners are long, with two joints a line and 4
  // screws on either side of each: 4 plates, 32 screws. 16 bearers, 2 screws at each runner: 64. Worked example of the trade notes.
  test('lays a base of runners, plates and bearers', () => {
    expect(texts(pieces, 'base-rack-row-1').map((row) => row.split(' | ').slice(0, 5).join(' '))).toEqual([
      'BR Base runner 2x4 lumber 119-1/16" 6',
      'SP Runner splice plate 2x4 lumber 16" 4',
      'GB Gutter bearer 2x4 lumber 59-15/16" 16',
    ])
    expect(table(pieces, 'base-joints-rack-row-1').rows.at(-1)!.cells[5]!.value).toBe(96)
  })

  // 4 towers of 25 lb a bar: 100 lb, half as much again 150; 8 bars 1,200 lb. Hand arithmetic; 25 lb assumed.
  test('is tried with half as much again as it will carry', () => {
    expect(texts(pieces, 'load-test')[0]).toMatch(/^A \| 4 \| 8 \| 25 lb \| 150 lb \| 1,200 lb \| /)
  })

  // 8 bars of 150 lb over two rails of 120 in: 600 lb a rail, 600 x 120 / 8 = 9,000 lb-in over 0.0279 in³ = 323 ksi; 30 is assumed.
  test('is not tried where its rails would fold', () => {
    const long = piecesOf(bay('40 x 60 ft').row('A', [100, 100], { midPairs: 0 }).layout())
    expect(texts(long, 'load-test')[0]).toBe(
      'A | 4 | 8 | 25 lb | nothing | nothing | too long: mend it first | too long: mend it first',
    )
  })

  test('speaks of straps, and of no riser, where the house carries it', () => {
    const hung = stepsIn(piecesOf(bay('40 x 60 ft').row('A', [100, 100], { carriedBy: 'house' }).layout()))
    expect(hung.join(' ')).not.toMatch(/riser/)
    expect(hung.join(' ')).toMatch(/Slide SV home in the shared straps;.* from strap to strap,/)
  })
})

describe('cautions', () => {
  const cautionsIn = (pieces: readonly Piece[]): string =>
    pieces
      .flatMap((piece) => {
        if (piece.as === 'words') return piece.tone === 'caution' ? [piece.text] : []
        return piece.as === 'steps' ? piece.steps.map(({ caution }) => caution ?? '') : []
      })
      .join(' ')

  test('of the rack stand on the card, at the step where there is one', () => {
    const words = cautionsIn(piecesOf(threeRacks()))
    for (const title of [
      'Conduit as a beam',
      'Ladders and steps',
      'Bar ends at face height',
      'Loads overhead',
    ])
      expect(words).toContain(title)
  })

  // Bars 51 in over the foot plates: under a reach of 66 in.
  test('of ladders stand on no card of low racks', () => {
    const low = bay('40 x 60 ft').row('Low', [200, 60], { racks: 1, tower: 36, riser: 50 }).layout()
    expect(cautionsIn(piecesOf(low))).not.toContain('Ladders')
  })
})

describe('the card as a whole', () => {
  test('is empty where there is no rack', () => {
    expect(piecesOf(bay('20 x 20 ft').layout())).toEqual([])
  })

  test('has tables, rows and steps with keys of their own', () => {
    const pieces = piecesOf(scenarios['old-dairy-corner']!())
    const ids = tablesIn(pieces).map(({ id }) => id)
    expect(new Set(ids).size).toBe(ids.length)
    for (const { rows, columns } of tablesIn(pieces)) {
      expect(new Set(rows.map(({ key }) => key)).size).toBe(rows.length)
      for (const { cells } of rows) expect(cells).toHaveLength(columns.length)
    }
  })

  test('says which rack goes where, rows alike in one line', () => {
    expect(texts(piecesOf(scenarios['kestrel-bend-house-2']!()), 'racks')).toEqual([
      'A B C | 3 | N1, N2, N3',
      'A C | 3 | S1, S2, S3',
    ])
  })

  test('writes no inch for a metric reader', () => {
    const pieces = piecesOf(threeRacks(), { units: 'metric', paper: 'A4' })
    expect(stepsIn(pieces).join(' ')).not.toMatch(/\d"|\blb\b/)
    const length = table(pieces, 'members-rack-row-1-1').rows[0]!.cells[3]!
    // 71-15/16 in.
    expect(length.value).toBeCloseTo(1827.2125, 6)
    expect(length.text).toBe('1827 mm')
  })
})
