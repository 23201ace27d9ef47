import { paperNames } from '../layout/papers'
import { sheets } from '../sheets/index'
import { wrapped } from '../sheets/textTable'
import { formats } from './arguments'
import { possibleFails, USUAL_FAILS } from './failing'
import { tableNames } from './report'

const WIDTH = 96

/** The words of a flag, in lines under each other. */
const indented = (text: string, by: number): string => wrapped(text, WIDTH - by).join(`\n${' '.repeat(by)}`)

/** What the command can be asked. */
export const helpText =
  (): string => `What is wrong with a bay, what it is made of, what it costs and its papers, without the page.

  npm run --silent report -- bay.json [flags]
  npm run --silent report -- --diff before.json after.json [flags]

A file - is read from what comes in. Without --silent npm writes two lines of its own.

  --format F    ${formats.join(', ')}; text unless another is named
  --sheet S     one paper, not the whole report: its name or its two letters
  --table T     of several tables this one, by its name: --format csv without --out writes one
  --out D       writes files into this folder, which is made where there is none, and nothing else
  --units U     feet-inches or metric; else those that the bay has, or the paper is set to
  --paper P     ${paperNames.join(', ')}
  --date D      the day on the papers, such as 2027-05-01; else today
  --fail A,B    ${indented(`states that fail a plan, of ${possibleFails.join(', ')}; unless others are named these are ${USUAL_FAILS.join(', ')}. What is accepted fails nothing.`, 16)}
  --help        this

Ends with 0 where nothing fails, with 1 where something does, with 2 and one sentence where the
question or a file is wrong.

Tables: ${indented(tableNames.join(', '), 8)}

Papers: ${indented(sheets.map(({ id, code }) => `${id} (${code})`).join(', '), 8)}
`
