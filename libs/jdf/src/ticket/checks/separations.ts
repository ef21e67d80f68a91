import type { Findings } from '../../codec/index.js';
import { partitionKeysOf, partitionLeaves, subElements } from '../../partition/index.js';
import { attributeOf, childElements, type XmlDocument, type XmlElement } from '../../xml/index.js';
import { inputOf, orderOf, perSeparation } from './look-up/printing.js';
import type { TicketCheck, TicketNode } from './ticket-check.js';

/**
 * The separations to be printed (ColorantControl ColorantOrder) have their colours (ColorPool), and plates, inks and ink
 * profiles are of these separations and no others. A separation may be on one side only, so none is missing as long as it
 * is anywhere.
 */
export const separations: TicketCheck = {
  number: 20,
  name: 'separations',
  run({ doc, nodes }, findings) {
    for (const node of nodes) {
      const control = inputOf(node, 'ColorantControl')?.resource;
      if (control === undefined) continue;
      const printed = printedBy(control);
      if (printed.size === 0) continue;
      checkColours(doc, control, printed, findings);
      checkResources(node, printed, findings);
    }
  },
};

/** The separations that are printed, of all parts together. */
function printedBy(control: XmlElement): Set<string> {
  return new Set(partitionLeaves(control).flatMap(({ chain }) => orderOf(chain)));
}

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
  for (const { name, resource } of perSeparation(node)) {
    if (resource === undefined || !partitionKeysOf(resource).includes('Separation')) continue;
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
