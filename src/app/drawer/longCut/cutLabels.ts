import type { CutDrain, CutOutlet, LongCut } from '../../../evaluate/longCut/section'
import { dropOver } from '../../../units/slope'
import type { Writer } from '../../../units/writer'
import { groundAt } from '../../../evaluate/longCut/groundAt'
import { digsOf } from './dig'
import type { CutScale } from './cutScale'
import { FALL_GRIP_PX } from './grips'
import type { Label, Rect } from './labelPlaces'

interface LabelWords {
  readonly name: (part: string) => string
  readonly writer: Writer
}

/** Stub of a tower over its tip and a hand's breadth over that, px. */
const OVER_TIP_PX = 26

/** Under the trench, px down to a base line: numbers of pegs, then names of drains and inlets. */
const UNDER_TRENCH_PX = { peg: 13, name: 28 }

const trenchBottom = ({ wallMm, bedMm }: CutDrain, invertMm: number): number => invertMm - wallMm - bedMm

/** How full a drain runs where it is fullest, once that is known. */
const fullWords = ({ reaches }: CutDrain, { share }: Writer): string =>
  reaches.length > 0 ? `, ${share(Math.max(...reaches.map((reach) => reach.share)))} full` : ''

const drainLabel = (drain: CutDrain, { yOf, xOf }: CutScale, { name, writer }: LabelWords): Label => {
  const { part, fromMm, toMm, lowInvertMm, slopeMmPerM } = drain
  return {
    key: `drain-${part}`,
    text: `${name(part)} ${slopeMmPerM >= 0 ? 'falls' : 'climbs'} ${writer.fall(Math.abs(slopeMmPerM))}${fullWords(drain, writer)}`,
    x: xOf((fromMm + toMm) / 2),
    y: yOf(trenchBottom(drain, lowInvertMm)) + UNDER_TRENCH_PX.name,
    gives: 'down',
  }
}

/** Outlets of one row that follow each other along the section share a name. */
const rowsOver = (outlets: readonly CutOutlet[]): readonly (readonly CutOutlet[])[] => {
  const groups: CutOutlet[][] = []
  for (const outlet of outlets) {
    const last = groups.at(-1)
    if (last?.[0]?.part === outlet.part) last.push(outlet)
    else groups.push([outlet])
  }
  return groups
}

const rowLabels = (cut: LongCut, { xOf, yOf }: CutScale, { name }: LabelWords): Label[] =>
  rowsOver(cut.outlets).flatMap((group) => {
    const [first] = group
    const last = group.at(-1)
    if (!first || !last) return []
    return [
      {
        key: `row-${first.part}-${first.sMm}`,
        text: name(first.part),
        x: xOf((first.sMm + last.sMm) / 2),
        y: yOf(first.tipMm ?? first.invertMm + first.gutter.depthMm) - OVER_TIP_PX,
        gives: 'no',
      },
    ]
  })

/** Ends, bends and branches before outlets, and those before the pegs at every 10 ft. */
const pegRank = (why: readonly string[]): number =>
  why.some((each) => each === 'start' || each === 'end') ? 0 : why.includes('step') ? 2 : 1

/** The highest number says what it is a number of. */
const pegText = (number: number, pegs: CutDrain['pegs']): string =>
  pegs.every((peg) => peg.number <= number) ? `peg ${number}` : String(number)

const pegLabels = ({ drains }: LongCut, { xOf, yOf }: CutScale): Label[] =>
  drains
    .flatMap((drain) => drain.pegs.map((peg) => ({ drain, peg })))
    .toSorted((a, b) => pegRank(a.peg.why) - pegRank(b.peg.why))
    .map(({ drain, peg }) => ({
      key: `peg-${drain.part}-${peg.number}`,
      text: pegText(peg.number, drain.pegs),
      x: xOf(peg.sMm),
      y: yOf(trenchBottom(drain, peg.invertMm)) + UNDER_TRENCH_PX.peg,
      gives: 'no',
    }))

const inletLabels = (
  { pit, drains }: LongCut,
  { xOf, yOf }: CutScale,
  { name, writer }: LabelWords,
): Label[] => {
  const last = drains.at(-1)
  if (!pit || !last) return []
  return pit.inlets.map(({ part, invertMm }, index) => ({
    key: `inlet-${part}`,
    text: `${index === 0 ? 'Inlet' : name(part)} ${writer.level(invertMm)}`,
    x: xOf(pit.fromMm) - 8,
    y: yOf(trenchBottom(last, invertMm)) + UNDER_TRENCH_PX.name,
    anchor: 'end',
    gives: 'down',
  }))
}

