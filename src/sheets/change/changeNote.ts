import type { Sheet } from '../sheet'

export const changeNote: Sheet = {
  id: 'change',
  code: 'CN',
  title: 'Change note',
  reader: 'Owner',
  size: 'small',
  pieces: () => [],
}
