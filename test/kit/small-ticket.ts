/** Tickets of a few lines for tests of the checks, and what is found in them. */
import { checkTicket } from '#libs/jdf';
import type { Problem } from '#libs/kernel';
import { parsedXml } from './value-in.js';

/** What is found in a ticket. */
export function problemsIn(text: string): readonly Problem[] {
  const doc = parsedXml(text);
  return checkTicket(doc);
}

/** The same, each as `severity code path`. */
export function findingsIn(text: string): string[] {
  return problemsIn(text).map(({ severity, code, path }) => `${severity} ${code} ${path}`);
}

const pools = (resources: string, links: string): string =>
  `<ResourcePool>${resources}</ResourcePool><ResourceLinkPool>${links}</ResourceLinkPool>`;

/** A root node. `inside` is what follows its pools: audits and nodes. */
export function ticket(head: string, resources = '', links = '', inside = ''): string {
  const status = / Status=/.test(` ${head}`) ? '' : ' Status="Waiting"';
  const version = / Version=/.test(` ${head}`) ? '' : ' Version="1.9"';
  return `<JDF xmlns="http://www.CIP4.org/JDFSchema_1_1" ID="root"${version}${status} ${head}>${pools(resources, links)}${inside}</JDF>`;
}

/** A node inside another. */
export function node(head: string, resources = '', links = '', inside = ''): string {
  const status = / Status=/.test(` ${head}`) ? '' : ' Status="Waiting"';
  return `<JDF${status} ${head}>${pools(resources, links)}${inside}</JDF>`;
}

/** A resource root; its ID is its name in small letters unless one is named. */
export function resource(name: string, attributes = '', inside = ''): string {
  const id = / ID=/.test(` ${attributes}`) ? '' : ` ID="${name.toLowerCase()}"`;
  const status = / Status=/.test(` ${attributes}`) ? '' : ' Status="Available"';
  return `<${name}${id} Class="${classOf(name)}"${status} ${attributes}>${inside}</${name}>`;
}

export const input = (name: string, attributes = '', inside = ''): string =>
  link('Input', name, attributes, inside);
export const output = (name: string, attributes = '', inside = ''): string =>
  link('Output', name, attributes, inside);

function link(usage: string, name: string, attributes: string, inside: string): string {
  const target = / rRef=/.test(` ${attributes}`) ? '' : ` rRef="${name.toLowerCase()}"`;
  return `<${name}Link Usage="${usage}"${target} ${attributes}>${inside}</${name}Link>`;
}

// Source: the official JDF 1.9 schema; what is not named here is a Parameter.
function classOf(name: string): string {
  if (name === 'Component' || name === 'Bundle') return 'Quantity';
  if (name === 'Media' || name === 'Ink' || name === 'Pallet') return 'Consumable';
  if (name === 'ExposedMedia' || name === 'Tool') return 'Handling';
  if (name === 'Device' || name === 'Employee') return 'Implementation';
  return name.endsWith('Intent') ? 'Intent' : 'Parameter';
}
