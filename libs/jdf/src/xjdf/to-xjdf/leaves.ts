import { type Partition, partitionKeysOf, partsOf } from '../../partition/index.js';
import { attributeOf, type XmlElement } from '../../xml/index.js';

/** All leaves of a resource as they are written, those that only say what they are identical to among them. */
export function writtenLeaves(resource: XmlElement): Partition[] {
  return below({ chain: [resource], keys: {} }, partitionKeysOf(resource));
}

function below(from: Partition, names: readonly string[]): Partition[] {
  const at = from.chain.at(-1)!;
  const parts = names.length === 0 ? [] : partsOf(at);
  if (parts.length === 0) return [from];
  return parts.flatMap((part) => {
    const own = names.flatMap((name) => {
      const value = attributeOf(part, name);
      return value === undefined ? [] : [[name, value] as const];
    });
    return below({ chain: [...from.chain, part], keys: { ...from.keys, ...Object.fromEntries(own) } }, names);
  });
}
