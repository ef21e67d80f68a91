/**
 * The same function, which computes its answer once for each key object and then knows it for as long as that object
 * lives. For keys that never change, and for few of them: what a million objects each know belongs into the objects.
 */
export function oncePer<Key extends object, Value>(compute: (key: Key) => Value): (key: Key) => Value {
  const known = new WeakMap<Key, { readonly value: Value }>();
  return (key) => {
    let entry = known.get(key);
    if (entry === undefined) {
      entry = { value: compute(key) };
      known.set(key, entry);
    }
    return entry.value;
  };
}
