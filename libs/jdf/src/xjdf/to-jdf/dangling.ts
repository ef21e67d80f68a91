import { splitTokens } from '../../codec/index.js';
import { referenceAttributes } from '../../ticket/checks/references.js';
import {
  attributeOf,
  descendants,
  withAttributes,
  withChildren,
  type XmlElement,
  type XmlNode,
} from '../../xml/index.js';
import type { Ticket } from './ticket.js';

/**
 * The ticket made, without references that lead nowhere in it: what they led to could not be carried over, or was not there
 * before. A link or reference element goes altogether, of a list of IDs only those. Each is entered as lost.
 */
export function withoutDangling(ticket: Ticket, made: XmlElement): XmlElement {
  const ids = new Set([...descendants(made)].flatMap((el) => attributeOf(el, 'ID') ?? []));
  const visit = (el: XmlElement): XmlElement | null => {
    const changes: Record<string, string | undefined> = {};
    for (const { local, uri, value } of el.attributes) {
      if (uri !== '' || !referenceAttributes.has(local)) continue;
      const tokens = splitTokens(value);
      const left = tokens.filter((id) => ids.has(id));
      if (left.length === tokens.length) continue;
      for (const id of tokens) if (!ids.has(id)) tell(ticket, id);
      if (local === 'rRef' && /(Link|Ref)$/.test(el.local)) return null;
      changes[local] = left.length === 0 ? undefined : left.join(' ');
    }
    const children = el.children.flatMap((child): readonly XmlNode[] => {
      if (child.kind !== 'element') return [child];
      const next = visit(child);
      return next === null ? [] : [next];
    });
    const same = children.length === el.children.length && children.every((one, i) => one === el.children[i]);
    const next = same ? el : withChildren(el, children);
    return Object.keys(changes).length === 0 ? next : withAttributes(next, changes);
  };
  return visit(made) ?? made;
}

/** Where the document converted refers to what is not there, else the document as a whole. */
function tell(ticket: Ticket, id: string): void {
  const { root } = ticket.doc;
  const what = `the reference to "${id}" leads nowhere in the older generation`;
  const names = (attributes: XmlElement['attributes']) =>
    attributes.find(
      ({ local, uri, value }) => uri === '' && local !== 'ID' && splitTokens(value).includes(id),
    );
  const from = [...descendants(root)].find(({ attributes }) => names(attributes) !== undefined) ?? root;
  ticket.ledger.note(from, what, names(from.attributes)?.name);
}
