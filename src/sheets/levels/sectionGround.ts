import { groundAt } from '../../evaluate/longCut/groundAt'
import type { CutDrain, CutLevel, CutPeg, LongCut } from '../../evaluate/longCut/section'
import type { DrainRun } from '../../model/levels'
import type { Mark } from '../../model/drawing'
import { discMark, flat, lineMark } from '../../parts/marks'
import { dropOver } from '../../units/slope'
import { ruled, shaped } from '../ink'
import { floorBetween, type SectionView, slopeOver } from './sectionView'

const line = (
  { at }: SectionView,
  levels: readonly CutLevel[],
  pen: 'outline' | 'hidden' | 'steel' | 'timber',
): Mark => ({
  as: 'path',
  pen,
  wash: 'none',
  points: flat(levels.map(at)),
  closed: false,
})

const EARTH_EVERY_MM = 11
const EARTH_MM = 1.8

/** Three short slanting strokes under a line now and then: cut earth, by the public convention. */
const earthUnder = (view: SectionView, from: CutLevel, to: CutLevel): Mark[] => {
  const [a, b] = [view.at(from), view.at(to)]
  const count = Math.floor((b.x - a.x) / EARTH_EVERY_MM)
  return Array.from({ length: count }, (_, group) => group).flatMap((group) =>
    [0, 1.3, 2.6].map((step) => {
      const x = a.x + (group + 0.5) * EARTH_EVERY_MM + step
      const y = a.y + ((b.y - a.y) * (x - a.x)) / (b.x - a.x)
      return ruled({ x, y }, { x: x - EARTH_MM, y: y - EARTH_MM }, 'dimension')
    }),
  )
}

/** The floor, but for the mouth of the pit. */
export const floorMarks = (cut: LongCut, view: SectionView): Mark[] => {
  const { pit, endMm } = cut
  const spans = pit
    ? [
        [0, pit.fromMm],
        [pit.toMm, endMm],
      ]
    : [[0, endMm]]
  return spans
    .filter(([from = 0, to = 0]) => to > from)
    .map(([from = 0, to = 0]) => line(view, floorBetween(cut, from, to), 'outline'))
}

/** A line that lies over the floor all the way has no trench. */
export const isBuried = (cut: LongCut, { fromMm, toMm, highInvertMm, lowInvertMm }: CutDrain): boolean =>
  highInvertMm < groundAt(cut, fromMm) || lowInvertMm < groundAt(cut, toMm)

const trenchMarks = (cut: LongCut, drain: CutDrain, view: SectionView): Mark[] => {
  if (!isBuried(cut, drain)) return []
  const under = slopeOver(drain, -drain.wallMm)
  const bottom = slopeOver(drain, -drain.wallMm - drain.bedMm)
  const [high, low] = bottom
  return [
    shaped([...under, ...bottom.toReversed()].map(view.at), 'none', 'house'),
    line(view, bottom, 'outline'),
    ruled(view.at(high), view.at({ ...high, levelMm: groundAt(cut, high.sMm) }), 'outline'),
    ...earthUnder(view, high, low),
  ]
}

/** A bell stands out so far over and under its pipe, and is so long, mm of paper. */
const BELL = { overMm: 1.2, halfMm: 1.1 }

/** Where the bells of a stretch's sticks lie, from the high end of its line. */
const bellMarks = (drain: CutDrain, { bellsMm }: DrainRun, view: SectionView): Mark[] =>
  bellsMm
    .map((mm) => drain.fromMm + mm - drain.alongMm)
    .filter((sMm) => sMm > drain.fromMm && sMm < drain.toMm)
    .map((sMm) => {
      const invertMm = drain.highInvertMm - dropOver(sMm - drain.fromMm, drain.slopeMmPerM)
      const x = view.xOf(sMm)
      const [low, high] = [view.yOf(invertMm - drain.wallMm), view.yOf(invertMm - drain.wallMm + drain.odMm)]
      const box = [
        { x: x - BELL.halfMm, y: low - BELL.overMm },
        { x: x + BELL.halfMm, y: low - BELL.overMm },
        { x: x + BELL.halfMm, y: high + BELL.overMm },
        { x: x - BELL.halfMm, y: high + BELL.overMm },
      ]
      return shaped(box, 'steel', 'steel')
    })

