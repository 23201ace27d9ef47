export default function BenchView() {
  return <p className="water-none">Nothing is screened yet.</p>
}
