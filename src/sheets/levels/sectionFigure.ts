import type { Words } from '../../checks/context'
import { onPaper, type PageItem } from '../../drawing/page'
import { textWidth } from '../../drawing/lettering'
import type { Evaluation } from '../../evaluate/evaluation'
import type { LongCut } from '../../evaluate/longCut/section'
import { levelReading } from '../../layout/levelReading'
import type { Units } from '../../units/length'
import { clearWords } from '../clearWords'
import { lettered, LETTERS } from '../ink'
import type { Drawn, FigurePiece } from '../piece'
import { pitDrawn } from './pitFigure'
import { bandPegs, bandsUnder, HEAD_OF_BANDS_MM } from './sectionBands'
import { groundMarks } from './sectionGround'
import { pitLevelWords, pitMarks } from './sectionPit'
import { RULE_MM, ruleMarks } from './sectionRule'
import { sectionView, TIMES } from './sectionView'
import { holesHeight, holeWords, innerWords } from './sectionWords'

interface Room {
  readonly widthMm: number
  readonly heightMm: number
}

/** A section lower than this would be a line; the table under it gives way first. */
const SHORT_ROOM_MM = 165
/** From the section to the words of the pit's levels, and what follows them. */
const BESIDE_PIT_MM = 10

const rightRoom = (cut: LongCut, write: Words): number =>
  cut.pit
    ? BESIDE_PIT_MM +
      Math.max(...pitLevelWords(cut.pit, write).map(({ text }) => textWidth(text, LETTERS.body)))
    : 4

/** A ratio without a tail of decimals. */
const ratioWords = (ratio: number): string => `1:${Math.round(ratio * 100) / 100}`

interface Section {
  readonly plan: Evaluation
  readonly cut: LongCut
  readonly units: Units
  readonly write: Words
}

/** A pit beside its section needs so much width; beside a narrower one it stands on its own page alone. */
const LEAST_BESIDE_MM = 120
const APART_MM = 14

/** The pit whole and in its true shape, where a short section leaves paper beside it. */
const pitBeside = ({ plan, cut, units, write }: Section, fromMm: number, room: Room): readonly PageItem[] => {
  const built = cut.pit && plan.bay.builtOf.get(cut.pit.part)
  const leftMm = fromMm + APART_MM
  if (!built?.pit || room.widthMm - leftMm < LEAST_BESIDE_MM) return []
  const { items, heightMm, scaleWords } = pitDrawn(built, built.pit, units, write, {
    widthMm: room.widthMm - leftMm,
    heightMm: room.heightMm,
  })
  const title = `${write.name(built.part)} whole, with the lines to paint on its wall: ${scaleWords}`
  return [
    ...items.map((item) => ({ ...item, placement: { ...item.placement, xMm: leftMm } })),
    { marks: [lettered(title, { x: leftMm, y: heightMm + 4 }, LETTERS.body)], placement: onPaper },
  ]
}

const drawn = (section: Section, room: Room): Drawn => {
  const { plan, cut, units, write } = section
  const leftMm = Math.max(RULE_MM, HEAD_OF_BANDS_MM)
  const widthMm = room.widthMm - leftMm - rightRoom(cut, write)
  const pegs = bandPegs(cut, widthMm)
  const bands = bandsUnder(pegs, write, room.heightMm < SHORT_ROOM_MM)
  const overMm = holesHeight(cut, write)
  const corner = { x: leftMm, y: bands.heightMm }
  const view = sectionView(cut, { widthMm, heightMm: room.heightMm - bands.heightMm - overMm }, corner, units)
  const { bay, layout } = plan
  const reading = levelReading(layout.settings, layout.house.benchmark)
  const clear = clearWords([], view.box)
  return {
    heightMm: view.box.y1 + overMm,
    scaleWords: `lengths ${view.scale.words}, heights ${ratioWords(view.scale.ratio / TIMES)}, ${TIMES} times as large`,
    items: [
      {
        marks: [
          ...groundMarks(cut, view, (part) => bay.levels.drains.get(part)),
          ...pitMarks(cut, view, write),
          ...ruleMarks(view, units, reading, write),
          ...holeWords(cut, view, write),
          ...bands.draw(view),
          ...innerWords(cut, view, write, clear),
        ],
        placement: onPaper,
      },
      ...pitBeside(section, view.box.x1 + rightRoom(cut, write), room),
    ],
  }
}

const READ =
  'seen from the side, high end left. Lines from the top: floor, crown of the pipe, invert, underside, bottom of the dig with its sand. ' +
  'Wedges are pegs, arrows are holes, dark bands are bells; the chain line is the datum'

/** The long section of a drain down to its pit, to stated scales. */
export const sectionFigure = (section: Section): FigurePiece => ({
  as: 'figure',
  caption: `${section.write.name(section.cut.along)} ${READ}`,
  draw: (room) => drawn(section, room),
})
