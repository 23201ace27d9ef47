import { boresOf } from '../../evaluate/water/bores'
import { polyOf } from '../../catalogue/pipe'
import { setSettings } from '../../layout/bayEdits'
import { bucketTest, type BucketTest } from '../../layout/bucketTest'
import { commitEdited } from '../../sidebar/commitEdited'
import { fieldList } from '../../sidebar/fieldList'
import { SchemaField } from '../../sidebar/SchemaField'
import { usePlanner, usePlannerState } from '../../store/react'
import { headM } from '../../units/head'
import { inches } from '../../units/length'
import { writerFor } from '../../units/writer'

const testFields = fieldList(bucketTest)

/** A test starts from the usual tube at the usual head, to be overtyped. */
const USUAL: Omit<BucketTest, 'flowLph' | 'waterC'> = {
  stock: 'tube-1/8',
  lengthMm: inches(36),
  headMm: inches(7),
}

function Found({ bucket }: { readonly bucket: BucketTest }) {
  const units = usePlannerState((state) => state.units)
  const { bore } = writerFor(units)
  const boreMm = headM(boresOf(bucket)(bucket.stock))
  const { idMm } = polyOf(bucket.stock)
  return boreMm === idMm ? (
    <p>
      No bore of tube explains these numbers, so the catalogue’s is kept. Look at the clock and the head
      again.
    </p>
  ) : (
    <p>
      The tube runs as one of {bore(boreMm)} bore; the catalogue says {bore(idMm)}. All{' '}
      {polyOf(bucket.stock).title} of this bay is reckoned so.
    </p>
  )
}

/** A tube run into a bucket by the clock sets the bore that the bay is reckoned with. */
export function BucketForm() {
  const planner = usePlanner()
  const [units, settings] = usePlannerState((state) => [state.units, state.evaluation.layout.settings])
  const { bucket, targetLph, waterC } = settings
  const set = (next: BucketTest | null, label: string) =>
    commitEdited(planner, label, (layout) => setSettings(layout, { bucket: next }))
  return (
    <section>
      <h3>Bucket test</h3>
      <p>
        Hold one tube under a known head, run it into a bucket by the clock, and the bay is reckoned with the
        tube in your hand. Which bore is right matters more than any other number here.
      </p>
      {bucket ? (
        <>
          <div className="water-bucket">
            {testFields.map((field) => (
              <SchemaField
                key={field.key}
                field={field}
                value={bucket[field.key as keyof BucketTest] /* the fields are the schema's own */}
                units={units}
                onValue={(value) =>
                  set({ ...bucket, [field.key]: value }, `${field.meta.label} of the bucket test`)
                }
              />
            ))}
          </div>
          <Found bucket={bucket} />
          <button onClick={() => set(null, 'Bucket test taken away')}>Go by the catalogue</button>
        </>
      ) : (
        <button onClick={() => set({ ...USUAL, flowLph: targetLph, waterC }, 'Bucket test')}>
          Write down a bucket test
        </button>
      )}
    </section>
  )
}
