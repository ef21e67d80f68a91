import fc from 'fast-check';
import type { PartKeys } from '../elements/part.js';
import { attributeOf, element, type XmlElement } from '../xml/index.js';
import { linkAmounts, resolveParts, resourceAmounts } from './index.js';

// Written without the library's reading: a tree of plain objects from which the document is made, all names in it
// listed one by one, and the rules of JDF PartUsage as filters over that list.

type Usage = 'Explicit' | 'Implicit' | 'Sparse';

interface Model {
  readonly id: string;
  readonly key: string;
  readonly value: string;
  readonly amount: string | undefined;
  children: Model[];
  identical?: { readonly target: Model; readonly keys: PartKeys };
}

/** A part by one of its names: those of the way on which it was reached. */
interface Named {
  readonly part: Model;
  readonly keys: PartKeys;
  readonly below: readonly Named[];
}

const POOL: Readonly<Record<string, readonly string[]>> = {
  SheetName: ['S1', 'S2', 'S3'],
  Side: ['Front', 'Back'],
  PartVersion: ['English', 'German', 'English German', 'French'],
  RunIndex: ['0 -1', '1 ~ 3', '4', '5~-2', '7 6'],
  Separation: ['Cyan', 'Magenta', 'Black'],
};

// A run this long has room for all places above, from either end.
const RUN_LENGTH = 100;

function members(key: string, value: string): readonly string[] {
  if (key === 'PartVersion') return value.split(' ');
  if (key !== 'RunIndex') return [value];
  const place = (text: string): number => (Number(text) < 0 ? RUN_LENGTH + Number(text) : Number(text));
  return value
    .replace(/ *~ */g, '~')
    .split(' ')
    .flatMap((range) => {
      const [first, last = first] = range.split('~').map(place) as [number, number?];
      return Array.from({ length: last - first + 1 }, (_, i) => String(first + i));
    });
}

const fits = (key: string, has: string, wanted: string): boolean =>
  members(key, has).some((one) => members(key, wanted).includes(one));

function namesOf(part: Model, around: PartKeys, real: Model = part): Named {
  const keys = part.key === '' ? around : { ...around, [part.key]: part.value };
  const there = real.identical?.target ?? real;
  return { part: there, keys, below: there.children.map((child) => namesOf(child, keys)) };
}

const listed = (at: Named): Named[] => [at, ...at.below.flatMap(listed)];

function plainNames(
  root: Model,
  keys: readonly string[],
  usage: Usage,
  selections: readonly PartKeys[],
): Named[] {
  const all = listed(namesOf(root, {}));
  const meant = (selection: PartKeys): ((one: Named) => boolean) => {
    const asked = Object.entries(selection).filter(([key]) => keys.includes(key));
    const unknown = asked.length < Object.keys(selection).length;
    const agrees = (one: Named): boolean =>
      asked.every(([key, value]) => one.keys[key] === undefined || fits(key, one.keys[key], value));
    const complete = (one: Named): boolean => asked.every(([key]) => one.keys[key] !== undefined);
    return (one) => {
      const leaf = one.below.length === 0;
      if (usage === 'Explicit') return !unknown && leaf && agrees(one) && complete(one);
      if (usage === 'Sparse') return leaf && agrees(one);
      return agrees(one) && !one.below.some(agrees);
    };
  };
  const tests = (selections.length === 0 ? [{}] : selections).map(meant);
  const once = new Map<Model, Named>();
  for (const one of all) {
    if (!once.has(one.part) && tests.some((test) => test(one))) once.set(one.part, one);
  }
  return [...once.values()];
}

const plainly = (...[root, keys, usage, selections]: Parameters<typeof plainNames>): string[] =>
  plainNames(root, keys, usage, selections).map(({ part }) => part.id);

function written(part: Model, root: Record<string, string> = {}): XmlElement {
  const own = part.key === '' ? {} : { [part.key]: part.value };
  const identical = part.identical && element('Identical', {}, [element('Part', part.identical.keys)]);
  return element(
    'ExposedMedia',
    { ...root, ...own, ProductID: part.id, Amount: part.amount },
    identical === undefined ? part.children.map((child) => written(child)) : [identical],
  );
}

interface Case {
  readonly keys: readonly string[];
  readonly usage: Usage;
  readonly root: Model;
  readonly resource: XmlElement;
  readonly selections: readonly PartKeys[];
}

