import { useEffect, useState } from 'react'
import type { Layout } from '../../layout/schema'
import { writeLayout } from '../../layout/file'
import { samples } from '../../layout/samples'
import { keepVersion } from '../../store/autosave'
import type { Planner } from '../../store/planner'
import { usePlanner } from '../../store/react'
import { Dialog } from '../Dialog'
import { deviceShelf } from '../files/deviceShelf'
import type { Opened } from '../files/layoutFiles'
import { readBayLink } from './bayLink'

interface LinkedBayProps {
  readonly hash: string
  readonly onTake: (layout: Layout) => void
  readonly onClose: () => void
}

/** The untouched sample is at hand anyway; every other bay stays behind among the earlier versions. */
const isOnlySample = ({ store }: Planner): boolean => {
  const { history, layout } = store.getState()
  return history.done.length === 0 && samples.some(({ title }) => title === layout.title)
}

const putBehind = async (planner: Planner): Promise<boolean> => {
  if (isOnlySample(planner)) return true
  try {
    const layoutText = writeLayout(planner.store.getState().layout)
    await keepVersion(deviceShelf, { layoutText, savedAt: Date.now() })
    return true
  } catch {
    return false
  }
}

const NOT_KEPT =
  'This browser would not keep the open bay on the device, so it stays open. Save it as a file first, then follow the link again.'

const linesOf = ({ parts, settings }: Layout): string => {
  const rows = parts.filter(({ kind }) => kind === 'rack-row').length
  const place = settings.place === '' ? '' : `${settings.place}: `
  return `${place}${rows} ${rows === 1 ? 'row' : 'rows'} of racks, ${parts.length} parts in all.`
}

interface OfferedProps extends Omit<LinkedBayProps, 'hash'> {
  readonly layout: Layout
}

function Offered({ layout, onTake, onClose }: OfferedProps) {
  const planner = usePlanner()
  const [refused, setRefused] = useState('')
  const take = async () => ((await putBehind(planner)) ? onTake(layout) : setRefused(NOT_KEPT))
  return (
    <>
      <p>
        <strong>{layout.title}</strong>
      </p>
      <p>{linesOf(layout)}</p>
      <p>
        It takes the place of “{planner.store.getState().layout.title}”, which is kept under Earlier versions
        on this device.
      </p>
      <p className="refused" role="alert">
        {refused}
      </p>
      <footer>
        <button type="button" onClick={onClose}>
          Leave it
        </button>
        <button type="button" onClick={() => void take()}>
          Open it
        </button>
      </footer>
    </>
  )
}

/** A bay came with the address of the page: nothing is opened before the person says so. */
export function LinkedBay({ hash, onTake, onClose }: LinkedBayProps) {
  const [read, setRead] = useState<Opened>()
  useEffect(() => void readBayLink(hash).then(setRead), [hash])
  return (
    read && (
      <Dialog title="A bay came with this link" onClose={onClose}>
        {read.ok ? (
          <Offered layout={read.layout} onTake={onTake} onClose={onClose} />
        ) : (
          <>
            <p role="alert">{read.sentence}</p>
            <footer>
              <button type="button" onClick={onClose}>
                Close
              </button>
            </footer>
          </>
        )}
      </Dialog>
    )
  )
}
