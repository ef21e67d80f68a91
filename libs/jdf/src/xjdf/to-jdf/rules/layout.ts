import { attributeNode } from '../../ledger.js';
import { sourceOf, without } from '../../source.js';
import { Draft, fillDraft, finish, translate } from '../../translate.js';
import { refElement } from '../elements.js';
import { named, type Rule } from './rule.js';

/** What is placed on a sheet says itself where. */
const placed: Rule = (older, source, out, overflow) => {
  const { direction, ticket } = older;
  const objects = named(source, 'PlacedObject');
  for (const object of objects) {
    const from = sourceOf(object);
    const inner = from.children.find(({ local }) => local === 'MarkObject' || local === 'ContentObject');
    const name = inner?.local ?? 'ContentObject';
    const place = out.shape.byName.get(name);
    if (place === undefined) continue;
    const draft = new Draft(name, direction.to.shape(place.shape)!);
    fillDraft(
      direction,
      { ...from, children: from.children.filter((one) => one !== inner) },
      draft,
      overflow,
    );
    if (inner !== undefined) {
      fillDraft(direction, sourceOf(inner), draft, overflow);
      ticket.ledger.carry(inner);
    }
    if (!draft.attributes.has('CTM')) continue;
    ticket.ledger.carry(object);
    out.children.push(finish(direction, draft));
  }
  return stripped(older, without(source, objects), out, overflow);
};

/** Positions belong to the binding signature that lies there; the part of the stripping names it. */
const stripped: Rule = (older, source, out, overflow) => {
  const wanted = overflow.keys.BinderySignatureName;
  const positions = named(source, 'Position');
  const { direction, ticket } = older;
  const place = out.shape.byName.get('Position');
  if (place === undefined) return source;
  for (const position of positions) {
    const id = attributeNode(position, 'BinderySignatureID');
    if (wanted !== undefined && id !== undefined && id.value !== wanted) continue;
    const from = without(sourceOf(position), [], ['BinderySignatureID']);
    const made = translate(
      direction,
      { ...from, el: position },
      'Position',
      direction.to.shape(place.shape)!,
      overflow,
    );
    if (made === undefined) continue;
    if (made.attributes.length > 0) out.children.push(made);
    const target = id && ticket.signatures.get(id.value);
    const ref = target && out.count('BinderySignatureRef') === 0 ? refElement(target, out) : undefined;
    if (ref !== undefined) out.children.push(ref);
    if (wanted !== undefined || target !== undefined) ticket.ledger.carry(id);
  }
  return without(source, positions);
};

export const layoutRules: Readonly<Record<string, Rule>> = { Layout: placed };