const cases: fc.Arbitrary<Case> = fc.gen().map((g) => {
  const keys = g(fc.shuffledSubarray, Object.keys(POOL), { minLength: 1, maxLength: 4 });
  const usage = g(fc.constantFrom<Usage[]>, 'Explicit', 'Implicit', 'Sparse');
  let count = 0;
  const grow = (key: string, value: string, from: number): Model => {
    const amount = g(fc.constantFrom<(string | undefined)[]>, undefined, undefined, '1', '2', '5');
    const made: Model = { id: `p${count++}`, key, value, amount, children: [] };
    const skipped = usage === 'Sparse' ? g(fc.nat, 1) : 0;
    const next = keys[from + skipped];
    if (next === undefined || (key !== '' && g(fc.nat, 4) === 0)) return made;
    const values = g(fc.subarray, [...POOL[next]!], { minLength: 0 });
    made.children = values.map((one) => grow(next, one, from + skipped + 1));
    return made;
  };
  const root = grow('', '', 0);
  for (let tries = g(fc.nat, 3); tries > 0; tries--) join(root, g(fc.nat, 60), g(fc.nat, 60));
  const asked = [...keys, 'Option'];
  const selections = Array.from({ length: g(fc.nat, 3) }, () =>
    Object.fromEntries(
      g(fc.subarray, asked.slice(0, g(fc.nat, 5) === 0 ? asked.length : keys.length)).map((key) => [
        key,
        g(fc.constantFrom, ...(POOL[key] ?? ['1'])),
      ]),
    ),
  );
  const resource = written(root, { PartIDKeys: keys.join(' '), PartUsage: usage });
  return { keys, usage, root, resource, selections };
});

/** Makes one part identical to another of its level, where that is allowed: no chain, and nothing identical within. */
function join(root: Model, first: number, second: number): void {
  const all: { readonly part: Model; readonly keys: PartKeys; readonly way: readonly Model[] }[] = [];
  const visit = (part: Model, around: PartKeys, way: readonly Model[]): void => {
    const keys = part.key === '' ? around : { ...around, [part.key]: part.value };
    if (part.key !== '') all.push({ part, keys, way: [...way, part] });
    for (const child of part.children) visit(child, keys, [...way, part]);
  };
  visit(root, {}, []);
  if (all.length === 0) return;
  const one = all[first % all.length]!;
  const level = all.filter(
    ({ part, keys, way }) =>
      part !== one.part &&
      Object.keys(keys).join() === Object.keys(one.keys).join() &&
      way.every(({ identical }) => identical === undefined),
  );
  const other = level[second % level.length];
  const usedBelow = all.some(({ part }) => {
    const target = part.identical?.target;
    return target !== undefined && all.some((at) => at.part === target && at.way.includes(one.part));
  });
  if (other === undefined || usedBelow) return;
  one.part.children = [];
  one.part.identical = { target: other.part, keys: other.keys };
}

const idOf = ({ chain }: { readonly chain: readonly XmlElement[] }) =>
  attributeOf(chain.at(-1)!, 'ProductID');

describe('parts meant by a selection', () => {
  it('are those of a plain reading of the rules, in the same order', () => {
    let meant = 0;
    let identical = 0;
    fc.assert(
      fc.property(cases, ({ keys, usage, root, resource, selections }) => {
        const { found, missing } = resolveParts(resource, selections);
        const expected = plainly(root, keys, usage, selections);
        expect(found.map(idOf)).toEqual(expected);
        const single = (selections.length === 0 ? [{}] : selections).map(
          (one) => plainly(root, keys, usage, [one]).length,
        );
        expect(missing.map(({ selection }) => selection)).toEqual(
          single.flatMap((length, i) => (length === 0 ? [i] : [])),
        );
        meant += expected.length;
        identical +=
          listed(namesOf(root, {})).length > new Set(listed(namesOf(root, {})).map((n) => n.part)).size
            ? 1
            : 0;
      }),
      { seed: 51, numRuns: 1500 },
    );
    // The cases drawn are worth something.
    expect(meant).toBeGreaterThan(2000);
    expect(identical).toBeGreaterThan(100);
  });
});

describe('hostile trees', () => {
  it('of parts that are identical on every level cost no more than their parts', () => {
    const keys = ['SheetName', 'Side', 'Separation', 'PartVersion'];
    const same = (names: readonly string[]) =>
      element('Identical', {}, [element('Part', Object.fromEntries(names.map((name) => [name, 'a'])))]);
    // 300 names for one part on each of four levels: 8 thousand million leaves by name.
    const level = (depth: number): XmlElement[] =>
      depth === keys.length
        ? []
        : [
            element('Media', { [keys[depth]!]: 'a' }, level(depth + 1)),
            ...Array.from({ length: 300 }, (_, i) =>
              element('Media', { [keys[depth]!]: `b${i}` }, [same(keys.slice(0, depth + 1))]),
            ),
          ];
    const root = element('Media', { PartIDKeys: keys.join(' ') }, level(0));
    expect(resolveParts(root, [{}, { PartVersion: 'b7' }]).found).toHaveLength(1);
  });

  it('with keys called like what every object has are read as having no such key', () => {
    const names = 'constructor __proto__ toString SheetName';
    const parts = [element('Media', { SheetName: 'S1' }), element('Media', { constructor: 'x' })];
    const { found } = resolveParts(element('Media', { PartIDKeys: names }, parts), [{ SheetName: 'S1' }]);
    expect(found.map(({ keys }) => keys)).toEqual([{ SheetName: 'S1' }]);
  });
});

