/**
 * The notation of the fact tables, one row an element kind:
 *
 *     Kind : Base{1.2-1.6} flags
 *       type: Name! Name=default Name==fixed Name[root,part] Name{1.4-}
 *       > Child Child? Child* Child+ Child(0-2) Child*& Child:OtherKind any:Head (A|B)*
 *
 * A kind has the attributes and children of its base; without one, those of every element. `!` is required (`!!` in
 * partitions too), `type[]` a list, blanks in a default are written `_`, `{1.4-}` the versions that know it, `[root]` the
 * forms of a resource that have it, `&` an element that may also be written as a reference (ChildRef). A child's kind is
 * `Parent/Child` if there is one, else `Child`. Order means something only in the tables of the second generation.
 * Flags: `nothing` (no base), `no-generic` (none of the children of every element), `restricted` (no children of the
 * base), `counted` (numbers of children are enforced by the schema), `text`, `mixed`, `abstract`, and for resources
 * `no-resource-generic`, `no-update`, `no-identical`, `no-parts-in-root`, `no-parts-in-part`.
 */
export type ResourceForm = 'root' | 'part' | 'inline';

export interface VersionRange {
  readonly since: string | null;
  readonly until: string | null;
}

export interface AttributeFact {
  readonly name: string;
  /** Name of a data type or of a closed list of values. */
  readonly type: string;
  readonly list: boolean;
  readonly required: boolean;
  readonly requiredInParts: boolean;
  readonly fixed: string | null;
  readonly preset: string | null;
  readonly forms: readonly ResourceForm[] | null;
  readonly versions: VersionRange | null;
}

export interface ChildFact {
  /** Element name; of a head, the name that its members stand for; `any` for foreign elements. */
  readonly name: string;
  readonly head: boolean;
  readonly kind: string | null;
  readonly min: number;
  readonly max: number;
  /** Also allowed as a reference, NameRef. */
  readonly byReference: boolean;
  readonly forms: readonly ResourceForm[] | null;
  readonly versions: VersionRange | null;
}

/** One of several, in the tables where order counts. */
export interface ChoiceFact {
  readonly choice: readonly ChildFact[];
  readonly min: number;
  readonly max: number;
}

export type ParticleFact = ChildFact | ChoiceFact;

export interface KindRow {
  readonly name: string;
  readonly base: string | null;
  readonly versions: VersionRange | null;
  readonly flags: ReadonlySet<string>;
  readonly attributes: readonly AttributeFact[];
  readonly content: readonly ParticleFact[];
}

/** Lines of a table with continued lines (four blanks) joined. Throws Error: a table is our own, and must be right. */
export function linesOf(table: string): string[] {
  const lines: string[] = [];
  for (const line of table.split('\n')) {
    if (line.trim() === '') continue;
    if (line.startsWith('    ')) lines.push(`${lines.pop() ?? ''} ${line.trim()}`);
    else lines.push(line);
  }
  return lines;
}

/** A table of `Name{versions} : value value …` lines; versions are not kept. */
export function readLists(table: string): Map<string, readonly string[]> {
  return new Map(
    linesOf(table).map((line) => {
      const [name, values] = line.split(' : ') as [string, string];
      return [name.replace(/\{.*\}$/, ''), values.trim().split(/\s+/)];
    }),
  );
}

/** Reads a table of element kinds. Throws where a row breaks the notation above: the tables are ours. */
export function readKinds(table: string): KindRow[] {
  const rows: { head: string; attributes: AttributeFact[]; content: ParticleFact[] }[] = [];
  for (const line of linesOf(table)) {
    const row = rows.at(-1);
    if (!line.startsWith('  ')) {
      rows.push({ head: line, attributes: [], content: [] });
    } else if (line.startsWith('  > ')) {
      row!.content.push(...line.slice(4).split(' ').map(readParticle));
    } else {
      const colon = line.indexOf(':');
      const type = line.slice(2, colon);
      for (const item of line.slice(colon + 2).split(' ')) row!.attributes.push(readAttribute(item, type));
    }
  }
  return rows.map(({ head, ...row }) => ({ ...readHead(head), ...row }));
}

const HEAD = /^([\w./]+)(?:\{([^}]*)\})?(?: : ([\w./]+)(?:\{([^}]*)\})?)?((?: [\w-]+)*)$/;

function readHead(head: string): Pick<KindRow, 'name' | 'base' | 'versions' | 'flags'> {
  const [, name, own, base, withBase, flags = ''] = matched(HEAD, head);
  const set = new Set(flags.split(' ').filter((flag) => flag !== ''));
  if (base === 'nothing') set.add('nothing');
  return {
    name: name!,
    base: base === undefined || base === 'nothing' ? null : base,
    versions: versionsOf(own ?? withBase),
    flags: set,
  };
}

const ATTRIBUTE = /^([\w:]+)(!{0,2})(?:(==?)([^[{]*))?(?:\[([a-z,]+)\])?(?:\{([^}]*)\})?$/;

function readAttribute(item: string, type: string): AttributeFact {
  const [, name, need, sign, value, forms, versions] = matched(ATTRIBUTE, item);
  const stated = value?.replaceAll('_', ' ') ?? null;
  return {
    name: name!,
    type: type.replace('[]', ''),
    list: type.endsWith('[]'),
    required: need !== '',
    requiredInParts: need === '!!',
    fixed: sign === '==' ? stated : null,
    preset: sign === '=' ? stated : null,
    forms: formsOf(forms),
    versions: versionsOf(versions),
  };
}

const CHOICE = /^\(([^)]*)\)([?*+]?)$/;
const CHILD = /^(any:)?(\w+)([?*+]|\(\d+-\d*\))?(&)?(?::([\w./]+))?(?:\[([a-z,]+)\])?(?:\{([^}]*)\})?$/;

function readParticle(item: string): ParticleFact {
  const group = CHOICE.exec(item);
  if (group === null) return readChild(item);
  return { choice: group[1]!.split('|').map(readChild), ...countOf(group[2] ?? '') };
}

function readChild(item: string): ChildFact {
  const [, head, name, count, byReference, kind, forms, versions] = matched(CHILD, item);
  return {
    name: name!,
    head: head !== undefined,
    kind: kind ?? null,
    ...countOf(count ?? ''),
    byReference: byReference !== undefined,
    forms: formsOf(forms),
    versions: versionsOf(versions),
  };
}

function countOf(mark: string): { min: number; max: number } {
  if (mark === '') return { min: 1, max: 1 };
  if (mark === '?') return { min: 0, max: 1 };
  if (mark === '*' || mark === '+') return { min: mark === '+' ? 1 : 0, max: Number.POSITIVE_INFINITY };
  const [min, max] = mark.slice(1, -1).split('-') as [string, string];
  return { min: Number(min), max: max === '' ? Number.POSITIVE_INFINITY : Number(max) };
}

function formsOf(text: string | undefined): readonly ResourceForm[] | null {
  return text === undefined ? null : (text.split(',') as ResourceForm[]);
}

/** The versions of a note such as `1.2-` or `-1.4`; null without one, for what all versions know. */
export function versionsOf(text: string | undefined): VersionRange | null {
  if (text === undefined) return null;
  const [since, until] = text.split('-') as [string, string | undefined];
  return { since: since === '' ? null : since, until: until === undefined || until === '' ? null : until };
}

function matched(pattern: RegExp, text: string): RegExpExecArray {
  const match = pattern.exec(text);
  if (match === null) throw new Error(`The fact tables cannot be read at "${text}".`);
  return match;
}
