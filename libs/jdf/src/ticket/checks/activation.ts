import { attributeOf } from '../../xml/index.js';
import type { TicketCheck, TicketNode } from './ticket-check.js';

/** From what holds a node back most to what does so least: JDF/@Activation. */
const ACTIVATIONS = ['Informative', 'Inactive', 'Held', 'TestRun', 'TestRunAndGo', 'Active'];

/** JDF/@Activation: what holds a node back holds back the nodes inside, whatever they state. */
export const activation: TicketCheck = {
  number: 13,
  name: 'activation',
  run({ nodes }, findings) {
    const around = new Map<TicketNode, number>();
    for (const node of nodes) {
      const outer = node.parent === undefined ? ACTIVATIONS.length - 1 : around.get(node.parent)!;
      const stated = ACTIVATIONS.indexOf(attributeOf(node.element, 'Activation')?.trim() ?? '');
      around.set(node, stated < 0 ? outer : Math.min(stated, outer));
      if (stated <= outer) continue;
      const message = `Activation="${ACTIVATIONS[stated]}" has no effect inside a node that is ${ACTIVATIONS[outer]}.`;
      const hint = 'Change that of the node around it, or leave this one out.';
      findings.warning('JDF_STATUS', node.element, message, hint);
    }
  },
};
