import type { Sheet } from '../sheet'

export const tubeCard: Sheet = {
  id: 'tubes',
  code: 'TC',
  title: 'Tube card',
  reader: 'Bench hand',
  size: 'small',
  pieces: () => [],
}
