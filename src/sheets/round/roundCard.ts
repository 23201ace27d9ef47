import type { Sheet } from '../sheet'

export const roundCard: Sheet = {
  id: 'round',
  code: 'RC',
  title: 'Round card',
  reader: 'Grower',
  size: 'half',
  pieces: () => [],
}
