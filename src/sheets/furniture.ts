import { textWidth } from '../drawing/lettering'
import type { OrientedPaper } from '../drawing/paper'
import type { Box } from '../geometry/box'
import type { Mark } from '../model/drawing'
import type { Units } from '../units/length'
import { inTrench } from '../units/precision'
import { writerFor } from '../units/writer'
import { checkBar, checkLength } from './bars'
import { type Block, gap, paragraph, stacked } from './block'
import { FOOTER } from './cautions'
import { LEADING, lettered, LETTERS, panel, ruled } from './ink'
import { isCard, type PaperSizes, sizesOn } from './letterSizes'
import type { Cell } from './titleBlock'

/** What the title block of a paper says. */
export interface Identity {
  readonly bay: string
  readonly place: string
  /** Title with code: `Saw list (SL)`. */
  readonly sheet: string
  readonly reader: string
  readonly issue: string
  readonly dateText: string
  readonly units: Units
}

/** What differs from one page of a paper to the next. */
export interface PageOf {
  readonly number: number
  readonly count: number
  readonly scaleWords: string
}

/** The standing parts of every page of one paper: frame, title block, check bar, footer. Boxes in mm of paper. */
export interface Furniture {
  /** For what the paper says. */
  readonly room: Box
  readonly draw: (page: PageOf) => Mark[]
}

const CHECK_MM = 8
const LABEL_MM = 2.1
const CELL_INSET_MM = 1.6
/** Room for what is not known before pages are counted and figures drawn. */
const ANY_PAGE = '888 of 888'
const ANY_SCALE = 'by each drawing'
const MANY_SCALES = ANY_SCALE

export const unitsInWords = (units: Units): string => (units === 'metric' ? 'Millimetres' : 'Feet and inches')

const cellsOf = (identity: Identity, paper: OrientedPaper, page: PageOf | undefined): readonly Cell[] => {
  const many = [
    { label: 'Scale', text: page?.scaleWords ?? ANY_SCALE },
    { label: 'Paper', text: paper.title },
  ]
  return [
    { label: 'Issue', text: identity.issue },
    { label: 'Date', text: identity.dateText },
    { label: 'Held by', text: identity.reader },
    { label: 'Units', text: unitsInWords(identity.units) },
    ...(isCard(paper.name) ? [] : many),
    { label: 'Page', text: page === undefined ? ANY_PAGE : `${page.number} of ${page.count}` },
  ]
}

const cellWidth = ({ label, text }: Cell): number =>
  Math.max(textWidth(label, LABEL_MM), textWidth(text, LETTERS.body)) + 2 * CELL_INSET_MM

/** Cells in as many lines as the width asks for, each line spread over all of it. */
const cellLines = (cells: readonly Cell[], widthMm: number): readonly (readonly number[])[] => {
  const lines: number[][] = []
  let left = 0
  for (const width of cells.map((cell) => Math.min(widthMm, cellWidth(cell)))) {
    const line = lines.at(-1)
    if (line === undefined || width > left) {
      lines.push([width])
      left = widthMm - width
    } else {
      line.push(width)
      left -= width
    }
  }
  return lines.map((line) => {
    const spare = (widthMm - line.reduce((sum, width) => sum + width, 0)) / line.length
    return line.map((width) => width + spare)
  })
}

const cellMarks = ({ label, text }: Cell, box: Box): Mark[] => [
  panel(box, 'dimension', 'none'),
  lettered(label, { x: box.x0 + CELL_INSET_MM, y: box.y1 - 1.9 }, LABEL_MM, { pen: 'dimension' }),
  lettered(text, { x: box.x0 + CELL_INSET_MM, y: box.y0 + 2.2 }, LETTERS.body),
]

const cellBlock = (cells: readonly Cell[], lines: readonly (readonly number[])[], cellMm: number): Block => ({
  heightMm: lines.length * cellMm,
  draw: (left, top) => {
    let index = 0
    return lines.flatMap((line, row) => {
      let x0 = left
      return line.flatMap((width) => {
        const cell = cells[index++] ?? { label: '', text: '' }
        const box = { x0, x1: x0 + width, y1: top - row * cellMm, y0: top - (row + 1) * cellMm }
        x0 += width
        return cellMarks(cell, box)
      })
    })
  },
})

const rightWords = (text: string, letterMm: number, widthMm: number): Block => {
  const step = letterMm * LEADING
  return {
    heightMm: step,
    draw: (left, top) => [
      lettered(text, { x: left + widthMm, y: top - step / 2 }, letterMm, { anchor: 'end' }),
    ],
  }
}

