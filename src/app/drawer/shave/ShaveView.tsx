export default function ShaveView() {
  return <h2>Shave &amp; save</h2>
}