describe('amounts', () => {
  it('of a resource are inherited by each leaf and add up as in a plain reading', () => {
    fc.assert(
      fc.property(cases, fc.nat(3), ({ root, keys, resource }, levels) => {
        const by = keys.slice(0, levels);
        const stated = new Map<string, { keys: PartKeys; amount: string | undefined }>();
        const visit = (at: Named, inherited: string | undefined): void => {
          const amount = at.part.amount ?? inherited;
          if (at.below.length === 0 && !stated.has(at.part.id))
            stated.set(at.part.id, { keys: at.keys, amount });
          for (const below of at.below) visit(below, amount);
        };
        // An identical part has what the other inherits, so amounts are read at the part's own place.
        const own = (part: Model, inherited: string | undefined): Map<string, string | undefined> => {
          const amount = part.amount ?? inherited;
          return new Map([
            [part.id, amount] as const,
            ...part.children.flatMap((child) => [...own(child, amount)]),
          ]);
        };
        visit(namesOf(root, {}), undefined);
        const amounts = own(root, undefined);
        const sums = new Map<string, number>();
        for (const [id, leaf] of stated) {
          const group = JSON.stringify(by.map((key) => leaf.keys[key] ?? null));
          sums.set(group, (sums.get(group) ?? 0) + Number(amounts.get(id) ?? 0));
        }
        const ours = resourceAmounts(resource, 'Amount', by).groups.map(({ keys: of, own: sum }) => [
          JSON.stringify(by.map((key) => of[key] ?? null)),
          sum.total,
        ]);
        expect(ours).toEqual([...sums]);
      }),
      { seed: 52, numRuns: 500 },
    );
  });

  it('of a link belong to all that they are stated for together, and add up as in a plain reading', () => {
    const pools = fc.array(
      fc.record({
        at: fc.nat(99),
        amount: fc.integer({ min: 0, max: 9 }),
        condition: fc.constantFrom('Good', 'Waste', 'Torn', ''),
      }),
      { maxLength: 6 },
    );
    fc.assert(
      fc.property(cases, pools, fc.nat(3), ({ root, keys, usage, resource, selections }, pool, levels) => {
        const by = keys.slice(0, levels);
        const inLink = usage === 'Implicit' ? [] : selections.filter(({ Option }) => Option === undefined);
        const leaves = plainNames(root, keys, usage, inLink);
        const names = listed(namesOf(root, {}));
        const stated = pool.map(({ at, amount, condition }) => ({
          selection: names[at % names.length]!.keys,
          amount,
          condition,
        }));
        const link = element('ExposedMediaLink', {}, [
          ...inLink.map((part) => element('Part', part)),
          element(
            'AmountPool',
            {},
            stated.map(({ selection, amount, condition }) =>
              element('PartAmount', { Amount: String(amount) }, [
                element('Part', { ...selection, Condition: condition === '' ? undefined : condition }),
              ]),
            ),
          ),
        ]);
        const groupOf = (leaf: Named): string => JSON.stringify(by.map((key) => leaf.keys[key] ?? null));
        const sums = new Map(leaves.map((leaf) => [groupOf(leaf), { own: 0, shared: 0, good: 0, waste: 0 }]));
        let unplaced = 0;
        for (const { selection, amount, condition } of stated) {
          // A part that stands in for one that is not there stands for all its leaves.
          const named = plainNames(root, keys, usage, [selection]).flatMap(listed);
          const ids = new Set(named.map(({ part }) => part.id));
          const groups = [...new Set(leaves.filter(({ part }) => ids.has(part.id)).map(groupOf))];
          if (groups.length === 0) unplaced += amount;
          for (const group of groups) {
            const sum = sums.get(group)!;
            if (groups.length > 1) sum.shared += amount;
            else {
              sum.own += amount;
              if (condition === 'Good') sum.good += amount;
              else if (condition !== '') sum.waste += amount;
            }
          }
        }
        const ours = linkAmounts(link, resource, 'Amount', by);
        expect(
          ours.groups.map(({ keys: of, own, shared }) => [
            JSON.stringify(by.map((key) => of[key] ?? null)),
            { own: own.total, shared: shared.total, good: own.good, waste: own.waste },
          ]),
        ).toEqual([...sums]);
        expect(ours.all.total).toBe(pool.reduce((sum, { amount }) => sum + amount, 0));
        expect(ours.unplaced.total).toBe(unplaced);
      }),
      { seed: 53, numRuns: 500 },
    );
  });
});
