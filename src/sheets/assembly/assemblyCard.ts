import type { Sheet } from '../sheet'

export const assemblyCard: Sheet = {
  id: 'assembly',
  code: 'AC',
  title: 'Assembly card',
  reader: 'Carpenters',
  size: 'small',
  pieces: () => [],
}
