export default function SawnView() {
  return <h2>What’s cut</h2>
}
