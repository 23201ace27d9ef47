import type { Sheet } from './sheet'

const MOST_LETTERS = 60

/** Words as a part of a file name: what any file system takes and no shell obeys. Empty where nothing of them can stay. */
export const plainName = (words: string): string =>
  words
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .replace(/[^a-zA-Z0-9]+/g, '-')
    .slice(0, MOST_LETTERS)
    .replace(/^-+|-+$/g, '')

/** `SL-saw-list-issue-3`, `SL-saw-list-draft-of-4`: what every file of a sheet begins with. */
export const sheetFileStem = ({ code, id }: Pick<Sheet, 'code' | 'id'>, issue: string): string => {
  const name = plainName(issue)
  return `${code}-${id}-${/^\d/.test(name) ? `issue-${name}` : name || 'draft'}`
}

/** Pages count from 1, with as many figures as the last one has, so that they stand in their order in every folder. */
export const pageFileName = (stem: string, page: number, of: number, ending: string): string =>
  `${stem}-page-${String(page).padStart(String(of).length, '0')}${ending}`

/** `SL-saw-list-issue-3-boards.csv`. */
export const tableFileName = (stem: string, table: string): string =>
  `${stem}-${plainName(table) || 'table'}.csv`
