import { useEffect, useState } from 'react'
import type { KeptVersion } from '../store/autosave'
import { loadVersions } from '../store/autosave'
import { ChoiceDialog } from './Dialog'
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
  const choices = versions?.map((version) => ({
    key: version.savedAt,
    title: titleOf(version),
    line: whenOf(version),
    onTake: () => onTake(version),
  }))
  return (
    choices && (
      <ChoiceDialog
        title="Earlier versions on this device"
        choices={choices}
        none="None yet. One is kept every few minutes while you work."
        onClose={onClose}
      />
    )
  )
}
