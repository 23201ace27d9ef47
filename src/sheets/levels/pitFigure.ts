import type { Words } from '../../checks/context'
import { fitScale } from '../../drawing/paper'
import { onPaper } from '../../drawing/page'
import { textWidth } from '../../drawing/lettering'
import { namedMarks, type PaintMark } from '../../evaluate/returns/pitTable'
import { boxOf } from '../../geometry/box'
import type { Built } from '../../model/built'
import type { Mark } from '../../model/drawing'
import type { PitFacts } from '../../model/pitFacts'
import type { Units } from '../../units/length'
import { lettered, LETTERS, ruled, shaped } from '../ink'
import type { Drawn, FigurePiece } from '../piece'
import { capital } from './capital'
import { stackedUp } from './sectionPit'

const MOST_HEIGHT_MM = 70
/** Share of the page that a pit takes at most, so that its table stands with it. */
const MOST_SHARE = 0.4
const LEFT_MM = 8
const LEADER_MM = 12
const FOOT_MM = 4

interface Sides {
  readonly topMm: number
  readonly bottomMm: number
}

/** Width of a pit at its rim and at its bottom, along its longer side, mm. */
const sidesOf = ({ bodies }: Built, { basin }: PitFacts): Sides => {
  const body = bodies.find(({ role }) => role === 'pit')
  if (basin.shape === 'round') return { topMm: basin.diameterMm, bottomMm: basin.diameterMm }
  if (basin.shape === 'sloped')
    return {
      topMm: Math.max(basin.topLengthMm, basin.topWidthMm),
      bottomMm: Math.max(basin.bottomLengthMm, basin.bottomWidthMm),
    }
  if (!body) return { topMm: basin.lengthMm, bottomMm: basin.lengthMm }
  const { x0, y0, x1, y1 } = boxOf(body.outline)
  const topMm = Math.max(x1 - x0, y1 - y0)
  return { topMm, bottomMm: topMm }
}

const markWords = ({ titles, levelMm, litres }: PaintMark, rimMm: number, write: Words): string =>
  `${capital(titles.join(', '))}: ${write.level(levelMm)}, ${write.onTape(rimMm - levelMm)} down, ${write.volume(litres)}`

const wordsMm = (marks: readonly PaintMark[], rimMm: number, write: Words): number =>
  Math.max(0, ...marks.map((mark) => textWidth(markWords(mark, rimMm, write), LETTERS.body)))

/** A pit as it lies in its room. */
export const pitDrawn = (
  built: Built,
  pit: PitFacts,
  units: Units,
  write: Words,
  room: { widthMm: number; heightMm: number },
): Drawn => {
  const marks = namedMarks(pit)
  const [first] = marks
  const topLevelMm = first ? first.levelMm : pit.rimMm
  const sides = sidesOf(built, pit)
  const deepMm = Math.max(1, topLevelMm - pit.bottomMm)
  const scale = fitScale(
    { widthMm: sides.topMm, heightMm: deepMm },
    {
      widthMm: room.widthMm - LEFT_MM - LEADER_MM - wordsMm(marks, pit.rimMm, write),
      heightMm: Math.min(MOST_HEIGHT_MM, room.heightMm * MOST_SHARE) - 2 * FOOT_MM,
    },
    units,
  )
  const { ratio } = scale
  const [wide, foot] = [sides.topMm / ratio, FOOT_MM]
  const inset = (sides.topMm - sides.bottomMm) / ratio / 2
  const yOf = (levelMm: number) => foot + (levelMm - pit.bottomMm) / ratio
  const insetAt = (levelMm: number) => inset * (1 - (levelMm - pit.bottomMm) / deepMm)
  const wanted = marks.map(({ levelMm }) => yOf(levelMm))
  const places = stackedUp(wanted, foot)
  const runningAt = insetAt(pit.runningMm)
  const lines = marks.flatMap((mark, i): Mark[] => {
    const [y, at, off] = [wanted[i] ?? 0, places[i] ?? 0, insetAt(mark.levelMm)]
    const wall = LEFT_MM + wide - off
    return [
      ruled(
        { x: LEFT_MM + off, y },
        { x: wall, y },
        mark.titles.includes('running level') ? 'water' : 'dimension',
      ),
      ruled({ x: wall, y }, { x: LEFT_MM + wide + LEADER_MM - 1, y: at }, 'dimension'),
      lettered(markWords(mark, pit.rimMm, write), { x: LEFT_MM + wide + LEADER_MM, y: at }, LETTERS.body),
    ]
  })
  const corner = (off: number, levelMm: number, isFar: boolean) => ({
    x: isFar ? LEFT_MM + wide - off : LEFT_MM + off,
    y: yOf(levelMm),
  })
  return {
    heightMm: Math.max(yOf(topLevelMm), places[0] ?? 0) + FOOT_MM,
    scaleWords: scale.words,
    ratio: scale.ratio,
    items: [
      {
        marks: [
          shaped(
            [
              corner(inset, pit.bottomMm, false),
              corner(inset, pit.bottomMm, true),
              corner(runningAt, pit.runningMm, true),
              corner(runningAt, pit.runningMm, false),
            ],
            'none',
            'pit',
          ),
          ruled(corner(0, topLevelMm, false), corner(inset, pit.bottomMm, false), 'wall'),
          ruled(corner(inset, pit.bottomMm, false), corner(inset, pit.bottomMm, true), 'wall'),
          ruled(corner(inset, pit.bottomMm, true), corner(0, topLevelMm, true), 'wall'),
          ...lines,
        ],
        placement: onPaper,
      },
    ],
  }
}

/** A pit across with the lines that are painted on its wall: level, how far down from the rim, what stands under it. */
export const pitFigure = (built: Built, pit: PitFacts, units: Units, write: Words): FigurePiece => ({
  as: 'figure',
  caption: `${write.name(built.part)}: lines to paint on its wall, each as far down from the rim as it says, with what stands under it`,
  draw: (room) => pitDrawn(built, pit, units, write, room),
})
