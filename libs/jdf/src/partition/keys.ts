/** What the value of a partition key looks like. */
export type KeyKind = 'name' | 'names' | 'nameRanges' | 'integer' | 'integerRanges' | 'numbers';

const numbered = <const S extends string>(stem: S) =>
  ([0, 1, 2, 3, 4, 5, 6, 7, 8, 9] as const).map((n): `${S}${typeof n}` => `${stem}${n}`);

/**
 * The attributes that can divide a resource into parts, by the type of their values. Source: the official JDF 1.9 schema
 * (JDFTypes, ePartitionKeys_; JDFCore, PartitionKeysAttribs).
 */
const byKind = {
  name: [
    ...numbered('DeliveryUnit'),
    'BinderySignatureName',
    'BlockName',
    'Condition',
    'Edition',
    'EditionVersion',
    'Location',
    'Option',
    'PlateLayout',
    'PreflightRule',
    'PreviewType',
    'ProductPart',
    'RibbonName',
    'Run',
    'RunSet',
    'Separation',
    'SheetName',
    'Side',
    'SignatureName',
    'StationName',
    'SubRun',
    'WebName',
    'WebProduct',
    'WebSetup',
  ],
  names: ['ItemNames', 'PartVersion'],
  nameRanges: [...numbered('Metadata'), 'DocTags', 'PageTags', 'RunTags', 'SetTags'],
  integer: ['FountainNumber', 'RunPage'],
  integerRanges: [
    'BinderySignaturePaginationIndex',
    'BundleItemIndex',
    'CellIndex',
    'DocCopies',
    'DocIndex',
    'DocRunIndex',
    'DocSheetIndex',
    'LayerIDs',
    'PageNumber',
    'RunIndex',
    'SectionIndex',
    'SetCopies',
    'SetDocIndex',
    'SetIndex',
    'SetRunIndex',
    'SetSheetIndex',
    'SheetIndex',
  ],
  numbers: ['TileID'],
} as const satisfies Record<KeyKind, readonly string[]>;

export type PartitionKey = (typeof byKind)[KeyKind][number];

/** All keys that PartIDKeys may name. */
export const partitionKeys: readonly PartitionKey[] = Object.values(byKind).flat();

/** Keys of a Part that no resource is divided by: they tell lots and runs of one part apart. Source: as above. */
export const partOnlyKeys = ['LotID', 'PrintCondition', 'Product', 'RunPageRange'] as const;

const kinds: ReadonlyMap<string, KeyKind> = new Map([
  ...Object.entries(byKind).flatMap(([kind, keys]) => keys.map((key) => [key, kind as KeyKind] as const)),
  ...partOnlyKeys.map((key) => [key, key === 'RunPageRange' ? 'integerRanges' : 'name'] as const),
]);

/** The type of a key's values; undefined for what is no key of the standard. */
export const kindOfKey = (key: string): KeyKind | undefined => kinds.get(key);

const dividing: ReadonlySet<string> = new Set(partitionKeys);

/** Whether PartIDKeys may name it. */
export const isPartitionKey = (name: string): boolean => dividing.has(name);

/**
 * Resources with an attribute of their own that is called like a key: it divides only where PartIDKeys names it. Source:
 * the official JDF 1.9 schema (JDFResource).
 */
const ownAttributes: Readonly<Record<string, readonly string[]>> = {
  CutBlock: ['BlockName'],
  DensityMeasuringField: ['Separation'],
  Preview: ['PreviewType'],
  PreviewGenerationParams: ['PreviewType'],
  RunList: ['DocCopies', 'SetCopies'],
  Surface: ['Side'],
  TransferCurve: ['Separation'],
};

/** Whether an attribute of a resource with this name is its own, though it is called like a key. */
export const isOwnAttribute = (resource: string, name: string): boolean =>
  Object.hasOwn(ownAttributes, resource) && ownAttributes[resource]!.includes(name);

/** Keys that name pages, documents and sets of content: a RunList has them without being written out in parts. */
const contentKeys: readonly string[] = [
  ...byKind.nameRanges,
  'DocIndex',
  'DocRunIndex',
  'DocSheetIndex',
  'PageNumber',
  'RunIndex',
  'RunPage',
  'SectionIndex',
  'SetDocIndex',
  'SetIndex',
  'SetRunIndex',
  'SetSheetIndex',
  'SheetIndex',
];
const ofContent: ReadonlySet<string> = new Set([...partOnlyKeys, ...contentKeys]);
const ofAll: ReadonlySet<string> = new Set(partOnlyKeys);

/**
 * Keys that a Part may name though the resource is not divided by them; they choose no part. For all resources those
 * that only a Part has, and for a RunList those of its content (sample marksAndReordering-2; the list from memory).
 */
export const freeKeys = (resource: string): ReadonlySet<string> =>
  resource === 'RunList' ? ofContent : ofAll;

/** Whether it is a key that a Part may name. */
export const isKey = (name: string): boolean => kinds.has(name);

/** The same for a Part in an AmountPool, which also tells good from waste. */
export const freeInAmounts = (resource: string): ReadonlySet<string> =>
  new Set([...freeKeys(resource), 'Condition']);