const digLabels = (cut: LongCut, { xOf, yOf }: CutScale, { writer }: LabelWords): Label[] =>
  digsOf(cut).map(({ part, sMm, floorMm, bottomMm }) => ({
    key: `dig-${part}`,
    text: `dig ${writer.onTape(floorMm - bottomMm)}`,
    x: xOf(sMm),
    y: yOf(bottomMm) + UNDER_TRENCH_PX.peg + 3,
    gives: 'no',
  }))

/** The inlet is written beside the wall, and the drain gives way to it. */
const groundLabels = (cut: LongCut, { xOf, yOf }: CutScale, { name, writer }: LabelWords): Label[] => [
  ...cut.services.map(({ name: service, sMm, levelMm }, index): Label => ({
    key: `service-${index}`,
    text: `${service}, ${writer.onTape(groundAt(cut, sMm) - levelMm)} deep`,
    x: xOf(sMm),
    y: yOf(levelMm) + 20,
    gives: 'down',
  })),
  ...cut.footings.map(({ part, fromMm, toMm, bottomMm, asideMm }, index): Label => ({
    key: `footing-${index}`,
    text: asideMm > 0 ? `${name(part)}, ${writer.onTape(asideMm)} aside` : name(part),
    x: xOf((fromMm + toMm) / 2),
    y: yOf(bottomMm) + 14,
    gives: 'down',
  })),
  ...cut.drains.flatMap(({ branches }) =>
    branches.map(({ part, sMm, invertMm }): Label => ({
      key: `branch-${part}`,
      text: `${name(part)} comes in`,
      x: xOf(sMm),
      y: yOf(invertMm) + 26,
      gives: 'down',
    })),
  ),
]

const rowLabel = ({ row }: LongCut, { xOf, yOf }: CutScale, { name, writer }: LabelWords): Label[] => {
  const [high] = row?.inverts ?? []
  const low = row?.inverts.at(-1)
  if (!row || !high || !low) return []
  const perM = (high.levelMm - low.levelMm) / dropOver(low.sMm - high.sMm, 1)
  return [
    {
      key: 'along',
      text: `${name(row.part)}, line ${row.line}: gutter ${perM >= 0 ? 'falls' : 'climbs'} ${writer.fall(Math.abs(perM))}`,
      x: xOf(row.outletMm / 2),
      y: yOf(high.levelMm + row.depthMm) - OVER_TIP_PX - 4,
      gives: 'no',
    },
  ]
}

const foldLabel = ({ row, drains }: LongCut, { xOf, bottom }: CutScale, { name }: LabelWords): Label[] => {
  const [first] = drains
  return row && first
    ? [
        {
          key: 'fold',
          text: `turns to ${name(first.part)}`,
          x: xOf(row.outletMm) - 6,
          y: bottom + 4,
          anchor: 'end',
          gives: 'up',
        },
      ]
    : []
}

const round = (x: number, y: number, half: number): Rect => ({
  x0: x - half,
  y0: y - half,
  x1: x + half,
  y1: y + half,
})

/** What words on the section keep clear of: buried lines and branches end on, and the handles at both ends of a drain. */
export const cutTaken = ({ services, drains }: LongCut, { xOf, yOf }: CutScale): readonly Rect[] => [
  ...services.map(({ sMm, levelMm }) => round(xOf(sMm), yOf(levelMm), 6)),
  ...drains.flatMap(({ branches }) => branches.map(({ sMm, invertMm }) => round(xOf(sMm), yOf(invertMm), 6))),
  ...drains.flatMap(({ fromMm, toMm, highInvertMm, lowInvertMm }) => [
    round(xOf(fromMm), yOf(highInvertMm), 12),
    round(xOf(toMm) + FALL_GRIP_PX, yOf(lowInvertMm), 12),
  ]),
]

/** The pit, which only a mark is written into. */
export const pitTaken = ({ pit }: LongCut, { xOf, yOf }: CutScale): readonly Rect[] =>
  pit
    ? [
        {
          x0: xOf(pit.fromMm),
          y0: yOf(pit.facts.rimMm),
          x1: xOf(pit.toMm),
          y1: yOf(pit.facts.bottomMm),
        },
      ]
    : []

/** All words on the section but those of scales and of the pit's levels, the weightier first. */
export const cutLabels = (cut: LongCut, scale: CutScale, words: LabelWords): readonly Label[] => [
  ...rowLabels(cut, scale, words),
  ...rowLabel(cut, scale, words),
  ...inletLabels(cut, scale, words),
  ...digLabels(cut, scale, words),
  ...cut.drains.map((drain) => drainLabel(drain, scale, words)),
  ...groundLabels(cut, scale, words),
  ...pegLabels(cut, scale),
  ...foldLabel(cut, scale, words),
]
