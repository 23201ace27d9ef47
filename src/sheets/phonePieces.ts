import { onPaper, type Page } from '../drawing/page'
import { pageSvg } from '../drawing/svg'
import { paperTheme } from '../drawing/theme'
import type { Cell, Column, Row, Table } from '../model/table'
import type { Units } from '../units/length'
import { safe } from './phoneWords'
import type { FigurePiece, Piece, StepsPiece } from './piece'

/** Where pieces stand: what ticks are kept under, and how drawings say their lengths. */
export interface PhonePlace {
  readonly sheetId: string
  readonly units: Units
}

const mind = (text: string): string =>
  `<p class="mind"><b><span aria-hidden="true">△</span> Mind</b><span>${safe(text)}</span></p>`

const box = (key: string): string => `<input type="checkbox" data-key="${safe(key)}">`

const cellText = ({ title, isMain = false }: Column, { text }: Cell): string => {
  if (text === '') return ''
  const label = title === '' ? '' : `<i>${safe(title)}</i> `
  return `<span${isMain ? ' class="main"' : ''}>${label}${safe(text)}</span>`
}

/** A row as a card: what is read first comes first and large, the rest after it, each with its name. */
const cardOf = (row: Row, { columns }: Table, hasTicks: boolean, group: string): string => {
  const cells = columns.map((column, at) => ({ column, cell: row.cells[at] }))
  const inOrder = cells.toSorted(
    (a, b) => Number(b.column.isMain ?? false) - Number(a.column.isMain ?? false),
  )
  const inside = `<span class="cells">${inOrder.map(({ column, cell }) => (cell ? cellText(column, cell) : '')).join('')}</span>`
  if (row.isSum) return `<li><div class="row sum">${inside}</div></li>`
  if (!hasTicks) return `<li><div class="row">${inside}</div></li>`
  return `<li><label class="row">${box(`${group}/${row.key}`)}${inside}</label></li>`
}

const tableHtml = (table: Table, hasTicks: boolean, group: string): string =>
  `<h3>${safe(table.title)}</h3>\n<ul class="rows">\n${table.rows.map((row) => cardOf(row, table, hasTicks, group)).join('\n')}\n</ul>`

const stepsHtml = ({ steps }: StepsPiece, group: string): string =>
  `<ol class="rows">\n${steps
    .map(
      ({ key, text, caution }) =>
        `<li>${caution === undefined ? '' : mind(caution)}<label class="row">${box(`${group}/${key}`)}<span>${safe(text)}</span></label></li>`,
    )
    .join('\n')}\n</ol>`

/** Room of paper in which a drawing is made for a phone, mm: that of an upright sheet. */
const FIGURE_ROOM = { widthMm: 180, heightMm: 240 }

const figurePage = ({ caption, draw }: FigurePiece, units: Units): Page => {
  const { heightMm, items } = draw(FIGURE_ROOM)
  const { widthMm } = FIGURE_ROOM
  return {
    title: caption,
    paper: { name: 'A4', title: caption, orientation: 'portrait', widthMm, heightMm },
    units,
    items: items.length > 0 ? items : [{ marks: [], placement: onPaper }],
  }
}

/** A page or a figure to be looked at closely: it scrolls, and its own words are its text. */
export const drawingHtml = (page: Page, prefix: string): string =>
  `<figure class="drawing" tabindex="0" role="region" aria-label="${safe(page.title)}">${pageSvg(page, paperTheme, prefix)}</figure>`

const TONES = { plain: '', note: ' class="small"', big: ' class="big"' } as const

const pieceHtml = (piece: Piece, place: PhonePlace, at: number, group: string): string => {
  switch (piece.as) {
    case 'heading':
      return piece.level === 1 ? `<h2>${safe(piece.text)}</h2>` : `<h3>${safe(piece.text)}</h3>`
    case 'words':
      return piece.tone === 'caution' ? mind(piece.text) : `<p${TONES[piece.tone]}>${safe(piece.text)}</p>`
    case 'table':
      return piece.table.rows.length === 0 ? '' : tableHtml(piece.table, piece.hasTicks, group)
    case 'steps':
      return stepsHtml(piece, group)
    case 'figure':
      return `${drawingHtml(figurePage(piece, place.units), `${place.sheetId}-${at}-`)}\n<p class="small">${safe(piece.caption)}</p>`
    case 'blanks':
      return piece.labels
        .map(
          (label, n) =>
            `<label class="write">${safe(label)}<input type="text" data-key="${safe(`${place.sheetId}/blank/${at}/${n}`)}"></label>`,
        )
        .join('\n')
    case 'page':
      return ''
  }
}

/**
 * What the ticks of each piece are kept under: its table's id or `steps`. A sheet may have a table of one kind for each drain or rack:
 * those after the first are numbered.
 */
const groupsOf = (pieces: readonly Piece[], { sheetId }: PhonePlace): readonly string[] => {
  const taken = new Map<string, number>()
  return pieces.map((piece) => {
    const name = piece.as === 'table' ? piece.table.id : piece.as
    const before = taken.get(name) ?? 0
    taken.set(name, before + 1)
    return `${sheetId}/${name}${before === 0 ? '' : `-${before + 1}`}`
  })
}

/** Pieces of a paper for a phone, in their order. */
export const piecesHtml = (pieces: readonly Piece[], place: PhonePlace): string => {
  const groups = groupsOf(pieces, place)
  return pieces
    .map((piece, at) => pieceHtml(piece, place, at, groups[at] ?? ''))
    .filter((html) => html !== '')
    .join('\n')
}
