import { placeOfSpot } from '../../checks/rowPlace'
import { strengthOf } from '../../evaluate/5-loads'
import type { Evaluation } from '../../evaluate/evaluation'
import { boxOf, grown, type Box } from '../../geometry/box'
import type { Point } from '../../geometry/point'
import type { PartId } from '../../model/ids'
import type { RackFacts } from '../../model/rackFacts'
import { rememberEach } from '../../model/remember'
import type { RailLine, RailSpan, RowStrength } from '../../model/strength'

/** One span or overhang of a rail, on the floor. */
export interface PlacedSpan {
  readonly from: Point
  readonly to: Point
  readonly rail: 'left' | 'right'
  readonly span: RailSpan
}

/** The rails of a row as the strength paint has them. */
export interface RowSpans {
  readonly part: PartId
  readonly strength: RowStrength
  readonly spans: readonly PlacedSpan[]
  readonly box: Box
}

const placed = (rack: RackFacts, { v, spans }: RailLine): PlacedSpan[] =>
  spans.map((span) => ({
    from: placeOfSpot(rack, { u: span.fromU, v }),
    to: placeOfSpot(rack, { u: span.toU, v }),
    rail: v < 0 ? 'left' : 'right',
    span,
  }))

/** A row's spans, remembered while it carries what it did: its strength is a new object whenever it or its place changes. */
const spansOf = rememberEach<RowStrength, RackFacts, RowSpans>((strength, rack) => {
  const spans = strength.rails.flatMap((rail) => placed(rack, rail))
  const ends = spans.flatMap(({ from, to }) => [from, to])
  return { part: strength.part, strength, spans, box: grown(boxOf(ends), 1) }
})

/** All rows whose rails are screened. */
export const strengthSpans = ({ bay }: Evaluation): readonly RowSpans[] =>
  [...strengthOf(bay).values()].flatMap((strength) => {
    const rack = bay.builtOf.get(strength.part)?.rack
    return rack && strength.rails.some(({ spans }) => spans.length > 0) ? [spansOf(strength, rack)] : []
  })
