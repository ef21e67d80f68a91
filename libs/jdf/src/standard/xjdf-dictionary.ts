import { attributeMap, childFacts, childMap, Dictionary } from './dictionary.js';
import type { ElementType } from './element-type.js';
import type { KindRow } from './notation.js';

const FOREIGN = 'any';

/** The second generation: XJDF and XJMF. Order and number of children count. */
export class XjdfDictionary extends Dictionary {
  override elementType(name: string): ElementType | undefined {
    return this.typeOf(name);
  }

  override namedType(name: string): ElementType | undefined {
    return this.typeOf(name);
  }

  override isMember(head: string, name: string): boolean {
    if (head === 'SpecificResource') return this.rows.get(name)?.base === head;
    const members = this.tables.heads.get(head) ?? [];
    return members.includes(name) || members.some((member) => member !== head && this.isMember(member, name));
  }

  protected override make(key: string): ElementType | undefined {
    const row = this.rows.get(key);
    return row === undefined ? undefined : this.makeType(row);
  }

  private makeType(row: KindRow): ElementType {
    const base = row.base === null ? null : this.typeOf(row.base)!;
    const facts = childFacts(row.content);
    const own = facts
      .filter(({ head, name }) => !head && name !== FOREIGN)
      .map(({ name, kind, min, max, versions }) => ({ name, key: kind ?? name, min, max, versions }));
    return {
      key: row.name,
      base,
      versions: row.versions,
      ...attributeMap(base, row.attributes),
      ...childMap(base?.children, own),
      heads: [...(base?.heads ?? []), ...facts.filter(({ head }) => head).map(({ name }) => name)],
      sequence: [...(base?.sequence ?? []), ...row.content],
      counted: true,
      foreignElements: (base?.foreignElements ?? false) || facts.some(({ name }) => name === FOREIGN),
      foreignAttributes: !row.flags.has('no-foreign-attributes'),
      text: row.flags.has('text'),
      abstract: row.flags.has('abstract'),
      identical: false,
    };
  }
}
