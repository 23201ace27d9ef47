import { Plus } from 'lucide-react'
import { inches } from '../units/length'
import { ChoiceField } from './ChoiceField'
import type { HouseProps } from './houseProps'
import { type CurvedWall, profileRows, wallChoices, withItem, withProfile } from './houseRows'
import { LengthTable } from './LengthTable'

/** Head height at the wall and full height a few feet in: common practice, no source; to be measured. */
const newWall = ({ headroomMm }: HouseProps['house']): CurvedWall => ({
  edge: 0,
  profile: [
    { distanceMm: 0, heightMm: inches(60) },
    { distanceMm: inches(48), heightMm: headroomMm },
  ],
})

interface OneWallProps extends Pick<HouseProps, 'house' | 'units'> {
  readonly wall: CurvedWall
  /** Undefined takes the profile out. */
  readonly onWall: (wall: CurvedWall | undefined) => string | undefined
}

function OneWall({ wall, house, units, onWall }: OneWallProps) {
  const farthestMm = Math.max(...wall.profile.map(({ distanceMm }) => distanceMm))
  return (
    <fieldset className="house-item">
      <ChoiceField
        label="Wall"
        value={String(wall.edge)}
        choices={wallChoices(house.outline)}
        onChoice={(edge) => onWall({ ...wall, edge: Number(edge) })}
      />
      <LengthTable
        rowName="Height"
        columns={['From wall', 'Headroom']}
        rows={profileRows(wall)}
        units={units}
        leastRows={1}
        newRow={() => [farthestMm + inches(12), house.headroomMm]}
        onRows={(rows) => onWall(withProfile(wall, rows))}
      />
      <button onClick={() => onWall(undefined)}>Delete this profile</button>
    </fieldset>
  )
}

/** How high one can stand near a wall that leans or curves in. */
export function CurvedWalls({ house, units, onHouse }: HouseProps) {
  const set = (walls: readonly CurvedWall[]) =>
    onHouse('Headroom at curved walls', { ...house, curvedWalls: [...walls] })
  return (
    <>
      {house.curvedWalls.map((wall, index) => (
        // A profile has no name: its place in the list is all there is to go by.
        <OneWall
          key={index}
          wall={wall}
          house={house}
          units={units}
          onWall={(changed) => set(withItem(house.curvedWalls, index, changed))}
        />
      ))}
      <button onClick={() => set([...house.curvedWalls, newWall(house)])}>
        <Plus size={14} aria-hidden="true" /> Add profile of a wall
      </button>
    </>
  )
}
