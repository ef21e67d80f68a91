import type { Findings } from '../../codec/index.js';
import { partitionKeysOf, partitionLeaves, subElements } from '../../partition/index.js';
import { attributeOf, childElements, type XmlDocument, type XmlElement } from '../../xml/index.js';
import type { TicketCheck, TicketNode } from './ticket-check.js';

/** What a press needs of each separation that it prints. */
const PER_SEPARATION = ['ExposedMedia', 'InkZoneProfile', 'Ink'];

/**
 * Standard reference, section 9, check 20: the separations to be printed have their colours, and plates, inks and ink
 * profiles are of these separations and no others. A separation may be on one side only, so none is missing as long as
 * it is anywhere.
 */
export const separations: TicketCheck = {
  number: 20,
  name: 'separations',
  run({ doc, nodes }, findings) {
    for (const node of nodes) {
      const control = node.links.find(
        ({ name, usage }) => name === 'ColorantControl' && usage === 'Input',
      )?.resource;
      if (control === undefined) continue;
      const printed = orderOf(control);
      if (printed.size === 0) continue;
      checkColours(doc, control, printed, findings);
      checkResources(node, printed, findings);
    }
  },
};

/** The separations that are printed, of all parts together. */
function orderOf(control: XmlElement): Set<string> {
  const names = partitionLeaves(control).flatMap(({ chain }) =>
    chain.flatMap((el) => childElements(el, 'ColorantOrder').flatMap(namesIn)),
  );
  return new Set(names);
}

const namesIn = (list: XmlElement): string[] =>
  childElements(list, 'SeparationSpec').flatMap((spec) => attributeOf(spec, 'Name')?.trim() ?? []);

function checkColours(
  doc: XmlDocument,
  control: XmlElement,
  printed: ReadonlySet<string>,
  findings: Findings,
): void {
  const pools = subElements(doc, control, 'ColorPool');
  if (pools.length === 0) return;
  const known = new Set(
    pools.flatMap((pool) =>
      childElements(pool, 'Color').flatMap((colour) => attributeOf(colour, 'Name')?.trim() ?? []),
    ),
  );
  for (const name of printed) {
    if (known.has(name)) continue;
    const hint = `Put a Color with Name="${name}" into it.`;
    findings.warning('JDF_COLOUR', control, `The separation ${name} has no Color in the ColorPool.`, hint);
  }
}

function checkResources(node: TicketNode, printed: ReadonlySet<string>, findings: Findings): void {
  for (const { name, usage, role, resource } of node.links) {
    if (resource === undefined || usage !== 'Input' || !PER_SEPARATION.includes(name) || role === 'Proof')
      continue;
    if (!partitionKeysOf(resource).includes('Separation')) continue;
    const found = new Set<string>();
    for (const { keys, chain } of partitionLeaves(resource)) {
      const separation = keys.Separation?.trim();
      if (separation === undefined) continue;
      if (!printed.has(separation) && !found.has(separation)) {
        const hint = `Printed are ${[...printed].join(', ')}.`;
        findings.warning(
          'JDF_COLOUR',
          chain.at(-1)!,
          `${name} is for ${separation}, which is not printed.`,
          hint,
        );
      }
      found.add(separation);
    }
    for (const separation of printed) {
      if (found.size === 0 || found.has(separation)) continue;
      const hint = 'Add it, or take the separation out of ColorantOrder.';
      findings.warning('JDF_COLOUR', resource, `${name} has nothing for the separation ${separation}.`, hint);
    }
  }
}
