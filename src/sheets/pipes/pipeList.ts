import type { Sheet } from '../sheet'

export const pipeList: Sheet = {
  id: 'pipes',
  code: 'PL',
  title: 'Pipe pick list',
  reader: 'Plumber',
  size: 'small',
  pieces: () => [],
}
