import { attributeMap, childFacts, childMap, Dictionary, type FactTables, inForm } from './dictionary.js';
import type { ChildType, ElementType } from './element-type.js';
import type { ProcessRule } from './link-rules.js';
import type { AttributeFact, ChildFact, KindRow, ResourceForm } from './notation.js';

import { everyProcessTakes } from './process-links.js';

const MANY = { min: 0, max: Number.POSITIVE_INFINITY, versions: null };
const CLASSES: ReadonlySet<string> = new Set([
  'Consumable',
  'Handling',
  'Implementation',
  'Intent',
  'Parameter',
  'PlaceHolder',
  'Quantity',
]);
const FORMS: readonly ResourceForm[] = ['root', 'part'];

/** What every element may hold, and what every resource may hold besides. */
const GENERIC: readonly ChildType[] = [
  { name: 'Comment', key: 'Comment', ...MANY },
  { name: 'GeneralID', key: 'GeneralID', ...MANY },
  { name: 'Preview', key: 'Preview', ...MANY },
  { name: 'PreviewRef', key: 'ResourceRef', ...MANY },
];
const OF_RESOURCES: readonly ChildType[] = [
  { name: 'SourceResource', key: 'SourceResource', ...MANY },
  { name: 'QualityControlResult', key: 'QualityControlResult', ...MANY },
  { name: 'QualityControlResultRef', key: 'ResourceRef', ...MANY },
];

/** Elements whose kind has another name. */
const OTHER_KINDS: Readonly<Record<string, string>> = {
  AbstractStates: 'AbstractState',
  AbstractTerms: 'AbstractTerm',
  ContentObject: 'Layout/ContentObject',
  DynamicField: 'Layout/DynamicField',
  Event: 'Notification/Event',
  LogicalStackParams: 'Layout/LogicalStackParams',
  MarkObject: 'Layout/MarkObject',
  Notification: 'NotificationAudit',
  ProofItem: 'ProofingIntent/ProofItem',
  Resource: 'Resource.root',
};

/** Types that xsi:type knows by another name. */
const OTHER_TYPES: Readonly<Record<string, string>> = {
  JDFAbstractNode: 'ProcessNode',
  JDFProcessNode: 'JDF',
  JMFRootMessage: 'JMF',
};

export interface JdfTables extends FactTables {
  /** What each process takes and makes. */
  readonly processes: ReadonlyMap<string, ProcessRule>;
}

/** The first generation: JDF and JMF. */
export class JdfDictionary extends Dictionary {
  readonly #processes: ReadonlyMap<string, ProcessRule>;

  constructor(tables: JdfTables) {
    super(tables);
    this.#processes = tables.processes;
  }

  isResource(name: string): boolean {
    return CLASSES.has(this.rows.get(name)?.base ?? '');
  }

  /** The class of a resource; undefined for what is none. */
  classOf(name: string): string | undefined {
    return this.isResource(name) ? (this.rows.get(name)!.base ?? undefined) : undefined;
  }

  override elementType(name: string): ElementType | undefined {
    if (this.isResource(name)) return this.typeOf(`${name}.root`);
    const other = Object.hasOwn(OTHER_KINDS, name) ? OTHER_KINDS[name] : undefined;
    if (other !== undefined) return this.typeOf(other);
    if (this.rows.has(name)) return this.typeOf(name);
    return this.isReference(name)
      ? this.typeOf(name.endsWith('Ref') ? 'ResourceRef' : 'ResourceLink')
      : undefined;
  }

  override namedType(name: string): ElementType | undefined {
    return this.typeOf(Object.hasOwn(OTHER_TYPES, name) ? OTHER_TYPES[name]! : name);
  }

  override isMember(head: string, name: string): boolean {
    if (head === 'Resource') return this.isResource(name);
    if (head === 'ResourceRef') return name.endsWith('Ref') && this.isReference(name);
    if (head === 'ResourceLink') return name.endsWith('Link') && this.isReference(name);
    return this.tables.heads.get(head)?.includes(name) ?? false;
  }

  /** XRef and XLink, where X is a resource. */
  private isReference(name: string): boolean {
    return (
      this.isResource(name.replace(/(Ref|Link)$/, '')) || name === 'PreviewRef' || name === 'PreviewLink'
    );
  }

  protected override make(key: string): ElementType | undefined {
    const row = this.rows.get(key);
    if (row !== undefined && !CLASSES.has(row.base ?? '')) return this.makePlain(row);
    for (const form of FORMS) {
      const name = key.endsWith(`.${form}`) ? key.slice(0, -form.length - 1) : undefined;
      const resource = name === undefined ? undefined : this.rows.get(name);
      if (resource !== undefined && this.isResource(resource.name)) return this.makeResource(resource, form);
    }
    if (row !== undefined) return this.makeResource(row, 'inline');
    return this.makeProcess(key);
  }