/** The sheet's name, and the bay's at its right where both find room, else below. */
const namesBlock = ({ bay, place, sheet }: Identity, sizes: PaperSizes, widthMm: number): Block => {
  const rightMm = Math.max(textWidth(bay, sizes.bay), textWidth(place, LETTERS.body))
  const isBeside = textWidth(sheet, sizes.title) + rightMm + 8 <= widthMm
  const placeWords = place === '' ? [] : [place]
  if (!isBeside)
    return stacked([
      paragraph(sheet, widthMm, sizes.title),
      paragraph(bay, widthMm, sizes.bay),
      ...placeWords.map((text) => paragraph(text, widthMm, Math.min(LETTERS.body, sizes.bay))),
    ])
  const right = stacked([
    rightWords(bay, sizes.bay, widthMm),
    ...placeWords.map((text) => rightWords(text, LETTERS.body, widthMm)),
  ])
  const name = paragraph(sheet, widthMm, sizes.title)
  const heightMm = Math.max(right.heightMm, name.heightMm)
  return {
    heightMm,
    draw: (left, top) => [
      ...name.draw(left, top - (heightMm - name.heightMm) / 2),
      ...right.draw(left, top - (heightMm - right.heightMm) / 2),
    ],
  }
}

interface Strips {
  readonly frame: Box
  readonly check: Box
  readonly room: Box
}

/** So long a bar is worth the width that it takes; a longer one measures better. */
const WORTH_UPRIGHT_MM = 290

/** The check bar stands upright at the left of a large paper where that makes it longer, else along the foot. */
const stripsOf = (inside: Box, frame: Box, units: Units, insetMm: number): Strips => {
  const uprightMm = checkLength(inside.y1 - inside.y0 - 8, units)
  const isUpright = uprightMm > WORTH_UPRIGHT_MM && uprightMm > checkLength(inside.x1 - inside.x0 - 8, units)
  const check = isUpright ? { ...inside, x1: inside.x0 + CHECK_MM } : { ...inside, y1: inside.y0 + CHECK_MM }
  return {
    frame,
    check,
    room: {
      x0: (isUpright ? check.x1 : inside.x0) + insetMm,
      x1: inside.x1 - insetMm,
      y0: (isUpright ? inside.y0 : check.y1) + 1,
      y1: inside.y1 - insetMm,
    },
  }
}

const footBlock = (sizes: PaperSizes, widthMm: number): Block =>
  stacked([gap(1), paragraph(FOOTER, widthMm, sizes.foot), gap(0.8)])

/** What stands on every page of a paper, and the room that it leaves. */
export const furnitureOf = (identity: Identity, paper: OrientedPaper): Furniture => {
  const sizes = sizesOn(paper.name)
  const { marginMm, insetMm } = sizes
  const frame = {
    x0: marginMm,
    y0: marginMm,
    x1: paper.widthMm - marginMm,
    y1: paper.heightMm - marginMm,
  }
  const widthMm = frame.x1 - frame.x0
  const wordsMm = widthMm - 2 * insetMm
  const names = stacked([gap(1.4), namesBlock(identity, sizes, wordsMm), gap(1)])
  const lines = cellLines(cellsOf(identity, paper, undefined), widthMm)
  const foot = footBlock(sizes, wordsMm)
  const headY = frame.y1 - names.heightMm - lines.length * sizes.cellMm
  const footY = frame.y0 + foot.heightMm
  const { check, room } = stripsOf({ ...frame, y0: footY, y1: headY }, frame, identity.units, insetMm)
  const write = writerFor(identity.units, inTrench)
  return {
    room,
    draw: (page) => [
      panel(frame, 'outline', 'none'),
      ...names.draw(frame.x0 + insetMm, frame.y1),
      ...cellBlock(cellsOf(identity, paper, page), lines, sizes.cellMm).draw(
        frame.x0,
        frame.y1 - names.heightMm,
      ),
      ruled({ x: frame.x0, y: headY }, { x: frame.x1, y: headY }, 'outline'),
      ruled({ x: frame.x0, y: footY }, { x: frame.x1, y: footY }, 'dimension'),
      ...checkBar(check, identity.units, write),
      ...foot.draw(frame.x0 + insetMm, footY),
    ],
  }
}

const fitsScaleCell = (text: string): boolean =>
  textWidth(text, LETTERS.body) <= textWidth(ANY_SCALE, LETTERS.body) + 4

/** How the scale of a page reads in its title block, from those of its figures. */
export const scaleOf = (scales: readonly string[]): string => {
  const [first, ...others] = new Set(scales)
  if (first === undefined) return 'not to scale'
  return others.length === 0 && fitsScaleCell(first) ? first : MANY_SCALES
}
