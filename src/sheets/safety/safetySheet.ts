import type { Sheet } from '../sheet'

export const safetySheet: Sheet = {
  id: 'safety',
  code: 'SF',
  title: 'Safety sheet',
  reader: 'Everyone, on the first day',
  size: 'small',
  pieces: () => [],
}
