export default function P() {
  return <p>…</p>;
}
