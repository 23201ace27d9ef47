import type { Sheet } from '../sheet'

export const levelsSheet: Sheet = {
  id: 'levels',
  code: 'LS',
  title: 'Levels sheet',
  reader: 'Drain crew',
  size: 'large',
  pieces: () => [],
}