/** The pipe between crown and underside, its invert a line of its own, and where other lines come in. */
const pipeMarks = (drain: CutDrain, view: SectionView): Mark[] => {
  const crown = slopeOver(drain, drain.odMm - drain.wallMm)
  const under = slopeOver(drain, -drain.wallMm)
  return [
    shaped([...crown, ...under.toReversed()].map(view.at), 'steel', 'drain'),
    line(view, slopeOver(drain, 0), 'steel'),
    ...drain.branches.map(({ sMm, invertMm, odMm }) =>
      discMark(view.at({ sMm, levelMm: invertMm + odMm / 2 }), 1.6, 'steel', 'paper'),
    ),
  ]
}

/** A peg is knocked so far into the floor as it is drawn, mm of paper. */
const PEG_FOOT_MM = 4
const PEG_HALF_MM = 0.7

const pegMark = ({ sMm, groundMm, pegTopMm }: CutPeg, view: SectionView): Mark => {
  const x = view.xOf(sMm)
  const [top, foot] = [view.yOf(pegTopMm), view.yOf(groundMm) - PEG_FOOT_MM]
  return shaped(
    [
      { x: x - PEG_HALF_MM, y: top },
      { x: x + PEG_HALF_MM, y: top },
      { x, y: foot },
    ],
    'timber',
    'timber',
  )
}

/** Over a line that lies on the floor the tube comes from the top of the drawing. */
const dropsFrom = (groundMm: number, crownMm: number, { highMm }: SectionView): number =>
  groundMm > crownMm ? groundMm : highMm

/** A hole on the crown: the tube that drops into it, from over the floor. */
const holeMarks = (cut: LongCut, view: SectionView): Mark[] =>
  cut.outlets.map(({ sMm, drainCrownMm }) =>
    lineMark(
      [
        view.at({ sMm, levelMm: dropsFrom(groundAt(cut, sMm), drainCrownMm, view) }),
        view.at({ sMm, levelMm: drainCrownMm }),
      ],
      'water',
      'end',
    ),
  )

/** A buried line, end on: a ring with a cross in it. */
const serviceMarks = ({ services }: LongCut, view: SectionView): Mark[] =>
  services
    .filter(({ levelMm }) => levelMm > view.lowMm)
    .flatMap((service) => {
      const { x, y } = view.at(service)
      return [
        discMark({ x, y }, 1.8, 'must-fix', 'paper'),
        ruled({ x: x - 1.2, y: y - 1.2 }, { x: x + 1.2, y: y + 1.2 }, 'must-fix'),
        ruled({ x: x - 1.2, y: y + 1.2 }, { x: x + 1.2, y: y - 1.2 }, 'must-fix'),
      ]
    })

const footingMarks = ({ footings }: LongCut, view: SectionView): Mark[] =>
  footings.map(({ fromMm, toMm, topMm, bottomMm, asideMm }) => {
    const low = Math.max(bottomMm, view.lowMm)
    const corner = (sMm: number, levelMm: number) => view.at({ sMm, levelMm })
    const outline = [corner(fromMm, low), corner(toMm, low), corner(toMm, topMm), corner(fromMm, topMm)]
    return shaped(outline, asideMm > 0 ? 'hidden' : 'outline', asideMm > 0 ? 'none' : 'post')
  })

/** All that lies in the ground and on it, but for the pit. `runOf` gives a drain's run. */
export const groundMarks = (
  cut: LongCut,
  view: SectionView,
  runOf: (part: string) => DrainRun | undefined,
): Mark[] => [
  ...cut.drains.flatMap((drain) => trenchMarks(cut, drain, view)),
  ...footingMarks(cut, view),
  ...floorMarks(cut, view),
  ...cut.drains.flatMap((drain) => {
    const run = runOf(drain.part)
    return [...pipeMarks(drain, view), ...(run ? bellMarks(drain, run, view) : [])]
  }),
  ...holeMarks(cut, view),
  ...cut.drains.flatMap((drain) => drain.pegs.map((peg) => pegMark(peg, view))),
  ...serviceMarks(cut, view),
]
