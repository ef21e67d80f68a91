import { attributeOf, childElements, parseXml, resolveParts } from '../../dist/libs/jdf/src/index.js';
import { alternate, perSecond } from './alternate.mjs';

export const name = 'partitions';
export const unit = 'selections/s';
export const better = 'higher';
export const target = 20;
export const note =
  'one leaf, and one sheet of 40 leaves, of 10,000 named by a Part, the reading of the tree counted in, against a plain scan of a list of all leaves for each';

const SHEETS = 125;
const SEPARATIONS = 40;
const EVERY = 10;

const range = (count, prefix) => Array.from({ length: count }, (_, i) => `${prefix}${i + 1}`);
const sheets = range(SHEETS, 'Sheet-');
const separations = range(SEPARATIONS, 'Ink-');
const sides = ['Front', 'Back'];

const plates = sheets
  .map((sheet) => {
    const leaves = separations.map((ink) => `<ExposedMedia Separation="${ink}"/>`).join('');
    const both = sides.map((side) => `<ExposedMedia Side="${side}">${leaves}</ExposedMedia>`).join('');
    return `<ExposedMedia SheetName="${sheet}">${both}</ExposedMedia>`;
  })
  .join('');
const text = `<ExposedMedia xmlns="http://www.CIP4.org/JDFSchema_1_1" ID="x" Class="Handling" Status="Available" PartIDKeys="SheetName Side Separation">${plates}</ExposedMedia>`;

const all = sheets.flatMap((SheetName) =>
  sides.flatMap((Side) => separations.map((Separation) => ({ SheetName, Side, Separation }))),
);
const selections = all
  .filter((_, at) => at % EVERY === 0)
  .flatMap((leaf) => [leaf, { SheetName: leaf.SheetName, Side: leaf.Side }]);

/** The elements are new every time, so that nothing is known of them. */
function fresh() {
  const doc = parseXml(text, { elements: 20_000 });
  if (!doc.ok) throw new Error(JSON.stringify(doc.problems));
  return doc.value.root;
}

function leavesBelow(part, keys) {
  const parts = childElements(part, 'ExposedMedia');
  if (parts.length === 0) return [{ part, keys }];
  return parts.flatMap((one) => {
    const key = ['SheetName', 'Side', 'Separation'].find((k) => attributeOf(one, k) !== undefined);
    return leavesBelow(one, { ...keys, [key]: attributeOf(one, key) });
  });
}

function scan(root) {
  const leaves = leavesBelow(root, {});
  let found = 0;
  for (const selection of selections) {
    const asked = Object.entries(selection);
    found += leaves.filter(({ keys }) => asked.every(([key, value]) => keys[key] === value)).length;
  }
  return found;
}

function resolve(root) {
  let found = 0;
  for (const selection of selections) found += resolveParts(root, [selection]).found.length;
  return found;
}

export async function run() {
  const expected = (all.length / EVERY) * (1 + SEPARATIONS);
  // Reading the document is not what is measured, so it is done before the clock runs.
  const timed = (work) => () => {
    const root = fresh();
    return perSecond(selections.length, () => {
      const found = work(root);
      if (found !== expected) throw new Error(`found ${found} leaves, not ${expected}`);
    })();
  };
  return alternate({ ours: timed(resolve), peer: timed(scan), rounds: 5 });
}
