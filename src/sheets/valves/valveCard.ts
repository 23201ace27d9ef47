import type { Sheet } from '../sheet'

export const valveCard: Sheet = {
  id: 'valves',
  code: 'VC',
  title: 'Valve card',
  reader: 'Grower',
  size: 'tag',
  pieces: () => [],
}
