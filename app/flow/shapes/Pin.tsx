/** A drawing pin through the upper right corner of what tidying leaves where it is. */
export function Pin() {
  return (
    <svg className="flow-pin" viewBox="0 0 16 20" aria-hidden="true">
      <path d="M8 11.5v7" />
      <path className="flow-pin-head" d="M4.2 1.5h7.6M5.4 1.5v4.6L2.8 9.4v2h10.4v-2l-2.6-3.3V1.5z" />
    </svg>
  );
}
