import type { Page } from '../drawing/page'
import type { Units } from '../units/length'
import { drawingHtml, piecesHtml } from './phonePieces'
import { PHONE_STYLE } from './phoneStyle'
import { PHONE_TICKS } from './phoneTicks'
import { safe } from './phoneWords'
import type { Piece } from './piece'
import type { Sheet } from './sheet'
import { FOOTER } from './cautions'

/** A sheet as the phone shows it. */
export interface PhoneSheet {
  readonly sheet: Pick<Sheet, 'id' | 'code' | 'title' | 'reader'>
  readonly pieces: readonly Piece[]
  /** Pages that are one drawing; none where the pieces say it all. */
  readonly drawn: readonly Page[]
  readonly units: Units
}

/** Papers of one issue of one bay. */
export interface PhonePapers {
  readonly title: string
  readonly place: string
  readonly issue: string
  readonly dateText: string
  readonly sheets: readonly PhoneSheet[]
}

/** All that a drawing may weigh, letters: more would be slow to scroll on an old phone. */
const MOST_DRAWING = 1_500_000

const LEFT_OUT = 'This drawing is too large for a phone: look at it on paper.'

const drawnHtml = (page: Page, sheetId: string, at: number): string => {
  const html = drawingHtml(page, `${sheetId}-p${at}-`)
  return html.length > MOST_DRAWING ? `<p class="small">${LEFT_OUT}</p>` : html
}

const sheetHtml = ({ sheet, pieces, drawn, units }: PhoneSheet): string =>
  [
    `<details class="sheet" id="${safe(sheet.id)}"><summary><span>${safe(sheet.code)}</span> <span>${safe(sheet.title)}</span> <small>${safe(sheet.reader)}</small></summary>`,
    '<div class="inside">',
    `<p class="small">For: ${safe(sheet.reader)}. ${units === 'metric' ? 'In millimetres.' : 'In feet and inches.'}</p>`,
    piecesHtml(pieces, { sheetId: sheet.id, units }),
    ...drawn.map((page, at) => drawnHtml(page, sheet.id, at)),
    '</div></details>',
  ].join('\n')

const NOT_KEPT = 'This browser keeps nothing for this page: ticks last only while it is open.'

/**
 * Papers as one page that stands alone: it is sent to the crew's phones, opened without a signal and asks nothing of any network. Ticks
 * and written words stay on the phone, by bay and issue. The same papers give the same text, letter for letter.
 */
export const phonePage = ({ title, place, issue, dateText, sheets }: PhonePapers): string =>
  `<!doctype html>
<html lang="en" data-papers="${safe(`kerf-and-fall/${title}/${issue}`)}">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'; script-src 'unsafe-inline'">
<title>${safe(title)}: papers, ${safe(issue)}</title>
<style>${PHONE_STYLE}</style>
</head>
<body>
<header>
<h1>${safe(title)}</h1>
<p class="small">${[place, `Issue ${issue}`, dateText].filter(Boolean).map(safe).join(' · ')}</p>
<p class="small" id="keeps" role="status" hidden>${NOT_KEPT}</p>
</header>
<main>
${sheets.map(sheetHtml).join('\n')}
</main>
<footer><p class="small">${safe(FOOTER)}</p></footer>
<script>${PHONE_TICKS}</script>
</body>
</html>
`
