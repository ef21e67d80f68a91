import { splitTokens } from '../../codec/index.js';
import { JDF_NAMESPACE, type XmlAttribute } from '../../xml/index.js';
import { addAll } from '../add-all.js';
import { jdfVocabulary, xjdfVocabulary } from '../facts.js';
import type { Ledger } from '../ledger.js';
import { rowOfNewer } from '../rows.js';
import type { Overflow, Source } from '../source.js';
import { type Direction, Draft, finish } from '../translate.js';
import { valueFor } from '../values.js';
import { refElement, separations } from './elements.js';
import { restructureNewer } from './rules/index.js';
import type { Ticket } from './ticket.js';

/** The older generation as the target: attributes that are elements there, and references. */
export function toOlder(ticket: Ticket): Direction {
  const { ledger } = ticket;
  const direction: Direction = {
    ledger,
    uri: JDF_NAMESPACE,
    to: jdfVocabulary,
    pair(local, attribute) {
      const pair = rowOfNewer(local)?.attributes?.find(({ xjdf }) => xjdf === attribute);
      const values = pair?.values?.flatMap(([jdf, xjdf, near]) =>
        near === '~' ? [] : [[xjdf, jdf] as const],
      );
      return { to: pair?.jdf ?? attribute, values };
    },
    typeOf: (local, attribute) => xjdfVocabulary.named(local)?.attributes.get(attribute)?.type ?? '',
    fills: (local) => rowOfNewer(local)?.fillOlder ?? {},
    childName: (_local, child) => RENAMED[child] ?? child,
    restructure: (source, out, overflow) => restructureNewer({ ticket, direction }, source, out, overflow),
    child: () => false,
    attribute(attribute, source, out, overflow) {
      if (attribute.uri !== '') return false;
      return (
        asReference(ticket, attribute, source, out) ||
        asElement(direction, ledger, attribute, source, out, overflow)
      );
    },
  };
  return direction;
}

const RENAMED: Readonly<Record<string, string>> = { Glue: 'GlueLine', ModuleInfo: 'ModuleStatus' };

/** What is an attribute in the newer generation may be a span or a list of separations in the older. */
function asElement(
  direction: Direction,
  ledger: Ledger,
  attribute: XmlAttribute,
  source: Source,
  out: Draft,
  overflow: Overflow,
): boolean {
  const pair = direction.pair(source.el.local, attribute.local);
  if (pair === null || out.shape.attributes.has(pair.to)) return false;
  const child = out.shape.byName.get(pair.to);
  const shape = child && direction.to.shape(child.shape);
  if (child === undefined || shape === undefined || out.count(child.name) > 0) return false;
  if (shape.byName.has('SeparationSpec')) {
    const names = splitTokens(attribute.value);
    out.children.push(separations(direction, child, names, attribute.local, overflow));
    ledger.carry(attribute);
    return true;
  }
  if (!child.shape.endsWith('Span')) return false;
  const mapped = pair.values?.find(([from]) => from === attribute.value)?.[1] ?? attribute.value;
  const actual = shape.attributes.get('Actual');
  const fitted = actual && valueFor(mapped, actual);
  if (fitted === undefined) return false;
  const span = new Draft(child.name, shape);
  span.attributes.set('DataType', child.shape);
  span.attributes.set('Actual', fitted.value);
  out.children.push(finish(direction, span));
  ledger.carry(attribute);
  return true;
}

/** A reference is an element of its own in the older generation, with the part that is meant. */
function asReference(ticket: Ticket, attribute: XmlAttribute, source: Source, out: Draft): boolean {
  const type = xjdfVocabulary.named(source.el.local)?.attributes.get(attribute.local)?.type;
  if (type !== 'idref' && type !== 'idrefs') return false;
  if (out.shape.attributes.get(attribute.local)?.type.startsWith('idref')) return false;
  // Which of the references it is follows from what it leads to.
  const targets = splitTokens(attribute.value).map((id) => ticket.target(id));
  const refs = targets.flatMap((target) => (target === undefined ? [] : (refElement(target, out) ?? [])));
  if (refs.length === 0 || refs.length < targets.length) {
    ticket.ledger.reason(attribute, 'the older generation has no such reference here');
    return true;
  }
  addAll(out.children, refs);
  ticket.ledger.carry(attribute);
  return true;
}
