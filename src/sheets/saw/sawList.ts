import type { Sheet } from '../sheet'

export const sawList: Sheet = {
  id: 'saw-list',
  code: 'SL',
  title: 'Saw list',
  reader: 'Saw hand',
  size: 'small',
  pieces: () => [],
}
