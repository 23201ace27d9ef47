import type { Finding } from '../model/finding'
import { boxOf, middle } from '../geometry/box'
import type { Built } from '../model/built'
import { OVERFLOW_BORES, type PitFacts } from '../model/pitFacts'
import { overflowLph } from '../solvers/gravity/overflow'
import type { PartRule } from './context'
import { flowTotalOf, found, lengthOf, term } from './found'

const RULE = 'pit-overflow-size'

/** A screen on an overflow is half shut with leaves by the time that it is wanted. Common practice, no source. */
const SCREEN_SHARE = 0.5

/** Flows closer than this share are the same. */
const CLOSE = 1e-9

const passesLph = ({ rimMm, overflowMm }: PitFacts, boreMm: number): number =>
  overflowLph(boreMm, rimMm - overflowMm)

/** The least bore that passes a flow, as the schema names it. */
const boreFor = (pit: PitFacts, wantedLph: number): string | undefined =>
  Object.entries(OVERFLOW_BORES)
    .toSorted(([, a], [, b]) => a - b)
    .find(([, boreMm]) => passesLph(pit, boreMm) >= wantedLph)?.[0]

const findingOf = ({ part, bodies }: Built, pit: PitFacts): Finding[] => {
  const outline = bodies.find(({ role }) => role === 'pit')?.outline
  const wantedLph = pit.makeUpLph / SCREEN_SHARE
  const lph = passesLph(pit, pit.overflowBoreMm)
  // Of an overflow that is not under its rim the order of the levels tells.
  if (!outline || pit.overflowMm >= pit.rimMm || lph >= wantedLph * (1 - CLOSE)) return []
  const bore = boreFor(pit, wantedLph)
  return [
    found({
      rule: RULE,
      subject: 'pit',
      state: lph >= pit.makeUpLph ? 'Thin' : 'Spills',
      parts: [part],
      at: middle(boxOf(outline)),
      measured: flowTotalOf(lph),
      limit: flowTotalOf(wantedLph),
      terms: [
        term('What the make-up valve lets in', flowTotalOf(pit.makeUpLph)),
        term('Bore of the overflow', lengthOf(pit.overflowBoreMm)),
        term('From its invert to the rim', lengthOf(pit.rimMm - pit.overflowMm)),
      ],
      ...(bore !== undefined && { mend: { kind: 'set', part, field: 'overflowBore', value: bore } }),
    }),
  ]
}

/** The overflow carries away what a stuck make-up valve lets in. */
export const pitOverflowSize: PartRule = {
  over: 'part',
  id: RULE,
  title: 'Overflow against make-up',
  limit:
    'With water up to the rim the overflow passes twice what the make-up valve lets in: as a hole under the head over its middle, coefficient 0.62, or at critical depth',
  source:
    'Hole: Encyclopaedia Britannica, 11th ed., vol. 14; critical depth: Chow, Open-channel hydraulics (1959); a screen half shut is common practice, no source',
  mending:
    'Give the pit a wider overflow, one size over its make-up line at least, or a smaller make-up valve.',
  check: (built) => (built.pit ? findingOf(built, built.pit) : []),
  say: ({ parts, measured, limit }, { flowTotal, name }) =>
    `The overflow of ${name(parts[0] ?? '')} passes ${flowTotal(measured.value)}; against a stuck make-up valve it wants ${flowTotal(limit.value)}, half of it for a screen with leaves on it.`,
}
