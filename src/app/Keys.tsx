import { keyHelp } from '../canvas/keys'
import { Dialog } from './Dialog'
import { pageShortcuts } from './shortcuts'

interface KeysProps {
  readonly onClose: () => void
}

interface KeyLine {
  readonly keys: string
  readonly does: string
}

/** `mod+shift+z` as it is read: `Ctrl Shift Z`. */
const readable = (keys: string): string =>
  keys
    .split('+')
    .map((key) => (key === 'mod' ? 'Ctrl' : key.charAt(0).toUpperCase() + key.slice(1)))
    .join(' ')

function KeyList({ title, lines }: { readonly title: string; readonly lines: readonly KeyLine[] }) {
  return (
    <section>
      <h3>{title}</h3>
      <dl className="sheet-keys">
        {lines.map(({ keys, does }) => (
          <div key={keys}>
            <dt>{keys}</dt>
            <dd>{does}</dd>
          </div>
        ))}
      </dl>
    </section>
  )
}

/** Every key that does something. On a Mac, Command stands for Ctrl. */
export function Keys({ onClose }: KeysProps) {
  const page = pageShortcuts.map(({ keys, does }) => ({ keys: readable(keys), does }))
  return (
    <Dialog title="Keys" onClose={onClose}>
      <KeyList title="On the whole page" lines={page} />
      <KeyList title="On the floor plan" lines={keyHelp} />
      <footer>
        <button onClick={onClose}>Close</button>
      </footer>
    </Dialog>
  )
}
