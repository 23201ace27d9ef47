import { useEffect, useState } from 'react'
import type { KeptVersion } from '../store/autosave'
import { loadVersions } from '../store/autosave'
import { Dialog } from './Dialog'
import { deviceShelf } from './files/deviceShelf'

interface EarlierProps {
  readonly onTake: (version: KeptVersion) => void
  readonly onClose: () => void
}

/** The title stands near the top of the file; a version that says none is still worth opening. */
const titleOf = ({ layoutText }: KeptVersion): string =>
  /"title": "((?:[^"\\]|\\.)*)"/.exec(layoutText)?.[1] ?? 'A bay'

const whenOf = ({ savedAt }: KeptVersion): string =>
  new Date(savedAt).toLocaleString(undefined, { dateStyle: 'medium', timeStyle: 'short' })

/** Good versions that this device kept behind the open bay. */
export function Earlier({ onTake, onClose }: EarlierProps) {
  const [versions, setVersions] = useState<readonly KeptVersion[]>()
  useEffect(() => void loadVersions(deviceShelf).then(setVersions), [])
  return (
    <Dialog title="Earlier versions on this device" onClose={onClose}>
      {versions?.length === 0 && <p>None yet. One is kept every few minutes while you work.</p>}
      <ul>
        {versions?.map((version) => (
          <li key={version.savedAt}>
            <button className="sheet-choice" onClick={() => onTake(version)}>
              <strong>{titleOf(version)}</strong>
              <span>{whenOf(version)}</span>
            </button>
          </li>
        ))}
      </ul>
      <footer>
        <button onClick={onClose}>Cancel</button>
      </footer>
    </Dialog>
  )
}
