import type { Sheet } from '../sheet'

export const gutterCard: Sheet = {
  id: 'gutters',
  code: 'GC',
  title: 'Gutter card',
  reader: 'Gutter crew',
  size: 'small',
  pieces: () => [],
}
