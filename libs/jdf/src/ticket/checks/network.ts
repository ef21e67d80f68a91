import type { Findings } from '../../codec/index.js';
import { physicalClasses } from '../../enumerations.js';
import { jdfDictionary } from '../../standard/index.js';
import { attributeOf } from '../../xml/index.js';
import { firstCircle } from './look-up/circles.js';
import { isEnough, lowestStatus } from './look-up/status.js';
import { isPiped, nameOf, type Use, UseIndex, type Uses, usesOf } from './look-up/uses.js';
import type { TicketCheck, TicketNode } from './ticket-check.js';

const PHYSICAL: ReadonlySet<string> = new Set(physicalClasses);
const OVER: ReadonlySet<string> = new Set(['Completed', 'Aborted']);

/**
 * JDF ResourceLink Usage, PipeID: no step waits for itself through others, except over a pipe; what a step takes
 * is there or made by another; and each part of a resource is made by one step.
 */
export const network: TicketCheck = {
  number: 11,
  name: 'network of steps',
  run(ticket, findings) {
    const uses = usesOf(ticket);
    checkCircles(uses, findings);
    for (const one of uses) checkProducers(one, findings);
    // What a part that was sent away takes may be made by what stayed behind.
    if (ticket.spawned) return;
    for (const one of uses) checkInputs(one, findings);
  },
};

/** A step is a node without nodes inside; the links of others only sum up what their steps take and make. */
const isStep = ({ node }: Use): boolean => node.children.length === 0;

function checkCircles(uses: readonly Uses[], findings: Findings): void {
  const next = new Map<TicketNode, Map<TicketNode, Use>>();
  for (const { resource, made, taken } of uses) {
    const takers = new UseIndex(resource, taken.filter(isStep));
    for (const use of made.filter(isStep)) {
      for (const other of takers.meeting(use)) {
        if (other.node === use.node || isPiped(resource, use, other)) continue;
        const after = next.get(use.node) ?? new Map<TicketNode, Use>();
        next.set(use.node, after);
        if (!after.has(other.node)) after.set(other.node, other);
      }
    }
  }
  for (;;) {
    const circle = firstCircle(next);
    if (circle.length === 0 || findings.full) return;
    const names = [...circle, circle[0]!].map(nameOf).join(', ');
    findings.error(
      'JDF_NETWORK',
      next.get(circle.at(-1)!)!.get(circle[0]!)!.link.element,
      `The steps ${names} wait for one another: each makes what the next one takes.`,
      'Give the resource a PipeID if they run at the same time, or link another resource.',
    );
    for (const node of circle) next.delete(node);
  }
}

function checkProducers({ resource, made }: Uses, findings: Findings): void {
  const steps = made.filter(isStep);
  if (steps.length < 2) return;
  const index = new UseIndex(resource, steps);
  const order = new Map(steps.map((use, i) => [use, i]));
  for (const use of steps) {
    const before = index
      .meeting(use)
      .find((other) => other.node !== use.node && order.get(other)! < order.get(use)!);
    if (before === undefined) continue;
    const message = `Step ${nameOf(before.node)} makes this ${resource.name} already.`;
    findings.warning(
      'JDF_NETWORK',
      use.link.element,
      message,
      'Let each step make a resource or a part of its own.',
    );
  }
}

function checkInputs({ resource, made, taken }: Uses, findings: Findings): void {
  const makers = new UseIndex(resource, made);
  for (const use of taken) {
    const over = OVER.has(attributeOf(use.node.element, 'Status') ?? '');
    if (!isStep(use) || over || !isMissing(use, resource.local)) continue;
    if (makers.meeting(use).length > 0) continue;
    const status = lowestStatus(resource, use.parts)!;
    findings.warning(
      'JDF_NETWORK',
      use.link.element,
      `${resource.name} is ${status}, and no node makes it.`,
      'Set its Status when it is there, or link it as output of the node that makes it.',
    );
  }
}

/** Data that is Incomplete is still to be filled in, by whoever receives the ticket; a thing that is not there is made. */
function isMissing({ link, parts }: Use, name: string): boolean {
  const status = link.resource === undefined ? undefined : lowestStatus(link.resource, parts);
  if (status === undefined || isEnough(status, link.element)) return false;
  if (status === 'Incomplete') return PHYSICAL.has(jdfDictionary().classOf(name) ?? '');
  return status === 'Unavailable' || status === 'Rejected';
}
