import type { Sheet } from '../sheets/sheet'

/** A folder of the set and whose it is. */
export interface FolderOfSet {
  readonly folder: string
  readonly sheet: Pick<Sheet, 'title' | 'code' | 'reader'>
  readonly pages: number
}

interface SetOf {
  readonly title: string
  readonly issue: string
  readonly dateText: string
  readonly folders: readonly FolderOfSet[]
  /** Names of the layout and of the report within the set. */
  readonly layoutFile: string
  readonly reportFile: string
}

const folderLine = ({ folder, sheet, pages }: FolderOfSet): string =>
  `  ${folder.padEnd(22)}  ${sheet.title} (${sheet.code}), held by: ${sheet.reader.toLowerCase()}; ${pages} ${pages === 1 ? 'page' : 'pages'}`

/** What a set of papers has in it, for whoever unpacks it. Line ends are those that every editor takes. */
export const readMe = ({ title, issue, dateText, folders, layoutFile, reportFile }: SetOf): string =>
  [
    `${title.replace(/\p{Cc}/gu, ' ')}: papers for the crew`,
    `Issue ${issue}, ${dateText}`,
    '',
    'A folder for each paper, in the order in which the job needs them:',
    '',
    ...folders.map(folderLine),
    '',
    'In each of them:',
    '',
    '  .svg   the pages at their true size: print at 100 %, and measure the check bar',
    '  .png   the same pages as pictures, where they were asked for',
    '  .csv   every table, for a spreadsheet: as the crew reads it, and the bare number beside it',
    '  .dxf   pages with a drawing to scale, for CAD, at full size in the units of that paper',
    '',
    `  ${layoutFile}  is the bay itself: open it in the planner`,
    `  ${reportFile}  is the whole plan in numbers, for scripts`,
    '',
    "These papers are a builder's aid, not an engineering drawing. Local codes and licensed people have the last word.",
    '',
  ].join('\r\n')
