export default function SawListView() {
  return <h2>Saw list</h2>
}
