import type { Words } from '../../checks/context'
import { groundAt } from '../../evaluate/longCut/groundAt'
import type { CutOutlet, LongCut } from '../../evaluate/longCut/section'
import type { Mark, TextMark } from '../../model/drawing'
import { textWidth } from '../../drawing/lettering'
import { type ClearWords, textBox } from '../clearWords'
import { lettered, LETTERS, ruled } from '../ink'
import { spread } from '../spread'
import { isBuried } from './sectionGround'
import { digBottom, type SectionView } from './sectionView'

const APART_MM = 3.7
/** From the top of the section to the names over it. */
const FAN_MM = 6

/** Holes at one place share their words. */
const holesAt = (outlets: readonly CutOutlet[]): readonly (readonly CutOutlet[])[] => {
  const places: CutOutlet[][] = []
  for (const outlet of outlets) {
    const last = places.at(-1)
    if (last?.[0] && Math.abs(last[0].sMm - outlet.sMm) < 1) last.push(outlet)
    else places.push([outlet])
  }
  return places
}

const holeText = (outlets: readonly CutOutlet[], { name }: Words): string =>
  outlets.map(({ part, line }) => (line > 0 ? `${name(part)} line ${line}` : name(part))).join(', ')

/** Paper that the names of the holes take over the section, mm. */
export const holesHeight = ({ outlets }: LongCut, write: Words): number =>
  outlets.length === 0
    ? 2
    : FAN_MM + 2 + Math.max(...holesAt(outlets).map((hole) => textWidth(holeText(hole, write), LETTERS.body)))

/** Whose outlet drops in at each hole, upright over the section, with a line down to it. */
export const holeWords = (cut: LongCut, view: SectionView, write: Words): Mark[] => {
  const holes = holesAt(cut.outlets)
  const xs = spread(
    holes.map(([first]) => view.xOf(first?.sMm ?? 0)),
    APART_MM,
  )
  return holes.flatMap((hole, i) => {
    const sMm = hole[0]?.sMm ?? 0
    const [x, at] = [view.xOf(sMm), xs[i] ?? 0]
    const top = view.box.y1
    return [
      ruled({ x, y: view.yOf(groundAt(cut, sMm)) }, { x, y: top }, 'grid'),
      ruled({ x, y: top }, { x: at, y: top + FAN_MM - 1 }, 'dimension'),
      lettered(holeText(hole, write), { x: at, y: top + FAN_MM }, LETTERS.body, { upright: true }),
    ]
  })
}

/** Lines of words under a place, then over it. */
const ROWS = [0, 1, 2, 3, -3, -4]
const ASIDES = [0, -14, 14, -28, 28]
/** Never across the wall that they end at. */
const LEFT_OF_WALL = [0, -14, -28]

/** Places under each other and a little aside, the best first. */
const tries = (mark: TextMark, stepMm: number, asides: readonly number[] = ASIDES): TextMark[] =>
  ROWS.flatMap((row) =>
    asides.map((aside) => ({
      ...mark,
      at: { x: mark.at.x + aside, y: mark.at.y + row * stepMm },
    })),
  )

const fallText = (cut: LongCut, index: number, { name, fall, length }: Words): string => {
  const drain = cut.drains[index]
  if (!drain) return ''
  const way = drain.slopeMmPerM >= 0 ? 'falls' : 'climbs'
  return `${name(drain.part)} ${way} ${fall(Math.abs(drain.slopeMmPerM))} over ${length(drain.toMm - drain.fromMm)}`
}

const fallWords = (cut: LongCut, view: SectionView, words: Words): TextMark[][] =>
  cut.drains.map((drain, i) => {
    const sMm = (drain.fromMm + drain.toMm) / 2
    const under = isBuried(cut, drain)
      ? digBottom(drain, (drain.highInvertMm + drain.lowInvertMm) / 2)
      : (drain.highInvertMm + drain.lowInvertMm) / 2 - drain.wallMm
    const { x, y } = view.at({ sMm, levelMm: under })
    return tries(
      lettered(fallText(cut, i, words), { x, y: y - 5 }, LETTERS.heading, { anchor: 'middle' }),
      -3.6,
    )
  })

const groundWords = (cut: LongCut, view: SectionView, { name, onTape }: Words): TextMark[][] => [
  ...cut.services.map(({ name: service, sMm, levelMm }) => {
    const { x, y } = view.at({ sMm, levelMm: Math.max(levelMm, view.lowMm) })
    const text = `${service}, ${onTape(groundAt(cut, sMm) - levelMm)} deep`
    return tries(lettered(text, { x, y: y - 4 }, LETTERS.body, { pen: 'must-fix', anchor: 'middle' }), -3.4)
  }),
  ...cut.footings.map(({ part, fromMm, toMm, topMm, asideMm }) => {
    const { x, y } = view.at({ sMm: (fromMm + toMm) / 2, levelMm: topMm })
    const text = asideMm > 0 ? `${name(part)}, ${onTape(asideMm)} aside` : name(part)
    return tries(lettered(text, { x, y: y - 4 }, LETTERS.body, { anchor: 'middle' }), -3.4)
  }),
  ...cut.drains.flatMap(({ branches }) =>
    branches.map(({ part, sMm, invertMm }) => {
      const { x, y } = view.at({ sMm, levelMm: invertMm })
      return tries(
        lettered(`${name(part)} comes in`, { x, y: y - 5 }, LETTERS.body, { anchor: 'middle' }),
        -3.4,
      )
    }),
  ),
]

/** The inlet beside the wall of the pit. */
const inletWords = (cut: LongCut, view: SectionView, { level }: Words): TextMark[][] => {
  const last = cut.drains.at(-1)
  if (!cut.pit || !last) return []
  const { x, y } = view.at({ sMm: cut.pit.fromMm, levelMm: digBottom(last, last.lowInvertMm) })
  return [
    tries(
      lettered(`Inlet ${level(last.lowInvertMm)}`, { x: x - 2, y: y - 3 }, LETTERS.body, { anchor: 'end' }),
      -3.4,
      LEFT_OF_WALL,
    ),
  ]
}

/** Words within the section, each where it is clear of the others. */
export const innerWords = (cut: LongCut, view: SectionView, words: Words, clear: ClearWords): Mark[] =>
  [...fallWords(cut, view, words), ...inletWords(cut, view, words), ...groundWords(cut, view, words)].flatMap(
    (places) => clear.first(places, (mark) => [textBox(mark, 1)]) ?? [],
  )
