import { oncePer } from '#libs/kernel';
import type { PartKeys } from '../../../elements/part.js';
import { partitionKeysOf, partitionLeaves, partsNamed } from '../../../partition/index.js';
import { attributeOf, type XmlElement } from '../../../xml/index.js';
import type { Ticket, TicketLink, TicketNode } from '../ticket-check.js';
import { selectionsMeet } from './parts.js';

/** A link of a node with the parts that it selects. */
export interface Use {
  readonly node: TicketNode;
  readonly link: TicketLink;
  readonly parts: readonly PartKeys[];
}

/** Who makes a resource and who takes it, in document order. */
export interface Uses {
  readonly resource: XmlElement;
  readonly made: readonly Use[];
  readonly taken: readonly Use[];
}

/** The uses of every resource that is linked. */
export function usesOf({ nodes }: Ticket): readonly Uses[] {
  const found = new Map<XmlElement, { made: Use[]; taken: Use[] }>();
  for (const node of nodes) {
    for (const link of node.links) {
      if (link.resource === undefined) continue;
      const uses = found.get(link.resource) ?? { made: [], taken: [] };
      found.set(link.resource, uses);
      const use = { node, link, parts: partsNamed(link.element) };
      if (link.usage === 'Output') uses.made.push(use);
      else if (link.usage === 'Input') uses.taken.push(use);
    }
  }
  return [...found].map(([resource, uses]) => ({ resource, ...uses }));
}

/** Finds those of some uses of a resource that can mean the same part as another use. */
export class UseIndex {
  readonly #key: string | undefined;
  // A resource may have thousands of parts with a use each; few of them share the value of the outermost key.
  readonly #byValue = new Map<string | undefined, Use[]>();

  constructor(resource: XmlElement, uses: readonly Use[]) {
    this.#key = partitionKeysOf(resource)[0];
    for (const use of uses) {
      for (const value of this.#valuesOf(use)) {
        const bucket = this.#byValue.get(value) ?? [];
        this.#byValue.set(value, bucket);
        bucket.push(use);
      }
    }
  }

  meeting(use: Use): Use[] {
    const values = this.#valuesOf(use);
    const buckets = values.includes(undefined) ? [...this.#byValue.keys()] : [...values, undefined];
    const near = new Set(buckets.flatMap((value) => this.#byValue.get(value) ?? []));
    return [...near].filter((other) => selectionsMeet(use.parts, other.parts));
  }

  #valuesOf({ parts }: Use): (string | undefined)[] {
    if (parts.length === 0 || this.#key === undefined) return [undefined];
    return [...new Set(parts.map((part) => part[this.#key!]))];
  }
}

/** Whether what is used passes while both steps run, so that neither waits for the other. */
export function isPiped(resource: XmlElement, ...uses: readonly Use[]): boolean {
  if (hasPipe(resource)) return true;
  const names = ['PipeProtocol', 'PipeURL', 'PipePause', 'PipeResume'];
  return uses.some(({ link }) => names.some((name) => attributeOf(link.element, name) !== undefined));
}

const hasPipe = oncePer(
  (resource: XmlElement): boolean =>
    attributeOf(resource, 'PipeID') !== undefined ||
    partitionLeaves(resource).some(({ chain }) =>
      chain.some((el) => attributeOf(el, 'PipeID') !== undefined),
    ),
);

/** What people call a node: its JobPartID, else its ID. */
export function nameOf({ element }: TicketNode): string {
  return attributeOf(element, 'JobPartID') ?? attributeOf(element, 'ID') ?? '';
}
