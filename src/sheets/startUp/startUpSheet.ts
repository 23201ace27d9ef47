import type { Sheet } from '../sheet'

export const startUpSheet: Sheet = {
  id: 'start-up',
  code: 'SU',
  title: 'Start-up sheet',
  reader: 'Commissioning pair',
  size: 'small',
  pieces: () => [],
}
