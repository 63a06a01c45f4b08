/** Makes something of a language's words or of a household's when it is first wanted, and keeps it. */
export function onceFor<Key extends object, T>(make: (key: Key) => T): (key: Key) => T {
  const made = new WeakMap<Key, { readonly value: T }>();
  return (key) => {
    const known = made.get(key);
    if (known) return known.value;
    const value = make(key);
    made.set(key, { value });
    return value;
  };
}
