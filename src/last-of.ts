/** What a search returns when nobody stops it: all that it finds on the way is let go. */
export function lastOf<T, R>(search: Generator<T, R>): R {
  for (;;) {
    const { done, value } = search.next();
    if (done) return value;
  }
}
