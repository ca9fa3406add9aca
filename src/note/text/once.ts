/** A function whose answer is worked out once for each object that it is asked about, and kept as long as that is. */
export function once<Key extends object, Value extends object>(
  work: (key: Key) => Value,
): (key: Key) => Value {
  const known = new WeakMap<Key, Value>();
  return (key) => {
    let value = known.get(key);
    if (value === undefined) known.set(key, (value = work(key)));
    return value;
  };
}
