import { type FormEvent, useState } from 'react'
import { emptyBay } from '../layout/empty'
import type { Layout } from '../layout/schema'
import { feet, type Units } from '../units/length'
import { parseLength } from '../units/parseLength'
import { fieldWriter } from '../sidebar/fieldText'
import { Dialog, FormEnd } from './Dialog'

interface NewBayProps {
  readonly units: Units
  readonly onMake: (layout: Layout) => void
  readonly onClose: () => void
}

/** A house narrower than one rack and two aisles is a slip of the hand. */
const LEAST_MM = feet(4)
const MOST_MM = feet(3000)

type Read = { readonly ok: true; readonly mm: number } | { readonly ok: false; readonly sentence: string }

const readSide = (text: string, units: Units): Read => {
  const read = parseLength(text, units)
  if (!read.ok) return read
  const { length } = fieldWriter(units)
  return read.mm >= LEAST_MM && read.mm <= MOST_MM
    ? read
    : { ok: false, sentence: `A side is from ${length(LEAST_MM)} to ${length(MOST_MM)} long.` }
}

/** Four walls to start from: inside width and length, and a name. */
export function NewBay({ units, onMake, onClose }: NewBayProps) {
  const { length } = fieldWriter(units)
  const [title, setTitle] = useState('New bay')
  const [width, setWidth] = useState(length(feet(30)))
  const [depth, setDepth] = useState(length(feet(96)))
  const [refused, setRefused] = useState('')

  const make = (event: FormEvent) => {
    event.preventDefault()
    const across = readSide(width, units)
    const along = readSide(depth, units)
    if (!across.ok) setRefused(`Width: ${across.sentence}`)
    else if (!along.ok) setRefused(`Length: ${along.sentence}`)
    else onMake(emptyBay(across.mm, along.mm, title.trim() || 'New bay'))
  }

  return (
    <Dialog title="New bay" onClose={onClose}>
      <form onSubmit={make}>
        <label>
          Name
          <input value={title} maxLength={120} onChange={(event) => setTitle(event.target.value)} />
        </label>
        <label>
          Width inside, west to east
          <input value={width} onChange={(event) => setWidth(event.target.value)} />
        </label>
        <label>
          Length inside, south to north
          <input value={depth} onChange={(event) => setDepth(event.target.value)} />
        </label>
        <FormEnd refused={refused} does="Make the bay" onClose={onClose} />
      </form>
    </Dialog>
  )
}
