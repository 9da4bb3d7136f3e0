/** The last result of a pure function, kept for as long as what it depends on stays the same objects. */
export function memoLast<In, Out>(
  dependsOn: (input: In) => readonly unknown[],
  compute: (input: In, previous: Out | undefined) => Out,
): (input: In) => Out {
  let last: { readonly keys: readonly unknown[]; readonly out: Out } | undefined;
  return (input) => {
    const keys = dependsOn(input);
    if (last && keys.length === last.keys.length && keys.every((key, i) => Object.is(key, last?.keys[i]))) {
      return last.out;
    }
    const out = compute(input, last?.out);
    last = { keys, out };
    return out;
  };
}
