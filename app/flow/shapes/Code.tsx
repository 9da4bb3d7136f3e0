/** Codes and answers, symbol by symbol. A direction is a drawn arrow with its letter, so that it can be read aloud. */

const TURN = new Map([
  ['U', 0],
  ['R', 90],
  ['D', 180],
  ['L', 270],
]);

function Direction({ letter }: { letter: string }) {
  return (
    <span className="flow-direction">
      <svg viewBox="0 0 12 12" aria-hidden="true" style={{ rotate: `${TURN.get(letter) ?? 0}deg` }}>
        <path d="M6 11V1.5M2.5 5L6 1.5L9.5 5" />
      </svg>
      {letter}
    </span>
  );
}

export function CodeLine({ symbols, directions }: { symbols: readonly string[]; directions: boolean }) {
  return (
    <span className="flow-code">
      {directions
        ? symbols
            .map((letter, at) => ({ letter, key: `${at} ${letter}` }))
            .map(({ letter, key }) => <Direction key={key} letter={letter} />)
        : symbols.join('')}
    </span>
  );
}
