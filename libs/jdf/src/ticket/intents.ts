import type { Findings } from '../codec/index.js';
import { effectivePart, type Partition, selectPart } from '../partition/index.js';
import { firstChild, type XmlDocument, type XmlElement } from '../xml/index.js';
import { linksOf } from './links.js';
import { type Placed, placed } from './placed.js';
import { type SpanOf, spanValue } from './product-intents/span-types.js';

/** An intent of a product node: what it says for the part that the link names, or for the whole. */
export interface Intent {
  readonly resource: XmlElement;
  readonly selected: Partition;
  readonly view: XmlElement;
}

// A node has one intent of a kind, or a few to choose from; who sends more only wants us busy.
export const MOST_LINKS = 32;

/** The intents of one name that a product node has as input. A link to a part that is not there is a finding. */
export function intentsOf(doc: XmlDocument, node: XmlElement, name: string, findings: Findings): Intent[] {
  const links = linksOf(doc, node).filter((link) => link.name === name && link.usage === 'Input');
  return links.slice(0, MOST_LINKS).flatMap((link) => {
    const selected = selectPart(link.resource, link.parts[0] ?? {});
    if (selected === undefined) {
      findings.error(
        'JDF_PARTITION',
        link.link,
        `${name} has no such part.`,
        'Correct the Part of the link.',
      );
      return [];
    }
    return [{ resource: link.resource, selected, view: effectivePart(selected) }];
  });
}

/** The value of a span of an intent, with its place. Infinite numbers are a finding: nothing can be made of them. */
export function spanOf<T, R, F>(
  doc: XmlDocument,
  intent: Intent | undefined,
  name: string,
  kind: SpanOf<T, R, F>,
  findings: Findings,
): Placed<T> | undefined {
  const span = intent && firstChild(intent.view, name);
  const value = span && spanValue(span, kind, findings);
  if (value === undefined) return undefined;
  if (typeof value === 'number' && !Number.isFinite(value)) {
    findings.wrong(span!, name, String(value), 'a number that is not infinite');
    return undefined;
  }
  return placed(doc, span!, value);
}
