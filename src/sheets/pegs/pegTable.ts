import type { Sheet } from '../sheet'

export const pegTable: Sheet = {
  id: 'pegs',
  code: 'PT',
  title: 'Peg table',
  reader: 'Setter-out',
  size: 'small',
  pieces: () => [],
}