  private makePlain(row: KindRow): ElementType {
    const { flags } = row;
    const base = flags.has('nothing') || row.name === 'Element' ? null : this.typeOf(row.base ?? 'Element')!;
    const own = this.childTypes(row, null);
    const generic = flags.has('no-generic') || flags.has('text') ? [] : GENERIC;
    const inherited = flags.has('restricted') ? undefined : base?.children;
    return {
      key: row.name,
      base,
      versions: row.versions,
      ...attributeMap(base, row.attributes),
      ...childMap(inherited, [...generic, ...own]),
      heads: [...(flags.has('restricted') ? [] : (base?.heads ?? [])), ...headsOf(row, null)],
      sequence: null,
      counted: flags.has('counted'),
      foreignElements: generic.length > 0 || (inherited !== undefined && base!.foreignElements),
      foreignAttributes: !flags.has('no-foreign-attributes'),
      text: flags.has('text') || flags.has('mixed'),
      abstract: flags.has('abstract'),
      identical: false,
    };
  }

  private makeResource(row: KindRow, form: ResourceForm): ElementType {
    const { name, flags } = row;
    const base = this.typeOf(`${row.base}.${form}`) ?? this.typeOf(`Physical.${form}`)!;
    const own = this.childTypes(row, form);
    if (form !== 'inline' && !flags.has(`no-parts-in-${form}`))
      own.push({ name, key: `${name}.part`, ...MANY });
    if (form === 'root' && !flags.has('no-update')) own.push({ name: `${name}Update`, key: name, ...MANY });
    const identical = form === 'part' && !flags.has('no-identical');
    if (identical) own.push({ name: 'Identical', key: 'Identical', ...MANY, max: 1 });
    const facts = inForm(row.attributes, form).map(
      (fact): AttributeFact => (form === 'part' ? { ...fact, required: fact.requiredInParts } : fact),
    );
    return {
      key: form === 'inline' ? name : `${name}.${form}`,
      base,
      versions: row.versions,
      ...attributeMap(base, facts),
      ...childMap(undefined, [...GENERIC, ...(flags.has('no-resource-generic') ? [] : OF_RESOURCES), ...own]),
      heads: headsOf(row, form),
      sequence: null,
      counted: false,
      foreignElements: true,
      foreignAttributes: true,
      text: false,
      abstract: false,
      identical,
    };
  }

  /** A process node has what every node has and the links of its process. */
  private makeProcess(key: string): ElementType | undefined {
    const name = key.endsWith(POOL) ? key.slice(0, -POOL.length) : key;
    const rule = this.#processes.get(name);
    if (rule === undefined) return undefined;
    if (key === name) {
      const node = this.typeOf('Product')!;
      const pool = { name: 'ResourceLinkPool', key: `${name}${POOL}`, ...MANY };
      const children = new Map([...node.children].filter(([child]) => child !== 'JDF'));
      return { ...node, key, ...childMap(children, [pool]) };
    }
    const links = new Set(rule.links.map((link) => link.name));
    if (links.has('any')) return { ...this.typeOf('GeneralProcessResLinkPool')!, key };
    const base = this.typeOf('ResourceLinkPool')!;
    const all = [...links, ...everyProcessTakes];
    const own = all.map((resource) => ({ name: `${resource}Link`, key: 'ResourceLink', ...MANY }));
    return {
      ...base,
      key,
      base,
      ...childMap(base.children, [...GENERIC, ...own]),
      foreignElements: true,
    };
  }

  private childTypes(row: KindRow, form: ResourceForm | null): ChildType[] {
    return inForm(childFacts(row.content), form).flatMap((fact): readonly ChildType[] => {
      if (fact.head) return [];
      const { name, min, max, versions } = fact;
      const key = this.childKey(row, fact);
      const child = { name, key, min, max, versions };
      return fact.byReference
        ? [child, { ...child, name: `${name}Ref`, key: 'ResourceRef', min: 0 }]
        : [child];
    });
  }

  private childKey(row: KindRow, { name, kind }: ChildFact): string {
    if (kind !== null) return kind;
    const inside = `${row.name.replace(/\.\w+$/, '')}/${name}`;
    if (this.rows.has(inside)) return inside;
    if (this.rows.has(name)) return name;
    return name.endsWith('Ref') ? 'ResourceRef' : 'ResourceLink';
  }
}

const POOL = '/ResourceLinkPool';

function headsOf(row: KindRow, form: ResourceForm | null): string[] {
  return inForm(childFacts(row.content), form)
    .filter(({ head }) => head)
    .map(({ name }) => name);
}
